package bitterend.packing.linear;

import java.util.Arrays;

/**
 * A basis of a linear program: its columns, factorised, the values of those, and the duals of the rows. Whoever changes
 * a price or a right-hand side makes it {@link #needsRefactorisation}.
 */
final class Basis {
    private static final int MOST_ETAS = 100;

    private final Rows rows;
    private final Columns columns;
    /** The column that is basic at each place. */
    int[] column;
    /** Values of the basic columns, by place, with the perturbed right-hand side. */
    double[] x;
    /** Duals of the rows. */
    double[] y;
    /** Values and duals are to be worked out again. */
    boolean needsRefactorisation = true;

    private Lu lu;

    Basis(Rows rows, Columns columns) {
        this.rows = rows;
        this.columns = columns;
        column = new int[rows.m];
        x = new double[rows.m];
        y = new double[rows.m];
        lu = new Lu(rows.m);
    }

    /** The same basis of a copy of the program. */
    Basis(Basis from, Rows rows, Columns columns) {
        this.rows = rows;
        this.columns = columns;
        column = from.column.clone();
        x = from.x.clone();
        y = from.y.clone();
        lu = new Lu(rows.m);
    }

    /** Gives up what can be worked out again. */
    void release() {
        lu = new Lu(rows.m);
        needsRefactorisation = true;
    }

    /** Back to the basis of artificial and surplus columns, which is always feasible. */
    void restart() {
        columns.clearPlaces();
        for (int i = 0; i < rows.m; i++) {
            column[i] = rows.perturbed(i) >= 0 ? rows.artificial[i] : rows.surplus[i];
        }
        takePlaces();
        needsRefactorisation = true;
    }

    /** Back to columns that were basic before rows were added. */
    void restore(int[] before) {
        columns.clearPlaces();
        for (int r = 0; r < rows.m; r++) {
            column[r] = r < before.length ? before[r] : rows.surplus[r];
        }
        takePlaces();
        needsRefactorisation = true;
    }

    private void takePlaces() {
        for (int r = 0; r < rows.m; r++) {
            columns.place[column[r]] = r;
        }
    }

    /** After a row was added: its surplus column becomes basic, and the basis stays dual feasible. */
    void extend() {
        int i = rows.m - 1;
        column = Arrays.copyOf(column, rows.m);
        x = Arrays.copyOf(x, rows.m);
        y = Arrays.copyOf(y, rows.m);
        column[i] = rows.surplus[i];
        columns.place[column[i]] = i;
        release();
    }

    /** After rows were dropped: these columns are left. */
    void shrink(int[] rest) {
        column = rest;
        x = new double[rows.m];
        y = new double[rows.m];
        columns.clearPlaces();
        takePlaces();
        release();
    }

    /** @param fresh the new place of every column */
    void renumber(int[] fresh) {
        for (int r = 0; r < rows.m; r++) {
            column[r] = fresh[column[r]];
        }
    }

    /** Works everything out again if anything changed; whether it did. */
    boolean refactorise() {
        if (!needsRefactorisation) {
            return false;
        }
        refresh();
        return true;
    }

    /** Works everything out again from the columns. */
    void refresh() {
        boolean replaced = lu.factorise(column, columns.index, columns.value, rows.artificial);
        if (replaced) {
            columns.clearPlaces();
        }
        takePlaces();
        for (int i = 0; i < rows.m; i++) {
            x[i] = rows.perturbed(i);
        }
        lu.solve(x);
        for (int r = 0; r < rows.m; r++) {
            y[r] = columns.cost[column[r]];
        }
        lu.solveTransposed(y);
        needsRefactorisation = false;
    }

    /** So many exchanges that working everything out again is cheaper. */
    boolean hasTooManyEtas() {
        return lu.etas() >= MOST_ETAS || lu.etaEntries() > 2 * lu.entries() + 40 * rows.m;
    }

    /** Columns exchanged since everything was worked out. */
    int etas() {
        return lu.etas();
    }

    /** Reduced cost of a column. */
    double reduced(int j) {
        double d = columns.cost[j];
        int[] at = columns.index[j];
        double[] values = columns.value[j];
        for (int t = 0; t < at.length; t++) {
            d -= y[at[t]] * values[t];
        }
        return d;
    }

    /** What one unit of a column takes from each basic one. */
    void ftran(int q, double[] alpha) {
        Arrays.fill(alpha, 0);
        int[] at = columns.index[q];
        double[] values = columns.value[q];
        for (int t = 0; t < at.length; t++) {
            alpha[at[t]] += values[t];
        }
        lu.solve(alpha);
    }

    /** Row r of the inverse. */
    void btran(int r, double[] rho) {
        Arrays.fill(rho, 0);
        rho[r] = 1;
        lu.solveTransposed(rho);
    }

    /**
     * Column q becomes basic at place r.
     *
     * @param alpha what one unit of the column takes from each basic one
     * @param rho row r of the inverse
     * @param length the value of the column afterwards
     */
    void pivot(int q, int r, double[] alpha, double[] rho, double length) {
        double updateReducedCosts = reduced(q) / alpha[r];
        for (int i = 0; i < alpha.length; i++) {
            x[i] -= length * alpha[i];
            y[i] += updateReducedCosts * rho[i];
        }
        x[r] = length;
        columns.place[column[r]] = -1;
        column[r] = q;
        columns.place[q] = r;
        lu.exchange(r, alpha);
    }

    /** Whether no value is farther below zero than this. */
    boolean feasible(double tolerance) {
        for (int r = 0; r < rows.m; r++) {
            if (x[r] < -tolerance) {
                return false;
            }
        }
        return true;
    }

    /** Dual value with the true right-hand side. */
    double objective() {
        double sum = 0;
        for (int i = 0; i < rows.m; i++) {
            sum += rows.rhs[i] * y[i];
        }
        return sum;
    }

    /** Values of all columns with the true right-hand side; those below zero are read as zero. */
    double[] values() {
        refactorise();
        double[] exact = rows.rhs.clone();
        lu.solve(exact);
        double[] all = new double[columns.n];
        for (int r = 0; r < rows.m; r++) {
            all[column[r]] = Math.max(0, exact[r]);
        }
        return all;
    }
}
