package bitterend.packing.patterns.knapsack;

/**
 * The pieces worth most, less what the run loses, from one run: depth first, densest items first, within the demand.
 *
 * <p>Source: E. Horowitz, S. Sahni, "Computing partitions with applications to the knapsack problem", Journal of the
 * ACM 21 (1974) 277-292; the bounded form after S. Martello, P. Toth, <i>Knapsack Problems</i>, Wiley 1990, chapter 3.
 */
public final class Knapsack {
    private final ItemsByDensity order;
    private final ValuedRun run;
    private final KnapsackBound reach;
    private final long scale;
    private final long most;
    private final int[] count;
    private final int[] chosen;
    private long nodes;
    private long best;
    private int depth;
    private int[] bestCount = new int[0];
    private int[] bestItem = new int[0];
    private boolean stopped;

    /** @param most nodes before the search gives up */
    public Knapsack(ItemsByDensity order, ValuedRun run, KnapsackBound reach, long scale, long most) {
        this.order = order;
        this.run = run;
        this.reach = reach;
        this.scale = scale;
        this.most = most;
        this.count = new int[order.size];
        this.chosen = new int[order.size];
    }

    /** Looks for something better than {@code floor}; true when the search was complete. */
    public boolean search(long floor) {
        best = floor;
        descend(0, 0, 0);
        return !stopped;
    }

    private void descend(int from, long load, long worth) {
        long rest = run.cap - load;
        for (int u = from; u < order.size; u++) {
            if (order.shortest[u] > rest || reach.from(u, load, worth) <= best) {
                return;
            }
            long each = order.load[u];
            if (each > rest) {
                continue;
            }
            if (++nodes > most) {
                stopped = true;
                return;
            }
            chosen[depth] = u;
            for (int c = (int) Math.min(order.bound[u], rest / each); c > 0; c--) {
                count[depth] = c;
                depth++;
                take(u, load + c * each, worth + c * order.worth[u]);
                depth--;
                if (stopped) {
                    return;
                }
            }
        }
    }

    private void take(int u, long load, long worth) {
        long reducedProfit = worth - scale * run.drop(load);
        if (reducedProfit > best) {
            best = reducedProfit;
            bestCount = new int[depth];
            bestItem = new int[depth];
            for (int t = 0; t < depth; t++) {
                bestCount[t] = count[t];
                bestItem[t] = order.item[chosen[t]];
            }
        }
        descend(u + 1, load, worth);
    }

    /** The best worth less drop that was found, or the floor. */
    public long best() {
        return best;
    }

    /** Nodes looked at. */
    public long nodes() {
        return nodes;
    }

    /** Whether anything beat the floor. */
    public boolean found() {
        return bestItem.length > 0;
    }

    /** The items of the best found. */
    public int[] items() {
        return bestItem;
    }

    /** How many of each of {@link #items()}. */
    public int[] counts() {
        return bestCount;
    }
}
