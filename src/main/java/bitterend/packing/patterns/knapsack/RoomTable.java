package bitterend.packing.patterns.knapsack;

import bitterend.packing.effort.Budget;
import java.util.Optional;

/**
 * The most that the items from each place in the order on bring in each room of a run that is cut flat, exactly: where many
 * ways bring nearly as much as the best, a bound by density alone is followed far beyond the last of them (R. Bellman,
 * <i>Dynamic Programming</i>, Princeton 1957).
 */
public final class RoomTable implements Reach {
    /** Cells of a table, 8 bytes each. */
    private static final long MOST_CELLS = 16_000_000;

    private static final int CELLS_A_STEP = 4;
    /** A table takes no more than one in so many of the steps that are left: it is made to be searched by. */
    private static final int PART = 4;

    private final long[][] most;
    private final long cap;
    private final long step;

    private RoomTable(long[][] most, long cap, long step) {
        this.most = most;
        this.cap = cap;
        this.step = step;
    }

    /** A table for a run; empty where that is not cut flat, is too finely divided, or would take most of the budget. */
    public static Optional<RoomTable> of(ItemsByDensity order, ValuedRun run, Budget budget) {
        if (!run.flat() || order.size == 0) {
            return Optional.empty();
        }
        long step = 0;
        for (long load : order.load) {
            step = Exact.gcd(step, load);
        }
        long cells = run.cap / step + 1;
        long steps = cells * order.size / CELLS_A_STEP;
        if (cells * order.size > MOST_CELLS || steps > budget.left() / PART) {
            return Optional.empty();
        }
        budget.spend(steps);
        long[][] most = new long[order.size + 1][];
        most[order.size] = new long[(int) cells];
        for (int u = order.size - 1; u >= 0; u--) {
            most[u] = with(most[u + 1], (int) (order.load[u] / step), order.worth[u], order.bound[u]);
        }
        return Optional.of(new RoomTable(most, run.cap, step));
    }

    /** Up to so many copies more, in bundles of one, two, four and so on. */
    private static long[] with(long[] before, int load, long worth, int copies) {
        long[] layer = before.clone();
        int left = copies;
        for (int bundle = 1; left > 0; bundle *= 2) {
            int taken = Math.min(bundle, left);
            left -= taken;
            long shift = (long) taken * load;
            for (int c = layer.length - 1; c >= shift; c--) {
                layer[c] = Math.max(layer[c], layer[c - (int) shift] + taken * worth);
            }
        }
        return layer;
    }

    @Override
    public long from(int u, long load, long worth) {
        return worth + most[u][(int) ((cap - load) / step)];
    }
}
