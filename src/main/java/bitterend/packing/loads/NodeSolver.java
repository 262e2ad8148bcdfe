package bitterend.packing.loads;

import bitterend.packing.effort.Budget;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Column generation at a node: draws that improve the program, charges that its values break, and the best bound met. */
final class NodeSolver {
    private static final double IMPROVES = -1e-8;
    /** Rows for charges added at a time. */
    private static final int ROWS = 40;

    /** Thousandths of the program's own prices among those that draws are looked for by. */
    private static final int OF_THE_PROGRAM = 500;

    private static final int PART_OF_THE_GAP = 50;

    private static final int[] MIXES = {20, 60, 150, 300, 600};

    private final LoadModel model;
    private final Program program;
    private final Pricing pricing;
    private final int stage;
    private final int[] counts;
    private final boolean[] none;
    /** Distance between program and bound from which on nothing is gained any more. */
    private final long slack;

    NodeSolver(LoadModel model, Program program, int stage) {
        this.model = model;
        this.program = program;
        this.stage = stage;
        pricing = new Pricing(model, stage == Item.NONE);
        counts = Arrays.stream(model.items).mapToInt(Item::count).toArray();
        none = new boolean[model.reels.length];
        slack = stage == Item.NONE ? Math.max(2, 300 / model.unit) : Math.max(1, Penalty.unit(model) / 100);
    }

    Pricing pricing() {
        return pricing;
    }

    /**
     * Raises the bound of a node.
     *
     * @param cutoff from here on the node is of no interest
     * @param rough ends once little of what is left below the cutoff can be gained
     * @return the values of the program once nothing improves it; empty when the cutoff was reached or the budget ended
     */
    Optional<Solution> solve(Node node, long cutoff, boolean rough, Budget budget) {
        Duals parent = node.duals;
        double separated = -Double.MAX_VALUE;
        program.goBack(node.basics);
        program.enter(node.domain, none, List.of(), pattern -> false, budget);
        while (!budget.over()) {
            if (!program.solve(budget)) {
                return Optional.empty();
            }
            double[] y = program.y();
            Duals duals = program.duals(y);
            Duals used = steadied(node.duals, duals);
            ReelOffer[] offers = pricing.price(used, node.domain, counts, none, budget);
            improve(node, used, offers);
            if (node.bound >= cutoff || (program.value() > cutoff && mixed(node, duals, parent, cutoff, budget))) {
                return Optional.empty();
            }
            int added = add(offers, y);
            if (added == 0 && used != duals) {
                offers = pricing.price(duals, node.domain, counts, none, budget);
                improve(node, duals, offers);
                added = add(offers, y);
            }
            if (added == 0 || program.value() - node.bound < near(node, cutoff, rough)) {
                Solution solution = program.solution();
                boolean gains = !rough || program.value() - separated > near(node, cutoff, rough);
                separated = program.value();
                if (stage != Item.NONE || !gains || program.separate(solution, ROWS) == 0) {
                    node.basics = program.basics();
                    return Optional.of(solution);
                }
            }
        }
        return Optional.empty();
    }

    /** What is not worth another round: a little of what is left between the bound and the cutoff. */
    private long near(Node node, long cutoff, boolean rough) {
        return !rough || cutoff >= WorkBound.IMPOSSIBLE
                ? slack
                : Math.max(slack, (cutoff - node.bound) / PART_OF_THE_GAP);
    }

    /**
     * Prices between those of the program and the best so far, which move about less.
     *
     * <p>Source: P. Wentges, "Weighted Dantzig-Wolfe decomposition for linear mixed-integer programming", International
     * Transactions in Operational Research 4 (1997) 151-162.
     */
    private static Duals steadied(Duals best, Duals now) {
        return best.isNone() ? now : now.mixed(best, OF_THE_PROGRAM);
    }

    private int add(ReelOffer[] offers, double[] y) {
        int added = 0;
        for (ReelOffer offer : offers) {
            if (offer.worth() > ReelOffer.IMPOSSIBLE) {
                Pattern pattern = offer.pattern();
                if (program.reduced(pattern, y) < IMPROVES && program.add(pattern)) {
                    added++;
                }
            }
        }
        return added;
    }

    private boolean improve(Node node, Duals duals, ReelOffer[] offers) {
        long proven = NodeBound.of(model, node.domain, duals, offers, stage);
        if (proven > node.bound) {
            node.bound = proven;
            node.duals = duals;
            return true;
        }
        return false;
    }

    /** The program stands above the cutoff but its bound does not: prices between its own and the parent's may. */
    private boolean mixed(Node node, Duals duals, Duals parent, long cutoff, Budget budget) {
        if (parent == duals || parent.piece.length == 0) {
            return false;
        }
        for (int thousandths : MIXES) {
            Duals mix = duals.mixed(parent, thousandths);
            improve(node, mix, pricing.price(mix, node.domain, counts, none, budget));
            if (node.bound >= cutoff) {
                return true;
            }
        }
        return false;
    }
}
