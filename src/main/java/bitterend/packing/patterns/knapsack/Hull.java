package bitterend.packing.patterns.knapsack;

import java.util.Arrays;

/**
 * The largest convex function below the drop of a run, as corner points. It tells how much a load must cost at least,
 * whatever the value curve looks like; only that the curve never falls is used.
 */
public final class Hull {
    private static final int SAMPLES = 2048;

    /** Loads and drops of the corners, both rising; the first is (0, 0). */
    public final long[] load;

    /** What the run has lost at each corner. */
    public final long[] drop;

    private Hull(long[] load, long[] drop) {
        this.load = load;
        this.drop = drop;
    }

    /**
     * Between two sampled loads the drop is at least that of the lower one, so the corner stands just below the upper
     * one.
     */
    static Hull of(ValuedRun run) {
        int samples = (int) Math.max(1, Math.min(SAMPLES, run.cap));
        long[] xs = new long[samples + 2];
        long[] ys = new long[samples + 2];
        int size = 1;
        for (int s = 0; s <= samples; s++) {
            long from = at(run.cap, s, samples);
            long to = s == samples ? run.cap : Math.max(from, at(run.cap, s + 1, samples) - 1);
            long height = run.drop(from);
            if (to == 0) {
                continue;
            }
            while (size >= 2 && below(xs, ys, size, to, height)) {
                size--;
            }
            if (xs[size - 1] < to) {
                xs[size] = to;
                ys[size++] = height;
            }
        }
        return new Hull(Arrays.copyOf(xs, size), Arrays.copyOf(ys, size));
    }

    private static long at(long cap, int s, int samples) {
        return cap / samples * s + cap % samples * s / samples;
    }

    /** The last corner lies on or above the line from the one before it to the new point. */
    private static boolean below(long[] xs, long[] ys, int size, long x, long y) {
        long dx1 = xs[size - 1] - xs[size - 2];
        long dy1 = ys[size - 1] - ys[size - 2];
        long dx2 = x - xs[size - 2];
        long dy2 = y - ys[size - 2];
        return Exact.compareProducts(dy1, dx2, dy2, dx1) >= 0;
    }
}
