package bitterend.packing.loads;

import bitterend.packing.effort.Budget;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Random;

/** Branch and bound for one stage, the node of the lowest bound first. */
final class LoadTree {
    private static final int DIVE_EVERY = 20;
    private static final int DIVES_AT_ROOT = 2;

    private final LoadModel model;
    private final Program program;
    private final NodeSolver solver;
    private final Goal goal;
    private final Node root;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.comparingLong((Node node) -> node.bound).thenComparingInt(node -> -node.depth));
    private final Random random;
    private int nodes;

    LoadTree(LoadModel model, int stage, long[] allowed, Goal goal, long seed) {
        this.model = model;
        this.goal = goal;
        Domain all = new Domain(model, allowed);
        root = new Node(all, 0, 0, Duals.none(model));
        root.empty = !all.spread();
        program = new Program(model, stage, all, seed);
        solver = new NodeSolver(model, program, stage);
        random = new Random(seed);
    }

    /** Works until proven or out of budget. */
    void run(Budget budget) {
        if (root.empty) {
            return;
        }
        open.add(root);
        while (!open.isEmpty() && open.peek().bound < goal.cutoff() && !budget.over()) {
            Node node = open.remove();
            Optional<Solution> solution = solve(node, budget);
            nodes++;
            if (solution.isPresent()) {
                expand(node, solution.get(), budget);
            } else if (budget.over() && node.bound < goal.cutoff()) {
                open.add(node);
            }
        }
    }

    private Optional<Solution> solve(Node node, Budget budget) {
        for (Pattern draw : DrawsToPacking.draws(model, goal.plans().best().packing())) {
            program.add(draw);
        }
        return solver.solve(node, goal.cutoff(), true, budget);
    }

    private void expand(Node node, Solution solution, Budget budget) {
        Optional<Decision> decision = new Branching(program, solution, node.domain).choose();
        if (decision.isEmpty()) {
            offer(solution);
            decision = solver.solve(node, goal.cutoff(), false, budget).flatMap(exact -> {
                offer(exact);
                return new Branching(program, exact, node.domain).choose();
            });
        } else if (nodes % DIVE_EVERY == 1) {
            dive(node, solution, budget);
        }
        if (node.bound < goal.cutoff()) {
            decision.ifPresent(at -> branch(node, at));
        }
    }

    private void offer(Solution solution) {
        goal.plans().offer(DrawsToPacking.packing(model, solution.means(model)));
    }

    private void branch(Node node, Decision decision) {
        node.decision = decision;
        node.yes = node.child(decision, true, model);
        node.no = node.child(decision, false, model);
        for (Node child : List.of(node.yes, node.no)) {
            if (!child.empty) {
                open.add(child);
            }
        }
    }

    private void dive(Node node, Solution solution, Budget budget) {
        int dives = nodes == 1 ? DIVES_AT_ROOT : 1;
        for (int d = 0; d < dives && node.bound < goal.cutoff() && !budget.over(); d++) {
            double noise = nodes == 1 && d == 0 ? 0 : 0.3;
            new Dive(program, solver.pricing(), node.domain, random, noise)
                    .run(solution, budget)
                    .ifPresent(goal.plans()::offer);
        }
    }

    /** The lowest bound of all leaves, in units; {@link WorkBound#IMPOSSIBLE} when no plan is left. */
    long bound() {
        return bound(root);
    }

    private static long bound(Node node) {
        if (node.empty) {
            return WorkBound.IMPOSSIBLE;
        }
        Node yes = node.yes;
        Node no = node.no;
        return yes == null || no == null ? node.bound : Math.max(node.bound, Math.min(bound(yes), bound(no)));
    }

    Node root() {
        return root;
    }

    /** States of the tables that one pricing takes, on an average. */
    long statesOfALeaf() {
        return solver.pricing().states();
    }

    int nodes() {
        return nodes;
    }
}
