package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.ItemsByDensity;
import bitterend.packing.patterns.knapsack.Reach;
import bitterend.packing.patterns.knapsack.RunSolution;
import bitterend.packing.patterns.knapsack.ValuedRun;
import java.util.ArrayList;
import java.util.List;

/** All ways to draw from one run that bring at least so much. */
final class RunEnumeration {
    private final ValuedRun run;
    private final ItemsByDensity order;
    private final Reach reach;
    private final long scale;
    private final FoundPatterns found;
    private final long enough;
    private final boolean maximal;
    private final int[] count;
    private final List<RunSolution> ways = new ArrayList<>();

    /**
     * @param order the items at their prices
     * @param enough what a way has to bring
     * @param maximal ways that something could be added to are left out
     */
    RunEnumeration(
            ValuedRun run,
            ItemsByDensity order,
            Reach reach,
            long scale,
            long enough,
            boolean maximal,
            FoundPatterns found) {
        this.run = run;
        this.order = order;
        this.reach = reach;
        this.scale = scale;
        this.enough = enough;
        this.maximal = maximal;
        this.found = found;
        this.count = new int[order.size];
    }

    /** Looks for them; what there is so far when it had to be given up. */
    List<RunSolution> find() {
        descend(0, 0, 0);
        return ways;
    }

    private void descend(int from, long load, long worth) {
        if (!found.step()) {
            return;
        }
        if (load > 0) {
            long reducedProfit = worth - scale * run.drop(load);
            if (reducedProfit >= enough && (!maximal || nothingFits(load))) {
                keep(reducedProfit);
            }
        }
        long rest = run.cap - load;
        for (int u = from; u < order.size && found.all(); u++) {
            if (order.shortest[u] > rest || reach.from(u, load, worth) < enough) {
                return;
            }
            long each = order.load[u];
            for (int c = (int) Math.min(order.bound[u], rest / each); c > 0; c--) {
                count[u] = c;
                descend(u + 1, load + c * each, worth + c * order.worth[u]);
            }
            count[u] = 0;
        }
    }

    private boolean nothingFits(long load) {
        long rest = run.cap - load;
        for (int u = 0; u < order.size; u++) {
            if (order.load[u] <= rest && count[u] < order.bound[u]) {
                return false;
            }
        }
        return true;
    }

    private void keep(long reducedProfit) {
        if (!found.room(ways.size())) {
            return;
        }
        int size = 0;
        for (int c : count) {
            size += c > 0 ? 1 : 0;
        }
        int[] items = new int[size];
        int[] counts = new int[size];
        size = 0;
        for (int u = 0; u < count.length; u++) {
            if (count[u] > 0) {
                items[size] = order.item[u];
                counts[size++] = count[u];
            }
        }
        ways.add(new RunSolution(reducedProfit, items, counts));
    }
}
