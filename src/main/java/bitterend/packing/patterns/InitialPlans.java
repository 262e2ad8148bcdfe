package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.Random;

/** First plans: within milliseconds, and often already the best. */
final class InitialPlans {
    private final Instance instance;
    private final Incumbent best;
    private final Budget budget;
    private final Random random;
    private final GreedyHeuristic filler;

    InitialPlans(Instance instance, Incumbent best, long seed, Budget budget) {
        this.instance = instance;
        this.best = best;
        this.budget = budget;
        this.random = new Random(seed);
        this.filler = new GreedyHeuristic(instance, random);
    }

    /** @param rounds of randomised filling after the plain ones */
    void run(int rounds) {
        long[] worth = lengths(instance);
        // The very first plan is made whatever the budget says.
        offer(worth, GreedyHeuristic.Manner.LONGEST_FIRST, 0, Budget.endless());
        offer(worth, GreedyHeuristic.Manner.LEAST_SLACK, 0, budget);
        if (!best.complete()) {
            offer(weights(), GreedyHeuristic.Manner.LONGEST_FIRST, 0, budget);
        }
        for (int round = 0; round < rounds && instance.types.length > 1 && !budget.over(); round++) {
            GreedyHeuristic.Manner manner =
                    round % 2 == 0 ? GreedyHeuristic.Manner.LEAST_SLACK : GreedyHeuristic.Manner.LONGEST_FIRST;
            offer(worth, manner, 20 + 30 * (round % 8), budget);
        }
    }

    private void offer(long[] worth, GreedyHeuristic.Manner manner, int noise, Budget within) {
        PartialPlan plan = new PartialPlan(instance);
        filler.complete(plan, worth, manner, noise, within);
        best.offer(plan.reels);
    }

    /** The shortest load of each item on any kind: what it takes of rope. */
    static long[] lengths(Instance instance) {
        long[] worth = new long[instance.items];
        for (int i = 0; i < worth.length; i++) {
            worth[i] = ReelType.NEVER;
            for (ReelType type : instance.types) {
                worth[i] = Math.min(worth[i], type.load[i]);
            }
            worth[i] = worth[i] == ReelType.NEVER ? 0 : worth[i];
        }
        return worth;
    }

    private long[] weights() {
        return instance.weight.clone();
    }
}
