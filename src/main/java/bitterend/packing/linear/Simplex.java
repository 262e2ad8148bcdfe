package bitterend.packing.linear;

import java.util.function.IntPredicate;

/**
 * Linear program {@code min c x, A x >= b, x >= 0} by the revised simplex method, primal while columns arrive, dual
 * after the right-hand side changed or a row was added. Every row has a surplus column and an artificial one of high
 * price, so that there is always a solution. The right-hand side is perturbed against degeneracy; values are read with
 * the true one.
 *
 * <p>Sources: G. B. Dantzig, <i>Linear Programming and Extensions</i>, Princeton 1963; P. M. J. Harris, "Pivot
 * selection methods of the Devex LP code", Mathematical Programming 5 (1973) 1-28 (two-pass ratio test, reference
 * weights); P. Wolfe, "A technique for resolving degeneracy in linear programming", Journal of the Society for Industrial
 * and Applied Mathematics 11 (1963) 205-211 (moving the right-hand side, and here costs, too).
 */
public final class Simplex {
    /** How long a method may go on. */
    public interface Steps {
        /** Spends some steps; true once nothing is left. */
        boolean spend(long steps);
    }

    /** Reduced costs count as zero up to here. */
    public static final double EPS = 1e-9;
    /** Values are below zero from here on. */
    static final double NEGATIVE = 1e-8;

    private static final double BROKEN = 1e-6;

    private final Rows rows;
    private final Columns columns;
    private final Basis basis;
    private final EnteringByBlocks byBlocks;
    private final EnteringByReference byReference;

    public Simplex(double[] rhs, double[] artificialCost, long seed) {
        rows = new Rows(rhs, seed);
        columns = new Columns(Math.max(64, 4 * rhs.length));
        for (int i = 0; i < rhs.length; i++) {
            addOwnColumns(i, artificialCost[i]);
        }
        basis = new Basis(rows, columns);
        basis.restart();
        byBlocks = new EnteringByBlocks(columns, basis);
        byReference = new EnteringByReference(columns, basis);
    }

    private Simplex(Simplex from) {
        rows = new Rows(from.rows, from.columns() * 31L + from.rows());
        columns = new Columns(from.columns);
        basis = new Basis(from.basis, rows, columns);
        byBlocks = from.byBlocks.copy(columns, basis);
        byReference = new EnteringByReference(columns, basis);
    }

    /** The same program in the same state; the two go separate ways from here. */
    public Simplex copy() {
        return new Simplex(this);
    }

    /** Gives up what can be worked out again, to take less room. */
    public void release() {
        basis.release();
    }

    private void addOwnColumns(int i, double artificialCost) {
        rows.artificial[i] = columns.add(new int[] {i}, new double[] {1}, artificialCost);
        rows.surplus[i] = columns.add(new int[] {i}, new double[] {-1}, 0);
    }

    /** Number of rows. */
    public int rows() {
        return rows.m;
    }

    /** Number of columns, the rows' own included. */
    public int columns() {
        return columns.n;
    }

    /** Adds a column; the arrays are kept, not copied. */
    public int addColumn(int[] at, double[] values, double price) {
        return columns.add(at, values, price);
    }

    /** Adds a row that {@link #dropCuts} may drop again. */
    public void addCut(double bound, int[] at, double[] coefficients, double artificialCost) {
        int row = addRow(bound, at, coefficients, artificialCost);
        rows.cut[row] = true;
    }

    /** Adds the row {@code sum coefficient x >= bound}; the basis stays dual feasible. */
    public int addRow(double bound, int[] at, double[] coefficients, double artificialCost) {
        int i = rows.add(bound);
        addOwnColumns(i, artificialCost);
        columns.append(i, at, coefficients);
        basis.extend();
        return i;
    }

    /** Changes a right-hand side. */
    public void rhs(int i, double bound) {
        rows.rhs[i] = bound;
        basis.needsRefactorisation = true;
    }

    /** The right-hand side of a row. */
    public double rhs(int i) {
        return rows.rhs[i];
    }

    /** Changes the price of a column. */
    public void cost(int j, double price) {
        columns.cost[j] = price;
        basis.needsRefactorisation = true;
    }

    /** The artificial column of a row. */
    public int artificial(int i) {
        return rows.artificial[i];
    }

    /** The surplus column of a row; at a price of its own the row may hardly be exceeded. */
    public int surplus(int i) {
        return rows.surplus[i];
    }

    /** The column that is basic at place r. */
    public int basic(int r) {
        return basis.column[r];
    }

    /** The columns that are basic. */
    public int[] basics() {
        return basis.column.clone();
    }

    /** Goes back to columns that were basic once; rows added since have their surplus. No column may have been dropped. */
    public void restore(int[] basics) {
        basis.restore(basics);
    }

    /** Row r of the inverse of the basis. */
    public double[] rowOfInverse(int r) {
        double[] row = new double[rows.m];
        basis.btran(r, row);
        return row;
    }

    /**
     * Drops columns that are not basic.
     *
     * @param drop asked for every column beyond the rows' own
     * @return the old place of every column that stays
     */
    public int[] dropColumns(IntPredicate drop) {
        boolean[] own = new boolean[columns.n];
        for (int i = 0; i < rows.m; i++) {
            own[rows.surplus[i]] = true;
            own[rows.artificial[i]] = true;
        }
        return keep(j -> own[j] || columns.place[j] >= 0 || !drop.test(j));
    }

    /**
     * Drops the cuts that do not bind.
     *
     * @return the old place of every column that stays; empty when no row was dropped
     */
    public int[] dropCuts() {
        LooseCuts loose = new LooseCuts(rows, columns, basis);
        if (!loose.any()) {
            return new int[0];
        }
        boolean[] dropped = loose.drop();
        return keep(j -> !dropped[j]);
    }

    private int[] keep(IntPredicate stays) {
        int[] fresh = new int[columns.n];
        int[] old = columns.keep(stays);
        for (int j = 0; j < old.length; j++) {
            fresh[old[j]] = j;
        }
        rows.renumber(fresh);
        basis.renumber(fresh);
        byBlocks.rewind();
        return old;
    }

    /** Primal simplex from a feasible basis; false when the budget ended first. */
    public boolean primal(Steps budget) {
        return primal(byBlocks, budget);
    }

    /** The same by reference weights, which pay where many rows have no room. */
    public boolean primalByReference(Steps budget) {
        return primal(byReference, budget);
    }

    private boolean primal(Entering entering, Steps budget) {
        boolean fresh = basis.refactorise();
        repair(budget);
        return new PrimalMethod(basis, entering).run(fresh, budget);
    }

    /** A basis that lost its feasibility to rounding is brought back by the dual method, or from the start. */
    private void repair(Steps budget) {
        if (!basis.feasible(BROKEN)) {
            dual(Double.MAX_VALUE, budget);
            if (!basis.feasible(BROKEN)) {
                basis.restart();
                basis.refresh();
            }
        }
    }

    /**
     * Dual simplex from a dual feasible basis.
     *
     * @param cutoff stops once the objective has passed it
     */
    public void dual(double cutoff, Steps budget) {
        dual(cutoff, budget, 50 + 6 * rows.m);
    }

    /** So many steps of the dual simplex at most: what the objective has come to then is still a lower bound. */
    public void dual(double cutoff, Steps budget, int most) {
        new DualMethod(columns, basis, budget, new boolean[columns.n]).run(cutoff, most);
    }

    /**
     * Shuts columns out: those that are basic leave by the dual method, and then all cost so much. From a basis that was the
     * best with them few exchanges are needed; columns that promise something by now wait for the primal method, which must run
     * before anything is read. Meanwhile each column that may enter costs a little more, another for each: where many reduced
     * costs are zero the dual method would else go round without getting on.
     *
     * @param price at which none of them is of use
     */
    public void shut(int[] out, double price, Steps budget) {
        boolean[] shut = new boolean[columns.n];
        for (int j : out) {
            shut[j] = true;
            if (columns.place[j] < 0) {
                columns.cost[j] = price;
            }
        }
        basis.refactorise();
        for (int j = 0; j < columns.n; j++) {
            shut[j] |= columns.place[j] < 0 && basis.reduced(j) < -EPS;
        }
        double[] costs = columns.raised(shut);
        new DualMethod(columns, basis, budget, shut).run(Double.MAX_VALUE, 50 + 6 * rows.m);
        System.arraycopy(costs, 0, columns.cost, 0, costs.length);
        for (int j : out) {
            columns.cost[j] = price;
        }
        basis.needsRefactorisation = true;
    }

    /**
     * Goes on from an optimal basis to one that is optimal for the true right-hand side. The next change of the program
     * brings the perturbation back.
     *
     * @return false when rounding or the budget left some value below zero
     */
    public boolean settle(Steps budget) {
        rows.unperturbed = true;
        basis.needsRefactorisation = true;
        dual(Double.MAX_VALUE, budget);
        boolean settled = basis.feasible(NEGATIVE);
        rows.unperturbed = false;
        return settled;
    }

    /** Reduced cost of a column. */
    public double reduced(int j) {
        return basis.reduced(j);
    }

    /** Whole prices of the rows times the coefficients of a column, which must be whole. */
    public long worth(int j, long[] price) {
        return columns.worth(j, price);
    }

    /** Dual value with the true right-hand side: a lower bound on the program while no reduced cost is negative. */
    public double objective() {
        return basis.objective();
    }

    /** The dual value of every row. */
    public double[] duals() {
        return basis.y.clone();
    }

    /** Values of all columns with the true right-hand side; those slightly below zero are read as zero. */
    public double[] values() {
        return basis.values();
    }
}
