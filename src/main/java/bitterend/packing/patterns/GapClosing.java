package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * Closes what is left between a bound and the best plan: all patterns that a plan of at most some target could use are
 * enumerated, and the best plan of those is searched exactly. The target starts close to the bound, where few patterns
 * are left, and is raised until it meets the best plan.
 */
final class GapClosing {
    private static final int FIRST = 16;

    private final Instance instance;
    private final Pricer pricer;
    private final Incumbent best;
    private final long seed;
    private int most;
    private long target;
    private @Nullable BranchAndCut open;

    /** @param most patterns before giving up */
    GapClosing(Instance instance, Pricer pricer, Incumbent best, long seed, int most) {
        this.instance = instance;
        this.pricer = pricer;
        this.best = best;
        this.seed = seed;
        this.most = most;
    }

    /** From now on so many patterns are not too many. */
    void most(int patterns) {
        most = patterns;
    }

    /**
     * The highest bound that could be proven for plans that use so many reels of each kind. Called again with the same
     * numbers it goes on where it was.
     *
     * @param bound what is proven so far, and by which prices
     */
    long run(Bound bound, int[] least, int[] limit, Budget budget) {
        long proven = Math.max(instance.roundUp(bound.ceiling()), best.bound());
        if (bound.price().length == 0 || !best.complete()) {
            return proven;
        }
        long distance = Math.max(instance.step, (best.cutoff(Rejection.NEVER) - proven) / FIRST);
        while (proven < best.cutoff(Rejection.NEVER) && !budget.over()) {
            long last = best.cutoff(Rejection.NEVER) - instance.step;
            Budget part = budget.part(Long.MAX_VALUE, Duration.ofMillis(budget.millisLeft() / 2 + 1));
            if (open == null) {
                // What would be left for one more step is taken along: each starts anew.
                target = 2 * distance > last - proven ? last : proven + distance / instance.step * instance.step;
                open = step(bound, least, limit, part);
                distance *= 2;
            }
            if (open != null) {
                open.search(part);
                proven = Math.max(proven, Math.min(open.bound(), best.cutoff(Rejection.NEVER)));
            }
            budget.charge(part);
            if (open == null || open.live()) {
                return proven;
            }
            boolean all = open.bound() > Math.min(target, last);
            open = null;
            if (!all) {
                return proven;
            }
        }
        return proven;
    }

    /** All plans that cost at most the target; null when there are too many patterns for them. */
    private @Nullable BranchAndCut step(Bound bound, int[] least, int[] limit, Budget budget) {
        Enumeration enumeration = new Enumeration(instance, pricer, bound, most, budget);
        if (!enumeration.run(target, least)) {
            return null;
        }
        BranchAndCut selection = new BranchAndCut(instance, best, target, seed);
        return selection.open(enumeration.found(), least, limit, budget) ? selection : null;
    }
}
