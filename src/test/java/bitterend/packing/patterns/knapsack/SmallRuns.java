package bitterend.packing.patterns.knapsack;

import java.util.Random;

/** A run with a curve of its own and a few items at prices, drawn by lot, and what can be cut from it, way by way. */
final class SmallRuns {
    final long scale;
    final ValuedRun run;
    final long[] load;
    final long[] price;
    final int[] demand;
    final ItemsByDensity order;

    private SmallRuns(Random random, boolean flat) {
        scale = random.nextBoolean() ? 1L + random.nextInt(4) : 1_000L + random.nextInt(4_000);
        int items = 1 + random.nextInt(4);
        int length = 8 + random.nextInt(24);
        int loss = random.nextInt(3);
        load = new long[items];
        price = new long[items];
        demand = new int[items];
        for (int i = 0; i < items; i++) {
            load[i] = 1L + random.nextInt(length);
            price[i] = random.nextInt(6) == 0 ? 0 : 1L + random.nextLong(20 * scale);
            demand[i] = random.nextInt(6) == 0 ? 0 : 1 + random.nextInt(3);
        }
        long[] value = flat ? new long[length + 1] : rising(random, length);
        run = new ValuedRun(length, length + loss, 0, left -> value[(int) left]);
        order = ItemsByDensity.of(load, price, demand, run.cap);
    }

    /** One whose rest may be worth something. */
    static SmallRuns any(Random random) {
        return new SmallRuns(random, random.nextInt(4) == 0);
    }

    /** Worths of what is left, from nothing to the whole length: steep in places and level in others. */
    static long[] rising(Random random, int length) {
        long[] value = new long[length + 1];
        int most = 1 + random.nextInt(12);
        for (int left = 1; left <= length; left++) {
            value[left] = value[left - 1] + (random.nextInt(3) == 0 ? 0 : random.nextInt(most));
        }
        return value;
    }

    /** The most that can be gained from here: items from a place in the order on, or none of them. */
    long best(int u, long drawn, long worth) {
        long best = worth - scale * run.drop(drawn);
        for (int v = u; v < order.size; v++) {
            for (int copies = 1; copies <= demand[order.item[v]]; copies++) {
                long more = drawn + copies * load[order.item[v]];
                if (more <= run.cap) {
                    best = Math.max(best, best(v + 1, more, worth + copies * price[order.item[v]]));
                }
            }
        }
        return best;
    }
}
