package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.List;

/** Adds cuts to a node, round by round, as long as they raise its value. */
final class Separation {
    private static final int ROUNDS = 12;
    /** Nodes deeper than this are cut a few times only. */
    private static final int DEEPEST = 6;

    private static final int DEEP_ROUNDS = 1;
    /** Beside two for each item, so many rows are enough. */
    private static final int ROWS = 100;

    private final Instance instance;
    private final Budget budget;

    Separation(Instance instance, Budget budget) {
        this.instance = instance;
        this.budget = budget;
    }

    /** @param target what plans of interest cost at most; a node that is shown to hold none is left as it is */
    void cut(PatternNode node, long target) {
        for (int round = 0; round < (node.depth <= DEEPEST ? ROUNDS : DEEP_ROUNDS) && !budget.over(); round++) {
            node.drop(target);
            node.dropCuts();
            double before = node.value();
            List<ValidInequality> cuts = violated(node);
            cuts.forEach(node::add);
            if (cuts.isEmpty() || !solve(node, target)) {
                return;
            }
            if (round > (node.depth == 0 ? 3 : 0) && node.value() - before < 1e-4 * instance.step) {
                return;
            }
        }
    }

    private List<ValidInequality> violated(PatternNode node) {
        if (!node.lp.settle(budget)) {
            return List.of();
        }
        double[] x = node.lp.values();
        List<ValidInequality> cuts = new ArrayList<>(new SubsetRows(instance, node.columns(), x).violated());
        if (node.lp.rows() < ROWS + 2 * instance.items) {
            cuts.addAll(new ChvatalGomoryCuts(node.lp, node.columns(), x).violated(budget));
        }
        return cuts;
    }

    /** False when the node is shown to hold nothing of interest, or the budget ended. */
    private boolean solve(PatternNode node, long target) {
        node.lp.dual(Double.MAX_VALUE, budget);
        return !node.proves(target) && node.lp.primal(budget) && !node.proves(target);
    }
}
