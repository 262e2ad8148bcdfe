package bitterend.packing.patterns.knapsack;

import java.util.Arrays;

/**
 * The items of one rope for one set of prices, densest first: how much a unit of load can bring at most from a place
 * in the order onwards. Densities are whole numbers scaled by a power of two and rounded up, so that no bound made of
 * them is ever too low.
 */
public final class ItemsByDensity {
    /** How many items there are. */
    public final int size;
    /** Index of each item in the problem. */
    public final int[] item;
    /** Length and cut loss of each. */
    public final long[] load;
    /** Price of each at the scale asked for. */
    public final long[] worth;
    /** How many of each may be taken. */
    public final int[] bound;
    /** Highest density from here on, times {@code 2^shift}. */
    final long[] density;
    /** Shortest load from here on. */
    public final long[] shortest;

    final int shift;

    private ItemsByDensity(int size, int shift) {
        this.size = size;
        this.shift = shift;
        item = new int[size];
        load = new long[size];
        worth = new long[size];
        bound = new int[size];
        density = new long[size + 1];
        shortest = new long[size + 1];
    }

    /** Items with a price, a demand and a load of at most {@code cap}. */
    public static ItemsByDensity of(long[] loads, long[] price, int[] demand, long cap) {
        int count = 0;
        int shift = 62;
        long dearest = 1;
        for (int i = 0; i < loads.length; i++) {
            if (price[i] > 0 && demand[i] > 0 && loads[i] <= cap) {
                count++;
                dearest = Math.max(dearest, price[i]);
                shift = Math.min(shift, 60 - bits(cap) - bits(price[i]) + bits(loads[i]));
            }
        }
        shift = Math.max(0, Math.min(shift, 62 - bits(dearest)));
        ItemsByDensity order = new ItemsByDensity(count, shift);
        order.fill(loads, price, demand, cap);
        return order;
    }

    private static int bits(long number) {
        return 64 - Long.numberOfLeadingZeros(number);
    }

    private void fill(long[] loads, long[] price, int[] demand, long cap) {
        long[] keys = new long[size];
        int width = bits(loads.length);
        long top = 1;
        int t = 0;
        for (int i = 0; i < loads.length; i++) {
            if (price[i] > 0 && demand[i] > 0 && loads[i] <= cap) {
                long dense = dense(price[i], loads[i]);
                keys[t++] = dense;
                top = Math.max(top, dense);
            }
        }
        int drop = Math.max(0, bits(top) + width - 62);
        t = 0;
        for (int i = 0; i < loads.length; i++) {
            if (price[i] > 0 && demand[i] > 0 && loads[i] <= cap) {
                keys[t] = ((keys[t] >>> drop) << width) | (loads.length - i);
                t++;
            }
        }
        Arrays.sort(keys);
        shortest[size] = Long.MAX_VALUE;
        for (int u = size - 1; u >= 0; u--) {
            int i = loads.length - (int) (keys[size - 1 - u] & ((1L << width) - 1));
            item[u] = i;
            load[u] = loads[i];
            worth[u] = price[i];
            bound[u] = (int) Math.min(demand[i], cap / loads[i]);
            density[u] = Math.max(density[u + 1], dense(price[i], loads[i]));
            shortest[u] = Math.min(shortest[u + 1], loads[i]);
        }
    }

    private long dense(long price, long load) {
        return ((price << shift) + load - 1) / load;
    }
}
