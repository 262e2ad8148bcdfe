package bitterend.packing.proof;

/**
 * What is true of some plans and false of all others, so that the two children of a branch leave no plan out. The load of
 * a run is the sum of its cut lengths and one cut loss for each piece, in mm; 0 where nothing is cut.
 */
public sealed interface Statement
        permits Statement.SetOn,
                Statement.OrderTakes,
                Statement.ReelUsed,
                Statement.LoadAtMost,
                Statement.CopiesAtMost,
                Statement.UndoneAtMost {

    /**
     * The matched set is cut, and comes off this holder.
     *
     * @param set name of the set
     * @param holder a lot for a set that comes off one lot, a reel for one that comes off one reel
     */
    record SetOn(String set, Holder holder) implements Statement {}

    /**
     * The order takes a piece off this lot.
     *
     * @param order the order
     * @param lot a lot, or a reel of unknown lot
     */
    record OrderTakes(String order, Holder lot) implements Statement {}

    /**
     * Something is cut from the reel.
     *
     * @param reel id of the reel
     */
    record ReelUsed(String reel) implements Statement {}

    /**
     * The load of a run is at most so much.
     *
     * @param run the run
     * @param mm not negative
     */
    record LoadAtMost(RunOfReel run, long mm) implements Statement {
        public LoadAtMost {
            requireNotNegative(mm);
        }
    }

    /**
     * At most so many pieces of a line come off a run.
     *
     * @param line the line, the first one of the proof being 0
     * @param run the run
     * @param pieces not negative
     */
    record CopiesAtMost(int line, RunOfReel run, int pieces) implements Statement {
        public CopiesAtMost {
            requireNotNegative(pieces);
        }
    }

    /**
     * At most so many pieces of a line are left undone.
     *
     * @param line the line, the first one of the proof being 0
     * @param pieces not negative
     */
    record UndoneAtMost(int line, int pieces) implements Statement {
        public UndoneAtMost {
            requireNotNegative(pieces);
        }
    }

    private static void requireNotNegative(long limit) {
        if (limit < 0) {
            throw new IllegalArgumentException("a limit cannot be negative: " + limit);
        }
    }
}
