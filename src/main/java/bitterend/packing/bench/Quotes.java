package bitterend.packing.bench;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What one more piece of each kind adds to a draw, in 1/1000 minor unit, kept until the reel changes. */
final class Quotes {
    static final long UNKNOWN = Long.MIN_VALUE;

    /** No more prices than this are kept; where all pieces differ there is nothing to gain. */
    private static final int MOST = 4_000_000;

    private final Workbench bench;
    private final @Nullable OfKind[] kinds;
    /** Counts the changes of each reel, from one. */
    private final int[] change;

    /** By run: the price, and the change of the reel that it was reckoned after. */
    private static final class OfKind {
        private final long[] prices;
        private final int[] after;

        OfKind(int runs) {
            prices = new long[runs];
            after = new int[runs];
        }
    }

    Quotes(Workbench bench) {
        this.bench = bench;
        kinds = new OfKind[Math.min(bench.kinds(), MOST / Math.max(1, bench.runs))];
        change = new int[bench.reels];
        Arrays.fill(change, 1);
    }

    /** What was reckoned for a reel holds no more. */
    void forget(int reel) {
        change[reel]++;
    }

    /** The price, or {@link #UNKNOWN}. */
    long of(int kind, int run) {
        OfKind known = kind < kinds.length ? kinds[kind] : null;
        return known == null || known.after[run] != change[bench.runTable.reelOf[run]] ? UNKNOWN : known.prices[run];
    }

    void put(int kind, int run, long price) {
        if (kind >= kinds.length) {
            return;
        }
        OfKind known = kinds[kind];
        if (known == null) {
            known = new OfKind(bench.runs);
            kinds[kind] = known;
        }
        known.prices[run] = price;
        known.after[run] = change[bench.runTable.reelOf[run]];
    }
}
