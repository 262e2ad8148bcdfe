package bitterend.demand;

import bitterend.catalogue.Termination.What;
import bitterend.measure.FineLength;
import bitterend.measure.Sentence;
import java.util.Optional;

/** Where the rope of a cored end is knotted while it is spliced, or how its core is held where no knot has room. */
final class SlipKnot {
    /** Rope that the knot itself takes and that it leaves before the end. Common practice, no source. */
    private static final int CLEAR = 10;

    private SlipKnot() {}

    /** How far from the throat it sits: as usual, or nearer on a short piece; empty where it has no room. */
    static Optional<FineLength> fromThroat(MadeEnd end, FreeRope rope) {
        FineLength usual = end.length(What.SLIP_KNOT);
        FineLength last = rope.free(end).minus(clear(end));
        if (last.compareTo(usual) >= 0) {
            return Optional.of(usual);
        }
        boolean room = last.isPositive() && last.compareTo(LayoutMaker.reach(end)) > 0;
        return room ? Optional.of(last) : Optional.empty();
    }

    /** What is done where no knot has room. */
    static Sentence held(MadeEnd end) {
        return Sentence.of("no room for a slip knot ")
                .and(clearWords(end))
                .and(
                        ": hold the core at the end, whipped and stitched through cover and core before the core is drawn");
    }

    /** {@code 100 mm, 10 diameters, before the free rope ends}. */
    static Sentence clearWords(MadeEnd end) {
        return Sentence.NONE.noLessThan(clear(end)).and(", " + CLEAR + " diameters, before the free rope ends");
    }

    private static FineLength clear(MadeEnd end) {
        return end.yardsticks().rope().asLength().times(CLEAR);
    }
}
