package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.RunSolution;

/**
 * The best way to draw from a reel of several runs: each run by itself, where runs before the last one drawn are drawn
 * or cut off.
 */
final class JoinedRuns {
    private final ReelType type;
    private final PricingProblem pricing;
    private final RunSolution[] bests;
    private long reducedProfit = Pricer.LOW;
    private int last = -1;

    JoinedRuns(RunSearch search) {
        type = search.type;
        pricing = search.pricing;
        bests = new RunSolution[type.runs.length];
        long before = -type.opening * pricing.scale;
        for (int r = 0; r < bests.length; r++) {
            RunSolution best = search.best(r, Pricer.LOW);
            bests[r] = best;
            if (best.reducedProfit() > Pricer.LOW && before + best.reducedProfit() > reducedProfit) {
                reducedProfit = before + best.reducedProfit();
                last = r;
            }
            before += Math.max(best.reducedProfit(), cutOff(r));
        }
    }

    /** What cutting off a run unused brings. */
    private long cutOff(int r) {
        return -type.runs[r].handling * pricing.scale;
    }

    /** No way to draw from the reel brings more. */
    long reducedProfit() {
        return reducedProfit;
    }

    /** One pattern of the ways to draw from the runs; no item is taken more often than it may be. */
    Pattern pattern(Instance instance) {
        int[] left = pricing.bound.clone();
        int most = 0;
        for (int r = 0; r <= last; r++) {
            most += bests[r].items().length;
        }
        int[] runs = new int[most];
        int[] items = new int[most];
        int[] counts = new int[most];
        int size = 0;
        for (int r = 0; r <= last; r++) {
            if (r < last && bests[r].reducedProfit() <= cutOff(r)) {
                continue;
            }
            for (int t = 0; t < bests[r].items().length; t++) {
                int item = bests[r].items()[t];
                int count = Math.min(left[item], bests[r].counts()[t]);
                left[item] -= count;
                runs[size] = r;
                items[size] = item;
                counts[size++] = count;
            }
        }
        return Pattern.of(instance, type.index, runs, items, counts, size);
    }
}
