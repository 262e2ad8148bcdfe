package bitterend.packing;

import bitterend.measure.Cost;
import java.util.List;

/** Packs pieces onto reels; the seam that buying and quoting are handed. */
@FunctionalInterface
public interface Packer {
    /** The best packing found within the effort; always sound, possibly empty. */
    Result pack(PackingProblem problem, Effort effort);

    /**
     * A packing and what is proven of it.
     *
     * @param packing the run of every planned piece
     * @param cost its true price
     * @param bounds one per group of ropes packed together; empty when nothing was proven
     * @param unsound what was wrong with packings that were thrown away: faults of this program, never of the input
     */
    record Result(Packing packing, Cost cost, List<Bound> bounds, List<String> unsound) {
        public Result {
            bounds = List.copyOf(bounds);
            unsound = List.copyOf(unsound);
        }

        /** A packing on whose way nothing went wrong. */
        public Result(Packing packing, Cost cost, List<Bound> bounds) {
            this(packing, cost, bounds, List.of());
        }
    }
}
