package bitterend.packing.loads;

import bitterend.packing.PackingProblem;
import bitterend.packing.linear.Budget;
import java.util.Optional;

/**
 * Bounds on a day and plans for it: first what stays undone, class after class, then what the rest costs.
 *
 * <p>Method: Lagrangean bounds by column generation over single reels with an exact table for each run; branching on
 * whether a run is used, on its load, on the lot of a set, on the lots of an order and on what stays undone.
 */
public final class LoadPacker {
    private final LoadModel model;
    private final Plans plans;
    private final long seed;

    private LoadPacker(LoadModel model, Plans plans, long seed) {
        this.model = model;
        this.plans = plans;
        this.seed = seed;
    }

    /** An engine for a day; empty when its runs are too finely divided for tables. */
    public static Optional<LoadPacker> of(PackingProblem problem, Plans plans, long seed) {
        return LoadModelBuilder.of(problem).map(model -> new LoadPacker(model, plans, seed));
    }

    /** Works until all is proven or the budget ends. */
    public Answer run(Budget budget) {
        long[] least = new long[LoadModel.CLASSES];
        boolean proven = true;
        for (int k = 0; k < LoadModel.CLASSES && proven; k++) {
            least[k] = leastUndone(k, least, budget);
            proven = plans.best().undone()[k] <= least[k];
        }
        long[] allowed = plans.best().undone();
        Goal goal = new Goal(model, plans, Item.NONE, allowed);
        LoadTree tree = new LoadTree(model, Item.NONE, inModel(allowed, LoadModel.CLASSES), goal, seed);
        tree.run(budget);
        long bound = tree.bound() >= WorkBound.IMPOSSIBLE ? 0 : Math.max(0, tree.bound() * model.unit);
        return new Answer(least, proven, allowed, bound, tree.nodes());
    }

    /** Least weight of a class that any plan leaves undone, given that the classes before stay at their least. */
    private long leastUndone(int urgency, long[] before, Budget budget) {
        if (plans.best().undone()[urgency] <= model.floor[urgency]) {
            return model.floor[urgency];
        }
        Goal goal = new Goal(model, plans, urgency, before);
        LoadTree tree = new LoadTree(model, urgency, inModel(before, urgency), goal, seed);
        tree.run(budget);
        long bound = tree.bound();
        long weight = bound >= WorkBound.IMPOSSIBLE ? 0 : Math.max(0, -Math.floorDiv(-bound, Penalty.unit(model)));
        return Math.min(plans.best().undone()[urgency], model.floor[urgency] + weight);
    }

    /** What the engine's own pieces may leave undone: limits of the first classes, everything of the rest. */
    private long[] inModel(long[] limits, int classes) {
        long[] allowed = model.everything();
        for (int k = 0; k < classes; k++) {
            allowed[k] = Math.max(0, Math.min(allowed[k], limits[k] - model.floor[k]));
        }
        return allowed;
    }

    /**
     * What is proven.
     *
     * @param leastUndone no plan leaves less undone, class by class as far as it is proven
     * @param leastProven whether the best plan leaves just that
     * @param undone what the bound on the cost speaks of: plans that leave no more undone in any class
     * @param bound none of them costs less, in 1/1000 minor unit
     * @param nodes looked at
     */
    public record Answer(long[] leastUndone, boolean leastProven, long[] undone, long bound, int nodes) {}
}
