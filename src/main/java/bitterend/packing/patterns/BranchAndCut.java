package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/**
 * The best plan made of given patterns, exactly: branch and bound over their linear program, with cuts and reduced cost
 * fixing. The node of the lowest bound goes first. Every node is bounded by whole numbers worked out from the duals, not
 * by what the linear program says.
 *
 * <p>Sources: D. M. Ryan, B. A. Foster, "An integer programming approach to scheduling", in: Computer Scheduling of
 * Public Transport, North-Holland 1981, 269-280 (pairs that are cut together or not); F. Vanderbeck, "Computational
 * study of a column generation algorithm for bin packing and cutting stock problems", Mathematical Programming 86
 * (1999) 565-594; M. Jepsen, B. Petersen, S. Spoorendonk, D. Pisinger, "Subset-row inequalities applied to the
 * vehicle-routing problem with time windows", Operations Research 56 (2008) 497-511; D. Applegate, R. Bixby, V. Chvatal,
 * W. Cook, "Finding cuts in the TSP", DIMACS 95-05 (1995) (branches tried for a few steps).
 */
final class BranchAndCut {
    private static final double WHOLE = 1e-6;
    /** Down to this depth so many branches are tried for so many steps before one is chosen. */
    private static final int TESTED_DEPTH = 10;

    private static final int TESTED = 8;
    private static final int TESTED_STEPS = 50;
    private static final double LITTLE = 1e-9;
    /** So many columns in all open nodes: above that the search goes deep first, so that memory is bounded. */
    private static final long COLUMNS = 600_000;

    private static final int DEEPEST = 500;
    private static final int WIDE = 50;
    private static final int DEEP = 50;
    private static final int LAYERS = 64;

    private final Instance instance;
    private final Incumbent best;
    private final long highest;
    private final PatternProgram program;
    private final GreedyHeuristic filler;
    private final long[] lengths;
    private final PriorityQueue<PatternNode> open =
            new PriorityQueue<>(Comparator.comparingLong(this::layer).thenComparingInt(node -> -node.depth));
    private long lowest;
    private long thickness = 1;
    private final ArrayDeque<PatternNode> deep = new ArrayDeque<>();
    private Budget budget = Budget.endless();
    private long openColumns;
    /** Lowest bound of nodes given up: too fine for floating point, too deep, or cut short. */
    private long given = Long.MAX_VALUE;

    private long nodes;
    private boolean diving;

    /** @param highest cost that is of interest */
    BranchAndCut(Instance instance, Incumbent best, long highest, long seed) {
        this.highest = highest;
        this.instance = instance;
        this.best = best;
        program = new PatternProgram(instance);
        filler = new GreedyHeuristic(instance, new Random(seed));
        lengths = InitialPlans.lengths(instance);
    }

    /** Starts with all plans made of these patterns; false when the budget ended first. */
    boolean open(List<Pattern> patterns, int[] least, int[] most, Budget within) {
        budget = within;
        PatternNode root = program.root(patterns, least, most);
        if (!root.lp.primal(budget)) {
            return false;
        }
        root.raise();
        lowest = root.bound();
        thickness = Math.max(1, (target() - lowest) / LAYERS);
        keep(root);
        return true;
    }

    /** Bounds that differ by next to nothing count as equal: among those the deepest node goes first. */
    private long layer(PatternNode node) {
        return (node.bound() - lowest) / thickness;
    }

    /** Goes on until nothing is open or the budget ends. */
    void search(Budget within) {
        budget = within;
        while (!budget.over()) {
            PatternNode node = next();
            if (node == null) {
                return;
            }
            if (node.bound() <= target()) {
                expand(node);
            }
        }
    }

    /**
     * A proven bound on all plans made of the patterns that cost less than the best known: above the highest cost of
     * interest, or the cost of the best known plan, when the search came to its end.
     */
    long bound() {
        long least = Math.min(given, target() + instance.step);
        for (PatternNode node : open) {
            least = Math.min(least, node.bound());
        }
        for (PatternNode node : deep) {
            least = Math.min(least, node.bound());
        }
        return least;
    }

    /** Whether there is anything left to search. */
    boolean live() {
        return !deep.isEmpty() || !open.isEmpty();
    }

    private long target() {
        return Math.min(highest, best.cutoff(Rejection.NEVER) - instance.step);
    }

    /** In turn a number of nodes of the lowest bound and a number of the deepest ones below the last of them. */
    private @Nullable PatternNode next() {
        diving = nodes % (WIDE + DEEP) >= WIDE;
        while (!diving && openColumns <= COLUMNS && !deep.isEmpty()) {
            leave(deep.pollLast());
        }
        PatternNode node = deep.pollLast();
        if (node == null) {
            node = open.poll();
            openColumns -= node == null ? 0 : node.columns().size();
        }
        return node;
    }

    /** Solved nodes that may hold something better are kept for later. */
    private void keep(PatternNode node) {
        if (node.proves(target())) {
            return;
        }
        new Separation(instance, budget).cut(node, target());
        if (node.proves(target())) {
            return;
        }
        node.raise();
        if (budget.over()) {
            // The program may have been left half solved: its reduced costs do not say which columns can go.
            given = Math.min(given, node.bound());
            return;
        }
        node.drop(target());
        node.dropCuts();
        node.lp.release();
        leave(node);
    }

    private void leave(PatternNode node) {
        if (diving || openColumns > COLUMNS) {
            deep.addLast(node);
        } else {
            openColumns += node.columns().size();
            open.add(node);
        }
    }

    private void expand(PatternNode node) {
        nodes++;
        boolean settled = node.lp.settle(budget);
        double[] x = node.lp.values();
        if (budget.over() || !settled || node.depth > DEEPEST || !node.feasible(x, WHOLE)) {
            given = Math.min(given, node.bound());
            return;
        }
        offer(node, x);
        List<Branch> candidates = new Branching(instance, program.counted, node.columns(), x)
                .candidates(node.depth < TESTED_DEPTH ? TESTED : 1);
        if (candidates.isEmpty()) {
            given = node.proves(target()) ? given : Math.min(given, node.bound());
            return;
        }
        if (!node.proves(target())) {
            Branch branch = strongest(node, candidates);
            solve(node, branch, false);
            solve(node, branch, true);
        }
    }

    private void solve(PatternNode node, Branch branch, boolean more) {
        PatternNode side = node.side(branch, more);
        side.lp.dual((target() + 0.01 * instance.step) / program.unit, budget);
        if (side.proves(target())) {
            return;
        }
        if (side.lp.primal(budget)) {
            keep(side);
        } else {
            given = Math.min(given, side.bound());
        }
    }

    /** The branch both sides of which, tried for a few steps, cost most. */
    private Branch strongest(PatternNode node, List<Branch> candidates) {
        Branch chosen = candidates.get(0);
        double highestScore = -1;
        for (Branch branch : candidates) {
            if (candidates.size() < 2 || budget.over()) {
                return chosen;
            }
            double more = Math.max(LITTLE, tried(node, branch, true) - node.value());
            double less = Math.max(LITTLE, tried(node, branch, false) - node.value());
            if (highestScore >= 0 && Math.max(more * less, highestScore) <= LITTLE * LITTLE) {
                return chosen;
            }
            if (more * less > highestScore) {
                highestScore = more * less;
                chosen = branch;
            }
        }
        return chosen;
    }

    /** What the program comes to on one side of a branch, or what would cut it off. */
    private double tried(PatternNode node, Branch branch, boolean more) {
        PatternNode side = node.side(branch, more);
        double enough = (target() + 0.01 * instance.step) / program.unit;
        side.lp.dual(enough, budget, TESTED_STEPS);
        return Math.min(side.value(), enough * program.unit);
    }

    /** Offers the whole part of a solution, filled up. */
    private void offer(PatternNode node, double[] x) {
        PartialPlan plan = new PartialPlan(instance);
        List<Pattern> whole = new ArrayList<>();
        for (int j = 0; j < x.length; j++) {
            Pattern pattern = node.columns().get(j);
            for (int t = 1; t <= x[j] + WHOLE && !pattern.empty(); t++) {
                whole.add(pattern);
            }
            int times = pattern.empty() ? 0 : Math.min((int) Math.floor(x[j] + WHOLE), plan.room(pattern));
            if (times > 0) {
                plan.cut(pattern, times);
            }
        }
        best.offer(whole);
        filler.complete(plan, lengths, GreedyHeuristic.Manner.LEAST_SLACK, 0, budget);
        best.offer(plan.reels);
    }
}
