package bitterend.packing.greedy;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What one more piece of each kind adds to a draw, in 1/1000 minor units, kept until the reel changes. */
final class Quotes {
    /** No more prices than this are kept; where all pieces differ there is nothing to gain. */
    private static final int MOST = 4_000_000;

    private final int slots;
    private final int mostKinds;
    /** Counts the changes of each reel, from one. */
    private final int[] change;

    private final List<@Nullable OfKind> kinds = new ArrayList<>();

    /** By slot: the price, and the change of the reel that it was reckoned after. */
    private static final class OfKind {
        private final long[] prices;
        private final int[] after;

        OfKind(int slots) {
            prices = new long[slots];
            after = new int[slots];
        }
    }

    Quotes(int reels, int slots) {
        this.slots = slots;
        mostKinds = MOST / Math.max(1, slots);
        change = new int[reels];
        java.util.Arrays.fill(change, 1);
    }

    /** What was reckoned for a reel holds no more. */
    void forget(int reel) {
        change[reel]++;
    }

    boolean isKnown(int kind, Slot slot) {
        return kind < mostKinds && of(kind).after[slot.number()] == change[slot.reelNumber()];
    }

    long get(int kind, Slot slot) {
        return of(kind).prices[slot.number()];
    }

    void put(int kind, Slot slot, long price) {
        if (kind >= mostKinds) {
            return;
        }
        of(kind).prices[slot.number()] = price;
        of(kind).after[slot.number()] = change[slot.reelNumber()];
    }

    private OfKind of(int kind) {
        while (kinds.size() <= kind) {
            kinds.add(null);
        }
        OfKind known = kinds.get(kind);
        if (known == null) {
            known = new OfKind(slots);
            kinds.set(kind, known);
        }
        return known;
    }
}
