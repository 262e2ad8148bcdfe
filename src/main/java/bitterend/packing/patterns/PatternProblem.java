package bitterend.packing.patterns;

import java.util.List;

/**
 * What to cut and from what. First the weight of unplanned pieces is to be least, then the cost.
 *
 * @param items kinds of pieces
 * @param reels kinds of reels
 */
public record PatternProblem(List<Item> items, List<ReelKind> reels) {
    /** Lengths, prices and weights above this are refused: sums would not fit. */
    public static final long LARGEST = 1L << 46;

    public PatternProblem {
        items = List.copyOf(items);
        reels = List.copyOf(reels);
        long weight = 0;
        long pieces = 0;
        for (Item item : items) {
            weight = Math.addExact(weight, Math.multiplyExact(item.demand(), item.weight()));
            pieces += item.demand();
        }
        requireSmall("sum of weights", weight);
        if (pieces > Integer.MAX_VALUE / 4) {
            throw new IllegalArgumentException("too many pieces: " + pieces);
        }
        for (ReelKind reel : reels) {
            checkReel(reel, items.size());
        }
    }

    /** The classical problem: whole reels of one length, as few as possible. */
    public static PatternProblem oneLength(long capacity, List<Long> lengths, List<Integer> demands) {
        return new PatternProblem(
                demands.stream().map(Item::must).toList(),
                List.of(ReelKind.whole(capacity, 1, ReelKind.UNLIMITED, lengths)));
    }

    private static void checkReel(ReelKind reel, int items) {
        if (reel.lengths().size() != items) {
            throw new IllegalArgumentException(
                    "lengths must name every item: " + reel.lengths().size() + " for " + items);
        }
        requireSmall("opening", reel.opening());
        requireSmall("cutLoss", reel.cutLoss());
        for (Run run : reel.runs()) {
            requireSmall("run length", run.length());
            requireSmall("handling", run.handling());
            requireSmall("value of a run", reel.value().applyAsLong(run.length()));
        }
        for (long length : reel.lengths()) {
            if (length < 1 && length != ReelKind.NOT_ALLOWED) {
                throw new IllegalArgumentException("length of an item must be at least 1: " + length);
            }
            requireSmall("length of an item", length);
        }
    }

    private static void requireSmall(String what, long amount) {
        if (amount > LARGEST) {
            throw new IllegalArgumentException(what + " is too large: " + amount);
        }
    }
}
