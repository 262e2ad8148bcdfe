package bitterend.packing.patterns;

import bitterend.packing.linear.Budget;
import java.util.Random;

/** First plans: within milliseconds, and often already the best. */
final class Starts {
    private final Task task;
    private final Best best;
    private final Budget budget;
    private final Random random;
    private final Filler filler;

    Starts(Task task, Best best, long seed, Budget budget) {
        this.task = task;
        this.best = best;
        this.budget = budget;
        this.random = new Random(seed);
        this.filler = new Filler(task, random);
    }

    /** @param rounds of randomised filling after the plain ones */
    void run(int rounds) {
        long[] worth = lengths(task);
        // The very first plan is made whatever the budget says.
        offer(worth, Filler.Manner.LONGEST_FIRST, 0, Budget.endless());
        offer(worth, Filler.Manner.LEAST_SLACK, 0, budget);
        if (!best.complete()) {
            offer(weights(), Filler.Manner.LONGEST_FIRST, 0, budget);
        }
        for (int round = 0; round < rounds && task.kinds.length > 1 && !budget.over(); round++) {
            Filler.Manner manner = round % 2 == 0 ? Filler.Manner.LEAST_SLACK : Filler.Manner.LONGEST_FIRST;
            offer(worth, manner, 20 + 30 * (round % 8), budget);
        }
    }

    private void offer(long[] worth, Filler.Manner manner, int noise, Budget within) {
        Partial plan = new Partial(task);
        filler.complete(plan, worth, manner, noise, within);
        best.offer(plan.reels);
    }

    /** The shortest load of each item on any kind: what it takes of rope. */
    static long[] lengths(Task task) {
        long[] worth = new long[task.items];
        for (int i = 0; i < worth.length; i++) {
            worth[i] = Kind.NEVER;
            for (Kind kind : task.kinds) {
                worth[i] = Math.min(worth[i], kind.load[i]);
            }
            worth[i] = worth[i] == Kind.NEVER ? 0 : worth[i];
        }
        return worth;
    }

    private long[] weights() {
        return task.weight.clone();
    }
}
