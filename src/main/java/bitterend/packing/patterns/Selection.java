package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The best plan made of given patterns, exactly: branch and bound over their linear program, with subset-row cuts and
 * reduced cost fixing. Every node is cut off by whole numbers worked out from the duals, not by what the linear program
 * says.
 *
 * <p>Sources: D. M. Ryan, B. A. Foster, "An integer programming approach to scheduling", in: Computer Scheduling of
 * Public Transport, North-Holland 1981, 269-280 (pairs that are cut together or not); F. Vanderbeck, "Computational
 * study of a column generation algorithm for bin packing and cutting stock problems", Mathematical Programming 86
 * (1999) 565-594; M. Jepsen, B. Petersen, S. Spoorendonk, D. Pisinger, "Subset-row inequalities applied to the
 * vehicle-routing problem with time windows", Operations Research 56 (2008) 497-511.
 */
final class Selection {
    private static final double WHOLE = 1e-6;
    private static final double DEAR = 100;
    private static final int CUT_ROUNDS = 12;
    /** Beside two for each item, so many rows are enough. */
    private static final int ROWS = 100;

    /** Deeper than any search that comes to an end in time. */
    private static final int DEEPEST = 500;

    private final Task task;
    private final Best best;
    private final Budget budget;
    private final long highest;
    private final double unit;
    private final long scale;
    private final boolean counted;
    /** Where a piece cut once too often is not free to leave out, no piece may be cut too often. */
    private final boolean exact;

    private final Filler filler;
    private final long[] lengths;
    private boolean complete = true;
    private long nodes;

    /** @param highest cost that is of interest */
    Selection(Task task, Best best, long highest, long seed, Budget budget) {
        this.highest = highest;
        this.task = task;
        this.best = best;
        this.budget = budget;
        double largest = 1;
        boolean limited = task.kinds.length > 1;
        for (Kind kind : task.kinds) {
            largest = Math.max(largest, (double) kind.dearest());
            limited |= kind.limited;
        }
        unit = largest;
        counted = limited;
        exact = !task.trimmable();
        int bits = Math.max(1, Math.getExponent(unit) + 1);
        int pieces = 64 - Long.numberOfLeadingZeros(task.pieces());
        scale = 1L << Math.max(0, Math.min(36, 50 - pieces) - bits);
        filler = new Filler(task, new java.util.Random(seed));
        lengths = Starts.lengths(task);
    }

    /** A node: its program, and the pattern of each column, nothing for the rows' own. */
    private static final class Node {
        final Simplex lp;
        List<Pattern> columns;

        Node(Simplex lp, List<Pattern> columns) {
            this.lp = lp;
            this.columns = columns;
        }

        Node copy() {
            return new Node(lp.copy(), columns);
        }

        void addRow(double rhs, int[] at, double[] coefficients) {
            lp.addRow(rhs, at, coefficients, DEAR);
            columns = new ArrayList<>(columns);
            columns.add(Pattern.NOTHING);
            columns.add(Pattern.NOTHING);
        }
    }

    /**
     * True when no plan made of these patterns costs at most the highest cost of interest and less than the best known.
     */
    boolean search(List<Pattern> patterns, int[] least, int[] most) {
        Node node = root(patterns, least, most);
        if (node.lp.primal(budget) && !pruned(node)) {
            cut(node);
            if (!pruned(node)) {
                explore(node, 0);
            }
        }
        return complete && !budget.over();
    }

    long nodes() {
        return nodes;
    }

    private Node root(List<Pattern> patterns, int[] least, int[] most) {
        int m = task.items;
        int kinds = counted ? task.kinds.length : 0;
        int rows = m + 2 * kinds + (exact ? m : 0);
        double[] rhs = new double[rows];
        double[] price = new double[rows];
        Arrays.fill(price, DEAR);
        for (int i = 0; i < m; i++) {
            rhs[i] = task.demand[i];
            if (exact) {
                rhs[m + 2 * kinds + i] = -task.demand[i];
            }
        }
        for (int k = 0; k < kinds; k++) {
            rhs[m + k] = -most[k];
            rhs[m + kinds + k] = least[k];
        }
        Node node = new Node(new Simplex(rhs, price, 7), new ArrayList<>());
        for (int j = 0; j < node.lp.columns(); j++) {
            node.columns.add(Pattern.NOTHING);
        }
        for (Pattern pattern : patterns) {
            node.lp.addColumn(rows(pattern), coefficients(pattern), pattern.cost / unit);
            node.columns.add(pattern);
        }
        return node;
    }

    private int[] rows(Pattern pattern) {
        int size = pattern.item.length;
        int[] rows = Arrays.copyOf(pattern.item, size + (counted ? 2 : 0) + (exact ? size : 0));
        int at = size;
        if (counted) {
            rows[at++] = task.items + pattern.kind;
            rows[at++] = task.items + task.kinds.length + pattern.kind;
        }
        for (int t = 0; t < size && exact; t++) {
            rows[at++] = task.items + (counted ? 2 * task.kinds.length : 0) + pattern.item[t];
        }
        return rows;
    }

    private double[] coefficients(Pattern pattern) {
        int size = pattern.item.length;
        double[] values = new double[size + (counted ? 2 : 0) + (exact ? size : 0)];
        int at = size;
        for (int t = 0; t < size; t++) {
            values[t] = pattern.count[t];
        }
        if (counted) {
            values[at++] = -1;
            values[at++] = 1;
        }
        for (int t = 0; t < size && exact; t++) {
            values[at++] = -pattern.count[t];
        }
        return values;
    }

    private long target() {
        return Math.min(highest, best.cutoff(Leaving.NEVER) - task.step);
    }

    private void explore(Node node, int depth) {
        nodes++;
        if (budget.over() || best.closed(Leaving.NEVER) || depth > DEEPEST) {
            complete = false;
            return;
        }
        boolean settled = node.lp.settle(budget);
        double[] x = node.lp.values();
        if (!settled || !feasible(node, x)) {
            // The program still leaves pieces out, though no bound shows why: too fine for floating point.
            complete = false;
            return;
        }
        if (whole(node, x)) {
            return;
        }
        round(node, x);
        if (pruned(node)) {
            return;
        }
        fix(node);
        Branch branch = new Branching(task, counted, node.columns, node.lp.values()).choose();
        if (branch == null) {
            complete = false;
            return;
        }
        double floor = Math.floor(branch.value() + WHOLE);
        down(node.copy(), branch, floor, depth, true);
        down(node, branch, floor, depth, false);
    }

    private void down(Node node, Branch branch, double floor, int depth, boolean more) {
        if (!complete) {
            return;
        }
        int[] at = branch.columns();
        double[] coefficients = new double[at.length];
        Arrays.fill(coefficients, more ? 1 : -1);
        node.addRow(more ? floor + 1 : -floor, at, coefficients);
        if (solve(node)) {
            if (depth < 6) {
                cut(node);
            }
            if (!pruned(node)) {
                explore(node, depth + 1);
            }
        }
    }

    /** False when the node can be cut off, or the budget ended. */
    private boolean solve(Node node) {
        node.lp.dual((target() + 0.01 * task.step) / unit, budget);
        if (pruned(node)) {
            return false;
        }
        if (!node.lp.primal(budget)) {
            complete = false;
            return false;
        }
        return !pruned(node);
    }

    private boolean feasible(Node node, double[] x) {
        for (int i = 0; i < node.lp.rows(); i++) {
            if (x[node.lp.artificial(i)] > WHOLE) {
                return false;
            }
        }
        return true;
    }

    private boolean whole(Node node, double[] x) {
        List<Pattern> plan = new ArrayList<>();
        long cost = 0;
        for (int j = 0; j < x.length; j++) {
            double near = Math.rint(x[j]);
            if (node.columns.get(j).empty()) {
                continue;
            }
            if (Math.abs(x[j] - near) > WHOLE) {
                return false;
            }
            for (int t = 0; t < near; t++) {
                plan.add(node.columns.get(j));
                cost += node.columns.get(j).cost;
            }
        }
        best.offer(plan);
        return best.cutoff(Leaving.NEVER) <= cost;
    }

    private void round(Node node, double[] x) {
        Partial plan = new Partial(task);
        for (int j = 0; j < x.length; j++) {
            Pattern pattern = node.columns.get(j);
            int times = pattern.empty() ? 0 : Math.min((int) Math.floor(x[j] + WHOLE), plan.room(pattern));
            if (times > 0) {
                plan.cut(pattern, times);
            }
        }
        filler.complete(plan, lengths, Filler.Manner.LEAST_SLACK, 0, budget);
        best.offer(plan.reels);
    }

    /** Whether whole numbers near the duals prove that this node holds nothing below the best plan. */
    private boolean pruned(Node node) {
        if (node.lp.objective() * unit < target() + 1e-5 * task.step) {
            return false;
        }
        return new NodeBound(task, node.lp, unit, scale).proves(node.columns, target());
    }

    /** Columns that cannot be in a better plan of this node are dropped. */
    private void fix(Node node) {
        double distance = (target() - node.lp.objective() * unit) / unit + 1e-6;
        Simplex lp = node.lp;
        List<Pattern> columns = node.columns;
        int[] old = lp.dropColumns(j -> !columns.get(j).empty() && lp.reduced(j) > distance);
        List<Pattern> kept = new ArrayList<>(old.length);
        for (int j : old) {
            kept.add(columns.get(j));
        }
        node.columns = kept;
    }

    private List<Cut> cuts(Node node) {
        if (!node.lp.settle(budget)) {
            return List.of();
        }
        double[] x = node.lp.values();
        List<Cut> cuts = new ArrayList<>(new SubsetRows(task, node.columns, x).violated());
        if (node.lp.rows() < ROWS + 2 * task.items) {
            cuts.addAll(new RoundedRows(node.lp, node.columns, x).violated(budget));
        }
        return cuts;
    }

    private void cut(Node node) {
        for (int round = 0; round < CUT_ROUNDS && complete; round++) {
            if (pruned(node)) {
                return;
            }
            fix(node);
            double before = node.lp.objective();
            List<Cut> cuts = cuts(node);
            if (cuts.isEmpty()) {
                return;
            }
            for (Cut cut : cuts) {
                node.addRow(cut.rhs(), cut.columns(), cut.coefficients());
            }
            if (!solve(node) || (round > 3 && node.lp.objective() - before < 1e-4 * task.step / unit)) {
                return;
            }
        }
    }
}
