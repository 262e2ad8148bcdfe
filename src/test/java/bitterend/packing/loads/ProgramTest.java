package bitterend.packing.loads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The linear program as it goes from node to node, against one that is made anew for the node. */
final class ProgramTest {
    private static final int DAYS = 80;
    /** A node ends when what another round can gain is less, in units. */
    private static final double SLACK = 303;

    @Test
    void nodeEnteredFromItsParent_comesToWhatAFreshProgramComesTo() {
        int compared = 0;
        for (Root root : roots()) {
            Decision decision = new Branching(root.program, root.solution, root.node.domain)
                    .choose()
                    .orElse(null);
            if (decision == null) {
                continue;
            }
            for (boolean holds : new boolean[] {true, false}) {
                Node child = root.node.child(decision, holds, root.model);
                Optional<Root> fresh = child.empty ? Optional.empty() : root(root.model, child.domain.copy());
                if (fresh.isPresent() && root.solve(child).isPresent()) {
                    assertEquals(fresh.get().program.value(), root.program.value(), SLACK);
                    compared++;
                }
            }
        }
        assertTrue(compared > 20, "compared only " + compared);
    }

    @Test
    void rowsThatAreAddedWhenBroken_holdInTheEnd() {
        int looked = 0;
        for (Root root : roots()) {
            for (OrderOnLots order : root.model.orders) {
                int[] columns = root.program.choices().lotColumns(order);
                for (Item item : order.items) {
                    for (int l = 0; l < item.slots; l++) {
                        double most = item.count() * (root.solution.value(columns[l]) + 0.011);
                        assertTrue(cut(root.solution, item, l) <= most, order.number + " on lot " + l);
                        looked++;
                    }
                }
            }
        }
        assertTrue(looked > 20, "looked only at " + looked);
    }

    private static double cut(Solution solution, Item item, int lot) {
        double sum = 0;
        for (Solution.Share share : solution.shares()) {
            Pattern pattern = share.pattern();
            for (int t = 0; t < pattern.item.length; t++) {
                if (pattern.item[t] == item.index && item.slot[pattern.reel] == lot) {
                    sum += share.value() * pattern.count[t];
                }
            }
        }
        return sum;
    }

    /** A node solved by a program of its own. */
    private record Root(LoadModel model, Program program, NodeSolver solver, Node node, Solution solution) {
        Optional<Solution> solve(Node other) {
            return solver.solve(other, WorkBound.IMPOSSIBLE - 1, false, Budget.endless());
        }
    }

    private static List<Root> roots() {
        List<Root> roots = new ArrayList<>();
        for (int seed = 0; seed < DAYS; seed++) {
            LoadModelBuilder.of(TightDay.of(seed, 7), false)
                    .flatMap(model -> root(model, new Domain(model, new long[LoadModel.CLASSES])))
                    .ifPresent(roots::add);
        }
        return roots;
    }

    private static Optional<Root> root(LoadModel model, Domain domain) {
        Node node = new Node(domain, 0, 0, Duals.none(model));
        if (!domain.spread()) {
            return Optional.empty();
        }
        Program program = new Program(model, Item.NONE, domain, 1);
        NodeSolver solver = new NodeSolver(model, program, Item.NONE);
        return solver.solve(node, WorkBound.IMPOSSIBLE - 1, false, Budget.endless())
                .map(solution -> new Root(model, program, solver, node, solution));
    }
}
