package bitterend.packing.patterns.knapsack;

/**
 * How much worth, less what the run loses, can still be reached from a load: the bound of all knapsack searches. It
 * follows the convex hull of the drop up to the corner where the hull gets steeper than the densest item left.
 */
public final class KnapsackBound implements Reach {
    private final ItemsByDensity order;
    private final long cap;
    private final int shift;
    private final boolean flat;
    private final long[] cornerLoad;

    private final long[] cornerDrop;
    private final long[] slope;
    /** Behind which corners the drop over a load does not fit while it is shifted. */
    private final boolean[] steep;

    /** For every place in the order, the corner up to which filling pays. */
    private final int[] corner;

    /** @param scale units of worth to a unit of cost */
    public KnapsackBound(ItemsByDensity order, ValuedRun run, Hull hull, long scale) {
        this.order = order;
        this.cap = run.cap;
        this.shift = order.shift;
        this.flat = run.flat();
        int corners = hull.load.length;
        cornerLoad = hull.load;
        cornerDrop = new long[corners];
        slope = new long[corners];
        steep = new boolean[corners];
        corner = new int[order.size + 1];
        if (flat) {
            return;
        }
        for (int s = 0; s < corners; s++) {
            cornerDrop[s] = Math.multiplyExact(hull.drop[s], scale);
        }
        for (int s = 0; s + 1 < corners; s++) {
            long width = cornerLoad[s + 1] - cornerLoad[s];
            slope[s] = shifted(cornerDrop[s + 1] - cornerDrop[s], width);
            steep[s] = slope[s] == Long.MAX_VALUE || Math.multiplyHigh(width, slope[s]) != 0 || width * slope[s] < 0;
        }
        slope[corners - 1] = Long.MAX_VALUE;
        int s = corners - 1;
        for (int u = 0; u <= order.size; u++) {
            while (s > 0 && slope[s - 1] >= order.density[u]) {
                s--;
            }
            corner[u] = s;
        }
    }

    /** {@code rise * 2^shift / width}, rounded down; the largest number if it does not fit. */
    private long shifted(long rise, long width) {
        long quotient = rise / width;
        long rest = rise % width;
        for (int bit = 0; bit < shift; bit++) {
            if (quotient >= 1L << 61) {
                return Long.MAX_VALUE;
            }
            rest <<= 1;
            quotient <<= 1;
            if (rest >= width) {
                rest -= width;
                quotient++;
            }
        }
        return quotient;
    }

    @Override
    public long from(int u, long load, long worth) {
        return worth + gain(u, load);
    }

    private long gain(int u, long load) {
        if (flat) {
            return ((cap - load) * order.density[u]) >> shift;
        }
        int s = corner[u];
        if (load <= cornerLoad[s]) {
            return (((cornerLoad[s] - load) * order.density[u]) >> shift) - cornerDrop[s];
        }
        while (s + 1 < cornerLoad.length && cornerLoad[s + 1] < load) {
            s++;
        }
        return -cornerDrop[s] - (s + 1 < cornerLoad.length ? part(s, load - cornerLoad[s]) : 0);
    }

    /** The drop from a corner on over so much load, never more than it is: in whole units of worth where the hull is steep. */
    private long part(int s, long load) {
        return steep[s]
                ? load * ((cornerDrop[s + 1] - cornerDrop[s]) / (cornerLoad[s + 1] - cornerLoad[s]))
                : (load * slope[s]) >> shift;
    }
}
