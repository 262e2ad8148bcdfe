package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.Optional;

/** The optimum of a small problem by {@link SmallProblem}, which the searches are tested without. */
final class StateReferee {
    private static final long STEPS = 2_000_000_000L;

    private StateReferee() {}

    /** Least weight left out and least cost with it; nothing when there are too many states. */
    static Optional<Exhaustive.Optimum> optimum(Instance instance) {
        Incumbent best = new Incumbent(instance, progress -> {});
        if (instance.types.length == 0) {
            return Optional.of(new Exhaustive.Optimum(best.weight(), 0));
        }
        return SmallProblem.settle(instance, best, Rejection.NEVER, STEPS, Budget.endless())
                ? Optional.of(new Exhaustive.Optimum(best.weight(), best.cost()))
                : Optional.empty();
    }
}
