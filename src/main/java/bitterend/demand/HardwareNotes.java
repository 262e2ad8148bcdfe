package bitterend.demand;

import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.measure.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** What a derivation says of the hardware on its ends: what hangs there, how far it may be off, what it weighs. */
final class HardwareNotes {
    /** How the note begins that says what hangs on an end. */
    static final String HANGS = "hung on ";

    private final Leg leg;
    private final int legs;

    /** Of a leg of an assembly of so many. */
    HardwareNotes(Leg leg, int legs) {
        this.leg = leg;
        this.legs = legs;
    }

    List<Sentence> all() {
        List<Sentence> notes = new ArrayList<>();
        if (hung().isEmpty()) {
            return notes;
        }
        leg.ends().stream()
                .filter(end -> !end.hardware().isEmpty())
                .map(HardwareNotes::hangs)
                .forEach(notes::add);
        addBand(notes);
        notes.add(mass());
        return notes;
    }

    private List<HungHardware> hung() {
        return leg.ends().stream().flatMap(end -> end.hardware().stream()).toList();
    }

    private static Sentence hangs(MadeEnd end) {
        List<Sentence> each = end.hardware().stream()
                .map(one -> Sentence.of(one.name() + ", inside ")
                        .and(one.inside())
                        .and(travel(one))
                        .and(one.inLength() ? "" : ", beyond the finished length"))
                .toList();
        return Sentence.of(HANGS + end.name() + ", from the rope outwards: ").and(Sentence.joined("; ", each));
    }

    /** How far a turnbuckle can still be screwed in and out. */
    private static Sentence travel(HungHardware hung) {
        if (!hung.hardware().isAdjustable()) {
            return Sentence.NONE;
        }
        return Sentence.of(" (")
                .and(hung.inside().minus(hung.hardware().inside()))
                .and(" to take up, ")
                .and(hung.hardware().opened().minus(hung.inside()))
                .and(" to let out)");
    }

    /** The tolerances of the hardware add to the band of the finished length. */
    private void addBand(List<Sentence> notes) {
        FineLength off = leg.hardwareTolerance();
        if (!off.isPositive()) {
            return;
        }
        FineLength finished = leg.make().finished().exact();
        Tolerance asked = leg.make().asked().finished();
        notes.add(
                asked.isStated()
                        ? Sentence.of("over its hardware: within ")
                                .and(asked.of(finished).plus(off))
                                .and(", ")
                                .and(asked.words(finished))
                                .and(" of the rope as ordered and ")
                                .and(off)
                                .and(" that the hardware may be off")
                        : Sentence.of("over its hardware: the hardware alone may be off by ")
                                .and(off)
                                .and(", either way"));
    }

    /** Rope as cut, without a sample, and hardware; what has no mass in its row is named. */
    private Sentence mass() {
        Length cut = Leg.sum(leg.lines(FineLength.ZERO)).roundedUp();
        Mass rope = new Mass(Math.multiplyExact(leg.rope().mass().of(cut).grams(), legs));
        Mass hardware = hung().stream().map(each -> each.massFor(legs)).reduce(Mass.ZERO, Mass::plus);
        List<String> unknown = hung().stream()
                .filter(each ->
                        each.countFor(legs) > 0 && each.hardware().mass().grams() == 0)
                .map(each -> each.hardware().name())
                .distinct()
                .collect(Collectors.toCollection(ArrayList::new));
        if (rope.grams() == 0) {
            unknown.add(0, "the rope");
        }
        Sentence known = Sentence.of("a finished assembly weighs about ")
                .and(rope.plus(hardware))
                .and(", rope ")
                .and(rope)
                .and(" and hardware ")
                .and(hardware);
        return unknown.isEmpty() ? known : known.and("; without " + String.join(", ", unknown) + ", of unknown mass");
    }
}
