package bitterend.buying;

import java.util.ArrayDeque;
import java.util.Deque;

/** The rising sequence nearest to given numbers, by least squares: neighbours that fall are pooled at their mean. */
final class IsotonicRegression {
    private IsotonicRegression() {}

    private record Pool(long sum, int size) {
        boolean isAbove(Pool next) {
            return Math.multiplyExact(sum, next.size) > Math.multiplyExact(next.sum, size);
        }

        Pool with(Pool next) {
            return new Pool(Math.addExact(sum, next.sum), size + next.size);
        }
    }

    /** As many numbers, none below the one before; means rounded down. */
    static long[] of(long[] values) {
        Deque<Pool> pools = new ArrayDeque<>();
        for (long value : values) {
            Pool pool = new Pool(value, 1);
            while (!pools.isEmpty() && pools.getLast().isAbove(pool)) {
                pool = pools.removeLast().with(pool);
            }
            pools.addLast(pool);
        }
        long[] rising = new long[values.length];
        int at = 0;
        for (Pool pool : pools) {
            for (int i = 0; i < pool.size(); i++) {
                rising[at++] = Math.floorDiv(pool.sum(), pool.size());
            }
        }
        return rising;
    }
}
