package bitterend.packing.loads;

import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.Undone;
import bitterend.packing.effort.Budget;
import bitterend.packing.proof.PriceList;
import bitterend.packing.proof.ProofTree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * Bounds on a day and plans for it: first what stays undone, class after class, then what the rest costs.
 *
 * <p>Method: Lagrangean bounds by column generation over single reels with an exact table for each run; branching on
 * whether a run is used, on its load, on the lot of a set, on the lots of an order and on what stays undone.
 */
public final class LoadPacker {
    /** Steps of the engine that count as one of an effort's. */
    private static final long STEPS = 100;
    /** Share of the time that is left for the question what stays undone, in per cent. */
    private static final int FOR_WORK = 50;

    private static final int MOST_LEAVES = 400;
    /** States of tables that whoever checks a proof is asked to look at. */
    private static final long STATES_OF_A_PROOF = 200_000_000;

    private final LoadModel model;
    private final Plans plans;
    private final long seed;
    private final List<LeastWork> least = new ArrayList<>();

    private LoadPacker(LoadModel model, Plans plans, long seed) {
        this.model = model;
        this.plans = plans;
        this.seed = seed;
    }

    /** An engine for a day; empty when its runs are too finely divided for tables. */
    public static Optional<LoadPacker> of(PackingProblem problem, Plans plans, long seed) {
        return LoadModelBuilder.of(problem, false).map(model -> new LoadPacker(model, plans, seed));
    }

    /** Works until all is proven or the effort ends. */
    public Answer run(Effort effort) {
        long steps = effort.work() > Long.MAX_VALUE / STEPS ? Long.MAX_VALUE : effort.work() * STEPS;
        Budget budget = Budget.of(steps, effort.time(), effort.cancelled());
        long[] bound = new long[LoadModel.CLASSES];
        boolean proven = true;
        for (int k = 0; k < LoadModel.CLASSES && proven; k++) {
            bound[k] = leastUndone(k, bound, budget);
            proven = plans.best().undone()[k] <= bound[k];
        }
        return money(proven, model, budget);
    }

    private Answer money(boolean leastProven, LoadModel day, Budget budget) {
        long[] allowed = plans.best().undone();
        boolean isShort = !Arrays.equals(allowed, day.floor);
        LoadModel model = isShort ? LoadModelBuilder.of(day.problem, true).orElse(day) : day;
        Goal goal = new Goal(model, plans, Item.NONE, allowed);
        LoadTree tree = new LoadTree(model, Item.NONE, inModel(model, allowed, LoadModel.CLASSES), goal, seed);
        tree.run(budget);
        ProofWriter proof = new ProofWriter(model, Item.NONE, tree.root(), leaves(tree));
        return new Answer(
                least,
                leastProven,
                Undone.of(LongStream.of(allowed).boxed().toList()),
                cost(tree.bound(), model),
                cost(proof.proven(), model),
                proof.proof(tree.root()),
                tree.nodes());
    }

    private static int leaves(LoadTree tree) {
        return (int) Math.max(1, Math.min(MOST_LEAVES, STATES_OF_A_PROOF / Math.max(1, tree.statesOfALeaf())));
    }

    /** In 1/1000 minor unit; nothing where the tree has no plan left and so says nothing of any. */
    private static long cost(long bound, LoadModel model) {
        return bound >= WorkBound.IMPOSSIBLE ? 0 : Math.max(0, bound * model.unit);
    }

    /** Least weight of a class that any plan leaves undone, given that the classes before stay at their least. */
    private long leastUndone(int urgency, long[] before, Budget budget) {
        if (plans.best().undone()[urgency] <= model.floor[urgency]) {
            if (model.floor[urgency] > 0) {
                ProofTree plain = ProofTree.of(List.of(), 1, new PriceList(List.of(), List.of(), List.of(), List.of()));
                least.add(new LeastWork(urgency + 1, model.floor[urgency], plain));
            }
            return model.floor[urgency];
        }
        Budget part = budget.part(Long.MAX_VALUE, java.time.Duration.ofMillis(budget.millisLeft() * FOR_WORK / 100));
        Goal goal = new Goal(model, plans, urgency, before);
        LoadTree tree = new LoadTree(model, urgency, inModel(model, before, urgency), goal, seed);
        tree.run(part);
        budget.charge(part);
        ProofWriter proof = new ProofWriter(model, urgency, tree.root(), leaves(tree));
        least.add(new LeastWork(urgency + 1, weight(proof.proven(), urgency), proof.proof(tree.root())));
        return weight(tree.bound(), urgency);
    }

    private long weight(long bound, int urgency) {
        long weight = bound >= WorkBound.IMPOSSIBLE ? 0 : Math.max(0, -Math.floorDiv(-bound, Penalty.unit(model)));
        return Math.min(plans.best().undone()[urgency], model.floor[urgency] + weight);
    }

    /** What the engine's own pieces may leave undone: limits of the first classes, everything of the rest. */
    private static long[] inModel(LoadModel model, long[] limits, int classes) {
        long[] allowed = model.everything();
        for (int k = 0; k < classes; k++) {
            allowed[k] = Math.max(0, Math.min(allowed[k], limits[k] - model.floor[k]));
        }
        return Arrays.copyOf(allowed, allowed.length);
    }

    /**
     * No plan leaves less of a class undone, given that it leaves no more of the classes before than the best plan.
     *
     * @param urgency the class, from 1
     * @param weight what the proof shows
     * @param proof the proof
     */
    public record LeastWork(int urgency, long weight, ProofTree proof) {}

    /**
     * What is proven.
     *
     * @param least what no plan leaves less of, class by class as far as it was asked
     * @param leastProven whether no plan leaves less undone than the best one
     * @param undone what the bounds on the cost speak of: plans that leave no more undone in any class
     * @param bound none of them costs less, in 1/1000 minor unit
     * @param shown what the proof shows of it
     * @param proof the proof
     * @param nodes looked at
     */
    public record Answer(
            List<LeastWork> least,
            boolean leastProven,
            Undone undone,
            long bound,
            long shown,
            ProofTree proof,
            int nodes) {
        public Answer {
            least = List.copyOf(least);
        }
    }
}
