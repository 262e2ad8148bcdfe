package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.ValuedRun;

/** A reel kind as the engine sees it. */
final class ReelType {
    /** Load of an item that may not, or cannot, be cut from this kind. */
    static final long NEVER = Long.MAX_VALUE / 4;

    final int index;
    /** Of every reel kind merged into this one at most the number of pieces that fit. */
    final int supply;
    /** The supply may run out: fewer reels than pieces that fit. */
    final boolean limited;

    final long opening;
    final ValuedRun[] runs;
    /** Length and cut loss of each item; one shared array for all kinds of one rope. */
    final long[] load;
    /** Kinds with the same loads have the same rope. */
    final int rope;

    ReelType(int index, int supply, boolean limited, long opening, ValuedRun[] runs, long[] load, int rope) {
        this.index = index;
        this.supply = supply;
        this.limited = limited;
        this.opening = opening;
        this.runs = runs;
        this.load = load;
        this.rope = rope;
    }

    boolean single() {
        return runs.length == 1;
    }

    boolean flat() {
        for (ValuedRun run : runs) {
            if (!run.flat()) {
                return false;
            }
        }
        return true;
    }

    long longestCap() {
        long longest = 0;
        for (ValuedRun run : runs) {
            longest = Math.max(longest, run.cap);
        }
        return longest;
    }

    /** The most that one reel of this kind can cost. */
    long dearest() {
        long sum = opening;
        for (ValuedRun run : runs) {
            sum += run.full + run.handling;
        }
        return sum;
    }
}
