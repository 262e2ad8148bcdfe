package bitterend.packing.patterns;

import java.time.Duration;

/**
 * Closes what is left between a bound and the best plan: all patterns that a plan of at most some target could use are
 * enumerated, and the best plan of those is searched exactly. The target starts close to the bound, where few patterns
 * are left, and is raised until it meets the best plan.
 */
final class Endgame {
    private static final int FIRST = 16;

    private final Task task;
    private final Pricer pricer;
    private final Best best;
    private final long seed;
    private final int most;

    /** @param most patterns before giving up */
    Endgame(Task task, Pricer pricer, Best best, long seed, int most) {
        this.task = task;
        this.pricer = pricer;
        this.best = best;
        this.seed = seed;
        this.most = most;
    }

    /**
     * The highest bound that could be proven for plans that use so many reels of each kind.
     *
     * @param bound what is proven so far, and by which prices
     */
    long run(Bound bound, int[] least, int[] limit, Budget budget) {
        long proven = Math.max(task.roundUp(bound.ceiling()), best.bound());
        if (bound.price().length == 0 || !best.complete()) {
            return proven;
        }
        long distance = Math.max(task.step, (best.cutoff(Leaving.NEVER) - proven) / FIRST);
        while (proven < best.cutoff(Leaving.NEVER) && !budget.over()) {
            long last = best.cutoff(Leaving.NEVER) - task.step;
            // What would be left for one more step is taken along: each starts anew.
            long target = 2 * distance > last - proven ? last : proven + distance / task.step * task.step;
            Budget part = budget.part(Long.MAX_VALUE, Duration.ofMillis(budget.millisLeft() / 2 + 1));
            long found = step(bound, target, least, limit, part);
            budget.charge(part);
            proven = Math.max(proven, Math.min(found, best.cutoff(Leaving.NEVER)));
            if (found <= target && proven < best.cutoff(Leaving.NEVER)) {
                return proven;
            }
            distance *= 2;
        }
        return proven;
    }

    /** No plan costs less than what is returned; above the target when there is none that costs so little. */
    private long step(Bound bound, long target, int[] least, int[] limit, Budget budget) {
        Enumeration enumeration = new Enumeration(task, pricer, bound, most, budget);
        if (!enumeration.run(target, least)) {
            return 0;
        }
        return new Selection(task, best, target, seed, budget).search(enumeration.found(), least, limit);
    }
}
