package bitterend.work;

import bitterend.day.ReelSince;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.stock.Flaw;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The flaws of a reel beside the cuts that a plan has on it. A flaw that the plan knew lies in none of them. */
final class FlawsSince {
    private FlawsSince() {}

    /**
     * Of each flaw that lies in pieces still to be cut, in which: the plan's marks are counted on from where its own cuts
     * have brought the end of the rope.
     */
    static List<Remark> in(ReelSince since, ReelDraw draw) {
        List<Movement> history = since.history();
        Movement.Entry last = history.get(history.size() - 1).entry();
        if (last.gone()) {
            return List.of();
        }
        Reel reel = last.after();
        Length taken = taken(since);
        Length zero = taken.isPositive()
                ? draw.leadTrim().minus(taken)
                : reel.contents().leadTrim();
        Set<String> posted = since.posted(draw);
        List<Remark> remarks = new ArrayList<>();
        for (Flaw flaw : reel.flaws()) {
            List<String> pieces = draw.cuts().stream()
                    .filter(cut -> !posted.contains(cut.piece()) && lies(flaw, cut, zero))
                    .map(Cut::piece)
                    .toList();
            if (!pieces.isEmpty()) {
                remarks.add(new Remark(
                        draw.reel(),
                        "",
                        Sentence.of("reel " + draw.reel() + ": flaw ")
                                .and(told(flaw))
                                .and(": lies in " + String.join(", ", pieces) + "; plan again"),
                        false,
                        Remark.About.ANYTHING));
            }
        }
        return remarks;
    }

    /** Those that a movement found. */
    static Sentence found(Movement movement, List<Movement> history) {
        int place = history.indexOf(movement);
        List<Flaw> flaws = new ArrayList<>(movement.entry().after().flaws());
        if (place > 0) {
            flaws.removeAll(history.get(place - 1).entry().after().flaws());
        }
        return Sentence.joined("; ", flaws.stream().map(FlawsSince::told).toList());
    }

    private static Sentence told(Flaw flaw) {
        Sentence told = Sentence.NONE.and(flaw.from());
        if (!flaw.to().equals(flaw.from())) {
            told = told.and(" to ").and(flaw.to());
        }
        if (flaw.uncertainty().isPositive()) {
            told = told.and(" +/- ").and(flaw.uncertainty());
        }
        return told.and(flaw.what().isEmpty() ? "" : ", " + flaw.what());
    }

    private static boolean lies(Flaw flaw, Cut cut, Length zero) {
        return cut.from().plus(zero).isShorterThan(flaw.avoidTo())
                && flaw.avoidFrom().isShorterThan(cut.to().plus(zero));
    }

    /** What the steps of the plan took off the reel. */
    private static Length taken(ReelSince since) {
        Length taken = Length.ZERO;
        for (Movement movement : since.history()) {
            if (since.same().areOf(since.plan(), movement)) {
                taken = taken.minus(movement.by());
            }
        }
        return taken;
    }
}
