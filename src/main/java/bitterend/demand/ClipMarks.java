package bitterend.demand;

import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the clips of an end sit: the first with one saddle of rope left beyond it, the second hard against the thimble, the
 * rest evenly between. With a saddle of length s and a tail t the outer ones are centred 1 1/2 s and t - s/2 from the cut
 * end. Where two ropes are joined, the n clips of each half are as far apart as those next to the middle: the last is half a
 * gap before the end of the tail, a gap being (t - 1 1/2 s) / (n - 1/2). Common practice, no source.
 */
final class ClipMarks {
    private static final List<String> ORDINALS = List.of(
            "first",
            "second",
            "third",
            "fourth",
            "fifth",
            "sixth",
            "seventh",
            "eighth",
            "ninth",
            "tenth",
            "eleventh",
            "twelfth");
    private static final Ratio HALF = new Ratio(1, 2);

    private final int clips;
    private final boolean joins;
    private final FineLength first;
    private final FineLength last;

    ClipMarks(MadeEnd end) {
        FineLength saddle = end.yardsticks().counted().saddle();
        this.joins = end.termination().kind() == Termination.Kind.JOIN;
        this.clips = end.yardsticks().counted().clips();
        this.first = saddle.plus(saddle.times(HALF));
        FineLength tail = end.length(What.TAIL);
        this.last = joins
                ? tail.minus(tail.minus(first).times(new Ratio(1, Math.max(1, 2L * clips - 1))))
                : tail.minus(saddle.times(HALF));
    }

    /** The centres of the clips in the order in which they are set; none without clips. */
    List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (int n = 0; n < clips; n++) {
            FineLength place = n == 0 ? first : n == 1 ? last : between(n - 1);
            marks.add(new Mark(
                    (n < ORDINALS.size() ? ORDINALS.get(n) : "further") + " clip",
                    "rope",
                    LayoutMark.CUT_END,
                    place,
                    place,
                    purpose(n)));
        }
        return marks;
    }

    /** The n-th of the clips between the outer two, counted from the cut end. */
    private FineLength between(int n) {
        return first.plus(last.minus(first).times(new Ratio(n, clips - 1)));
    }

    private String purpose(int n) {
        return switch (n) {
            case 0 -> "its centre; one saddle of rope is left beyond it";
            case 1 -> joins
                    ? "its centre; next to the middle of the overlap, saddle on the live part"
                    : "its centre; hard against the thimble, saddle on the live part";
            default -> "its centre; evenly between, saddle on the live part";
        };
    }
}
