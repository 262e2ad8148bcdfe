package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.Hulls;
import bitterend.packing.patterns.knapsack.ItemsByDensity;
import bitterend.packing.patterns.knapsack.Knapsack;
import bitterend.packing.patterns.knapsack.KnapsackBound;
import bitterend.packing.patterns.knapsack.KnapsackTable;
import bitterend.packing.patterns.knapsack.RunSolution;
import bitterend.packing.patterns.knapsack.SharedStates;
import bitterend.packing.patterns.knapsack.ValuedRun;

/**
 * The search for the best way to draw from a run: depth first, and where that does not end, over all loads. Serves all
 * runs of one kind.
 */
final class RunSearch {
    private static final long HEURISTIC_NODES = 3_000;
    private static final long EXACT_NODES = 40_000;
    private static final int BLOCK = 32;

    final ReelType type;
    final PricingProblem pricing;
    private final ItemsByDensity order;
    private final SharedStates shared;
    private final Hulls hulls;
    private boolean safe = true;

    /** @param order the items of the kind's rope at the prices asked about */
    RunSearch(ReelType type, PricingProblem pricing, ItemsByDensity order, SharedStates shared, Hulls hulls) {
        this.type = type;
        this.pricing = pricing;
        this.order = order;
        this.shared = shared;
        this.hulls = hulls;
    }

    /** False if some net found so far may be below what exists. */
    boolean safe() {
        return safe;
    }

    /** The best way to draw from run r that brings more than {@code floor}. */
    RunSolution best(int r, long floor) {
        ValuedRun run = type.runs[r];
        RunSolution best = searched(run, floor);
        return best.found() && best.reducedProfit() >= 0 ? best : worthless(run, best);
    }

    /** Where nothing brings more than it costs, a run may still be drawn for a piece of no price: the shortest. */
    private RunSolution worthless(ValuedRun run, RunSolution best) {
        long[] load = type.load;
        int shortest = -1;
        for (int i = 0; i < load.length; i++) {
            if (pricing.price[i] <= 0
                    && pricing.bound[i] > 0
                    && load[i] <= run.cap
                    && (shortest < 0 || load[i] < load[shortest])) {
                shortest = i;
            }
        }
        if (shortest < 0) {
            return best;
        }
        long reducedProfit = -pricing.scale * run.drop(load[shortest]);
        return reducedProfit > best.reducedProfit()
                ? new RunSolution(reducedProfit, new int[] {shortest}, new int[] {1})
                : best;
    }

    private RunSolution searched(ValuedRun run, long floor) {
        KnapsackBound reach = new KnapsackBound(order, run, hulls.of(run), pricing.scale);
        long nodes = pricing.heuristic ? HEURISTIC_NODES : shared.tried() ? 1 : EXACT_NODES;
        Knapsack knapsack = new Knapsack(order, run, reach, pricing.scale, nodes);
        boolean complete = knapsack.search(floor);
        pricing.budget.spend(knapsack.nodes());
        if (complete || pricing.heuristic) {
            safe &= complete;
            return new RunSolution(knapsack.best(), knapsack.items(), knapsack.counts());
        }
        KnapsackTable all = shared.list();
        return all != null ? readOff(all, run, floor) : byLoads(run, reach, knapsack);
    }

    /** Goes on from a search that did not end: over all loads, and if those are too many, with what can be reached. */
    private RunSolution byLoads(ValuedRun run, KnapsackBound reach, Knapsack knapsack) {
        long best = knapsack.best();
        KnapsackTable states = new KnapsackTable(order, run.cap, SharedStates.MOST);
        if (!states.build((next, load, worth) -> reach.from(next, load, worth) <= best, pricing.budget)) {
            return new RunSolution(Math.max(best, reach.from(0, 0, 0)), knapsack.items(), knapsack.counts());
        }
        RunSolution better = readOff(states, run, best);
        return better.found() ? better : new RunSolution(best, knapsack.items(), knapsack.counts());
    }

    /** The state that brings most, and more than {@code floor}; blocks that cannot hold one are passed over. */
    private RunSolution readOff(KnapsackTable states, ValuedRun run, long floor) {
        long scale = pricing.scale;
        long best = floor;
        int at = -1;
        for (int from = 0; from < states.states() && states.load(from) <= run.cap; from += BLOCK) {
            int to = Math.min(from + BLOCK, states.states());
            if (states.worth(to - 1) - scale * run.drop(states.load(from)) <= best) {
                continue;
            }
            for (int s = from; s < to && states.load(s) <= run.cap; s++) {
                long reducedProfit = states.worth(s) - scale * run.drop(states.load(s));
                if (reducedProfit > best && states.load(s) > 0) {
                    best = reducedProfit;
                    at = s;
                }
            }
        }
        if (at < 0) {
            return RunSolution.none(best);
        }
        int[] all = new int[pricing.price.length];
        states.trace(at, all);
        return RunSolution.of(best, all);
    }
}
