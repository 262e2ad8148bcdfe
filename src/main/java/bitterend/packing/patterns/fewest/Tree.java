package bitterend.packing.patterns.fewest;

import bitterend.packing.effort.Budget;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * One search by one rule, the deepest node first, and of two the one in which pieces lie together. A search that tries sides
 * branches where one side is shut at once, if there is such a decision among the best by its rule: a few that leave nothing on
 * one side say more than one that is open on both.
 *
 * <p>Source: D. Applegate, R. Bixby, V. Chvatal, W. Cook, <i>The Traveling Salesman Problem: A Computational Study</i>,
 * Princeton 2006, ch. 14 (trying branches out; from memory).
 */
final class Tree {
    private static final int CELLS_A_STEP = 4;
    /** Columns that one pricing of a node adds. */
    private static final int MOST_AT_A_NODE = 20;
    /** Decisions of which sides are tried at a node. */
    private static final int TRIED = 10;

    private static final List<Boolean> SIDES = List.of(true, false);

    private final ReelQuestion question;
    private final Program program;
    private final PatternTable table;
    private final Rule rule;
    final boolean triesSides;
    final Node root;
    private final Deque<Node> open = new ArrayDeque<>();
    private List<Column> plan = List.of();
    private boolean stuck;
    private int nodes;

    Tree(ReelQuestion question, Program program, PatternTable table, Rule rule, boolean triesSides) {
        this.question = question;
        this.program = program;
        this.table = table;
        this.rule = rule;
        this.triesSides = triesSides;
        root = new Node(new Limits(question), program.basics());
        open.add(root);
    }

    /** Looks at so many more nodes, or sides that are tried; whether the question is answered. */
    boolean run(int more, Budget budget) {
        int last = nodes + more;
        while (!open.isEmpty() && nodes < last && !stuck) {
            Node node = open.peekLast();
            if (!settle(node, budget)) {
                return false;
            }
            open.removeLast();
            nodes++;
            if (!plan.isEmpty()) {
                return true;
            }
            branch(node);
        }
        return open.isEmpty() && !stuck;
    }

    private void branch(Node node) {
        Decision decision = node.decision;
        if (decision == null) {
            return;
        }
        node.no = side(node, decision, false);
        node.yes = side(node, decision, true);
        open.addLast(node.no);
        open.addLast(node.yes);
    }

    /** A plan that was found. */
    List<Column> plan() {
        return plan;
    }

    /** A node could not be branched any further. */
    boolean isStuck() {
        return stuck;
    }

    int nodes() {
        return nodes;
    }

    private static Node side(Node of, Decision decision, boolean holds) {
        return new Node(of.limits.with(decision, holds), of.end);
    }

    /** Solves a node: it is shut by prices, or branched, or a plan is found; false when the budget ended first. */
    private boolean settle(Node node, Budget budget) {
        double[] shares = relaxed(node, budget);
        if (node.isShut() || budget.over()) {
            return node.isShut();
        }
        List<Decision> best = best(shares);
        if (best.isEmpty()) {
            double[] settled = program.settled(budget);
            shares = settled.length == 0 ? shares : settled;
            best = best(shares);
        }
        if (best.isEmpty()) {
            plan = plan(shares);
            stuck = plan.isEmpty() && !budget.over();
            return !plan.isEmpty() || !budget.over();
        }
        if (node == root) {
            program.thin();
        }
        node.end = program.basics();
        Decision decision = triesSides ? shutting(node, best, budget) : best.get(0);
        if (budget.over() && plan.isEmpty()) {
            return false;
        }
        node.decision = decision;
        return true;
    }

    private List<Decision> best(double[] shares) {
        return rule.best(triesSides ? TRIED : 1, question, program, shares);
    }

    /** How often each pattern is cut; nothing where the node is shut, or pieces are always too few or too many. */
    private double[] relaxed(Node node, Budget budget) {
        if (node.isShut()) {
            return new double[0];
        }
        program.enter(node.limits, node.basics, budget);
        double[] shares = {};
        do {
            if (!converged(node, budget) || node.isShut()) {
                return new double[0];
            }
            shares = program.shares(budget);
        } while (shares.length == 0 && program.dearer());
        return shares;
    }

    /** The first decision of which one side is shut at once, together before apart; else the first of all. */
    private Decision shutting(Node node, List<Decision> best, Budget budget) {
        for (boolean holds : SIDES) {
            for (Decision decision : best) {
                Node side = side(node, decision, holds);
                double[] shares = relaxed(side, budget);
                nodes++;
                if (side.isShut()) {
                    return decision;
                }
                if (budget.over()) {
                    return best.get(0);
                }
                plan = plan(shares);
                if (!plan.isEmpty()) {
                    return decision;
                }
            }
        }
        return best.get(0);
    }

    /** Adds patterns until none lowers the program or the node is shut; false when the budget ended first. */
    private boolean converged(Node node, Budget budget) {
        int added = 1;
        while (added > 0 && node.prices == null) {
            if (!program.solve(budget)) {
                return false;
            }
            added = priced(node, program.prices(), budget);
        }
        return !budget.over();
    }

    /** Shuts the node where these prices leave no plan; else adds patterns that lower the program, and says how many. */
    private int priced(Node node, int[] prices, Budget budget) {
        long demand = 0;
        for (int i = 0; i < prices.length; i++) {
            demand += (long) prices[i] * question.count[i];
        }
        long most = question.isSpare() ? 0 : Long.MIN_VALUE;
        List<Column> found = new ArrayList<>();
        for (Limits.Group group : node.limits.groups()) {
            budget.spend(table.cells(group) / CELLS_A_STEP);
            table.fill(prices, group);
            int best = table.best();
            if (best <= PatternTable.REACHED) {
                continue;
            }
            most = Math.max(most, best);
            int floor = program.scale() + prices.length / 16 + 2;
            for (int item = group.first(); best > floor && item < prices.length; item++) {
                table.through(item, floor).ifPresent(found::add);
            }
        }
        if (most == Long.MIN_VALUE || demand > Math.multiplyExact(most, question.reels)) {
            node.prices = prices;
            return 0;
        }
        int added = 0;
        for (Column column : node == root ? found : dearest(found, prices)) {
            added += program.add(column) ? 1 : 0;
        }
        return added;
    }

    /** Behind the root few are missing, and every column more is looked at in each node that follows. */
    private static List<Column> dearest(List<Column> found, int[] prices) {
        return found.stream()
                .distinct()
                .sorted(Comparator.comparingLong((Column column) -> column.worth(prices))
                        .reversed())
                .limit(MOST_AT_A_NODE)
                .toList();
    }

    /** The plan that whole shares are; none where they are not. */
    private List<Column> plan(double[] shares) {
        List<Column> reels = new ArrayList<>();
        for (int c = 0; c < shares.length; c++) {
            for (long times = Math.round(shares[c]); times > 0; times--) {
                reels.add(program.column(c));
            }
        }
        int[] left = question.count.clone();
        for (Column column : reels) {
            for (int t = 0; t < column.item.length; t++) {
                left[column.item[t]] -= column.count[t];
            }
        }
        boolean all = reels.size() <= question.reels;
        for (int each : left) {
            all &= each == 0;
        }
        return all ? reels : List.of();
    }
}
