package bitterend.packing.patterns;

import bitterend.packing.linear.Budget;
import java.util.ArrayList;
import java.util.List;

/** Adds cuts to a node, round by round, as long as they raise its value. */
final class Cutting {
    private static final int ROUNDS = 12;
    /** Nodes deeper than this are cut a few times only. */
    private static final int DEEPEST = 6;

    private static final int DEEP_ROUNDS = 1;
    /** Beside two for each item, so many rows are enough. */
    private static final int ROWS = 100;

    private final Task task;
    private final Budget budget;

    Cutting(Task task, Budget budget) {
        this.task = task;
        this.budget = budget;
    }

    /** @param target what plans of interest cost at most; a node that is shown to hold none is left as it is */
    void cut(PatternNode node, long target) {
        for (int round = 0; round < (node.depth <= DEEPEST ? ROUNDS : DEEP_ROUNDS) && !budget.over(); round++) {
            node.drop(target);
            node.dropCuts();
            double before = node.value();
            List<Cut> cuts = violated(node);
            cuts.forEach(node::add);
            if (cuts.isEmpty() || !solve(node, target)) {
                return;
            }
            if (round > (node.depth == 0 ? 3 : 0) && node.value() - before < 1e-4 * task.step) {
                return;
            }
        }
    }

    private List<Cut> violated(PatternNode node) {
        if (!node.lp.settle(budget)) {
            return List.of();
        }
        double[] x = node.lp.values();
        List<Cut> cuts = new ArrayList<>(new SubsetRows(task, node.columns(), x).violated());
        if (node.lp.rows() < ROWS + 2 * task.items) {
            cuts.addAll(new RoundedRows(node.lp, node.columns(), x).violated(budget));
        }
        return cuts;
    }

    /** False when the node is shown to hold nothing of interest, or the budget ended. */
    private boolean solve(PatternNode node, long target) {
        node.lp.dual(Double.MAX_VALUE, budget);
        return !node.proves(target) && node.lp.primal(budget) && !node.proves(target);
    }
}
