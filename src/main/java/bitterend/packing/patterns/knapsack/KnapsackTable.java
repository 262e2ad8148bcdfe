package bitterend.packing.patterns.knapsack;

import bitterend.packing.effort.Budget;
import java.util.Arrays;

/**
 * All loads worth reaching with their highest worth: a list of states, each better than every shorter one. Exact where
 * depth-first search does not end, and one list serves all runs of a rope.
 *
 * <p>Source: H. Kellerer, U. Pferschy, D. Pisinger, <i>Knapsack Problems</i>, Springer 2004, section 3.4 (dynamic
 * programming with lists).
 */
public final class KnapsackTable {
    /** States that cannot become interesting any more may be left out. */
    public interface Hopeless {
        boolean test(int next, long load, long worth);
    }

    private final ItemsByDensity order;
    private final long cap;
    private final int most;
    private long[] load = new long[1024];
    private long[] worth = new long[1024];
    private int[] parent = new int[1024];
    private int[] via = new int[1024];
    private int[] times = new int[1024];
    private int size;
    private int[] front = new int[1024];
    private int[] spare = new int[1024];
    private int frontSize;

    /** @param most states to keep before giving up */
    public KnapsackTable(ItemsByDensity order, long cap, int most) {
        this.order = order;
        this.cap = cap;
        this.most = most;
    }

    /** False when there are too many states or the budget ended. */
    public boolean build(Hopeless hopeless, Budget budget) {
        add(0, 0, -1, -1, 0);
        front[0] = 0;
        frontSize = 1;
        for (int u = 0; u < order.size; u++) {
            int left = order.bound[u];
            for (int chunk = 1; left > 0; chunk *= 2) {
                int now = Math.min(chunk, left);
                left -= now;
                if (!merge(u, now, left == 0 ? u + 1 : u, hopeless)) {
                    return false;
                }
                if (budget.spend(frontSize)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean merge(int u, int now, int next, Hopeless hopeless) {
        long dl = order.load[u] * now;
        long dw = order.worth[u] * now;
        if (spare.length < 2 * frontSize) {
            spare = new int[4 * frontSize];
        }
        int a = 0;
        int b = 0;
        int out = 0;
        long last = -1;
        while (a < frontSize || b < frontSize) {
            long la = a < frontSize ? load[front[a]] : Long.MAX_VALUE;
            long lb = b < frontSize ? load[front[b]] + dl : Long.MAX_VALUE;
            if (lb > cap) {
                b = frontSize;
                lb = Long.MAX_VALUE;
                if (a == frontSize) {
                    break;
                }
            }
            if (la < lb || (la == lb && worth[front[a]] >= worth[front[b]] + dw)) {
                int state = front[a++];
                if (worth[state] > last && !hopeless.test(next, la, worth[state])) {
                    last = worth[state];
                    spare[out++] = state;
                }
            } else {
                int from = front[b++];
                long w = worth[from] + dw;
                if (w > last && !hopeless.test(next, lb, w)) {
                    last = w;
                    if (size >= most) {
                        return false;
                    }
                    spare[out++] = add(lb, w, from, u, now);
                }
            }
        }
        int[] swap = front;
        front = spare;
        spare = swap;
        frontSize = out;
        return true;
    }

    private int add(long l, long w, int from, int u, int now) {
        if (size == load.length) {
            int room = size * 2;
            load = Arrays.copyOf(load, room);
            worth = Arrays.copyOf(worth, room);
            parent = Arrays.copyOf(parent, room);
            via = Arrays.copyOf(via, room);
            times = Arrays.copyOf(times, room);
        }
        load[size] = l;
        worth[size] = w;
        parent[size] = from;
        via[size] = u;
        times[size] = now;
        return size++;
    }

    /** How many states there are, by rising load. */
    public int states() {
        return frontSize;
    }

    /** Load of a state. */
    public long load(int state) {
        return load[front[state]];
    }

    /** Worth of a state. */
    public long worth(int state) {
        return worth[front[state]];
    }

    /** Adds the items of a state to the counts. */
    public void trace(int state, int[] counts) {
        for (int s = front[state]; s > 0; s = parent[s]) {
            counts[order.item[via[s]]] += times[s];
        }
    }
}
