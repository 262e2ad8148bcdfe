package bitterend.stock;

import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Units;
import bitterend.measure.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What work at the bench does to a reel: how its length, its flaws and its ends stand afterwards. */
public final class RopeWork {
    private RopeWork() {}

    /**
     * The reel after rope was taken off its working end; nothing when all of it was. Flaws keep their place in the rope.
     * The new end is our own cut, so no lead trim is left but what was not yet taken.
     */
    public static Optional<Reel> takenOff(Reel reel, Length taken) {
        if (taken.isNegative()) {
            throw new IllegalArgumentException("cannot take " + taken + " off reel " + reel.id());
        }
        Length left = reel.length().minus(taken);
        if (!left.isPositive()) {
            return Optional.empty();
        }
        Reel.Contents before = reel.contents();
        Reel.Contents contents = new Reel.Contents(
                taken.isPositive() ? Written.worked(left) : before.written(),
                before.uncertainty(),
                notNegative(before.leadTrim().minus(taken)),
                before.innerWraps(),
                before.known());
        List<Flaw> flaws = new ArrayList<>();
        for (Flaw flaw : reel.flaws()) {
            if (flaw.avoidTo().isLongerThan(taken)) {
                flaws.add(new Flaw(
                        notNegative(flaw.from().minus(taken)),
                        notNegative(flaw.to().minus(taken)),
                        flaw.uncertainty(),
                        flaw.what()));
            }
        }
        boolean full = reel.full() && !taken.isPositive();
        return Optional.of(new Reel(
                reel.id(),
                reel.rope(),
                reel.lot(),
                contents,
                flaws,
                reel.papers(),
                reel.custody(),
                full,
                reel.where()));
    }

    /** A coil cut off a reel: the same rope, lot, papers and owner, of a length just measured. */
    public static Reel coil(Reel reel, String id, Length length) {
        Reel.Contents contents = new Reel.Contents(length, Length.ZERO, Length.ZERO, Length.ZERO, Reel.Known.METERED);
        return new Reel(
                id,
                reel.rope(),
                reel.lot(),
                contents,
                List.of(),
                reel.papers(),
                reel.custody().ofACoil(),
                false,
                new Reel.Where(reel.where().place(), bitterend.measure.Mass.ZERO, Reel.Draw.OUTSIDE));
    }

    /** The first so many metres of a reel, flaws and lead trim in them included, as a reel of their own. */
    public static Reel front(Reel reel, String id, Written typed) {
        Length length = typed.roundedDown();
        Length trim = Length.min(reel.contents().leadTrim(), length);
        List<Flaw> flaws = within(reel.flaws(), length).stream()
                .filter(flaw -> flaw.avoidFrom().isShorterThan(length))
                .toList();
        return coil(reel, id, length)
                .withContents(new Reel.Contents(typed, Length.ZERO, trim, Length.ZERO, Reel.Known.METERED))
                .withFlaws(flaws);
    }

    /**
     * The reel wound over, so that its inner end becomes the working end: flaws are counted from the other end, and since
     * that end may lie closer than booked, their beginnings give way by the uncertainty of the length. Inner wraps and lead
     * trim change places.
     */
    public static Reel rewound(Reel reel) {
        Reel.Contents before = reel.contents();
        Length worn = before.innerWraps();
        Length inner = before.leadTrim();
        Reel.Contents contents = new Reel.Contents(before.written(), before.uncertainty(), worn, inner, before.known());
        List<Flaw> flaws = reel.flaws().stream()
                .map(flaw -> new Flaw(
                        notNegative(before.length().minus(before.uncertainty()).minus(flaw.to())),
                        notNegative(before.length().minus(flaw.from())),
                        flaw.uncertainty(),
                        flaw.what()))
                .toList();
        return reel.withContents(contents).withFlaws(flaws);
    }

    /**
     * The reel with a new figure for its length; flaws keep their place from the working end, and end with the rope.
     *
     * @param uncertainty how much shorter it may really be
     */
    public static Reel counted(Reel reel, Written length, Length uncertainty, Reel.Known known) {
        Reel.Contents before = reel.contents();
        return reel.withContents(new Reel.Contents(length, uncertainty, before.leadTrim(), before.innerWraps(), known))
                .withFlaws(within(reel.flaws(), length.roundedDown()));
    }

    /** A note of a count with what it does to the flaws: those behind the new end are gone, one across it is shortened. */
    public static String countedNote(String note, Reel before, Length length) {
        String told = before.flaws().stream()
                .filter(flaw -> flaw.to().isLongerThan(length))
                .map(flaw -> "flaw at " + LengthText.print(flaw.from(), Units.METRIC) + " to "
                        + LengthText.print(flaw.to(), Units.METRIC)
                        + (flaw.avoidFrom().isShorterThan(length)
                                ? " ends with the rope"
                                : " is behind the end: dropped"))
                .collect(Collectors.joining("; "));
        return note.isEmpty() || told.isEmpty() ? note + told : note + "; " + told;
    }

    /** Flaws on the first so many metres of a rope, none of them beyond. */
    public static List<Flaw> within(List<Flaw> flaws, Length length) {
        return flaws.stream()
                .filter(flaw ->
                        !flaw.to().isLongerThan(length) || flaw.avoidFrom().isShorterThan(length))
                .map(flaw -> new Flaw(
                        Length.min(flaw.from(), length),
                        Length.min(flaw.to(), length),
                        flaw.uncertainty(),
                        flaw.what()))
                .toList();
    }

    private static Length notNegative(Length length) {
        return Length.max(Length.ZERO, length);
    }
}
