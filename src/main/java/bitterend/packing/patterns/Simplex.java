package bitterend.packing.patterns;

import java.util.Arrays;
import java.util.Random;
import java.util.function.IntPredicate;

/**
 * Linear program {@code min c x, A x >= b, x >= 0} by the revised simplex method, primal while columns arrive, dual
 * after the right-hand side changed or a row was added. Every row has a surplus column and an artificial one of high
 * price, so that there is always a solution. The right-hand side is perturbed against degeneracy; values are read with
 * the true one.
 *
 * <p>Sources: G. B. Dantzig, <i>Linear Programming and Extensions</i>, Princeton 1963; P. M. J. Harris, "Pivot
 * selection methods of the Devex LP code", Mathematical Programming 5 (1973) 1-28 (two-pass ratio test).
 */
final class Simplex {
    static final double EPS = 1e-9;
    private static final double PIVOT = 1e-8;
    private static final double SHIFT = 1e-5;
    private static final int BLOCK = 1500;

    private int m;
    private double[] rhs;
    private double[] shift;
    private int[] surplus;
    private int[] artificial;
    private int n;
    private int[][] index;
    private double[][] value;
    private double[] cost;
    private double[] weight;
    private int[] place;
    private int[] basis;
    private double[] x;
    private double[] y;
    private Lu lu;
    private boolean stale = true;
    private boolean unperturbed;
    private int cursor;
    private final Random random;

    Simplex(double[] rhs, double[] artificialCost, long seed) {
        m = rhs.length;
        random = new Random(seed);
        this.rhs = rhs.clone();
        shift = new double[m];
        surplus = new int[m];
        artificial = new int[m];
        int room = Math.max(64, 4 * m);
        index = new int[room][];
        value = new double[room][];
        cost = new double[room];
        weight = new double[room];
        place = new int[room];
        basis = new int[m];
        x = new double[m];
        y = new double[m];
        lu = new Lu(m);
        for (int i = 0; i < m; i++) {
            makeRow(i, artificialCost[i]);
        }
        restart();
    }

    private Simplex(Simplex from) {
        m = from.m;
        rhs = from.rhs.clone();
        shift = from.shift.clone();
        surplus = from.surplus.clone();
        artificial = from.artificial.clone();
        n = from.n;
        index = from.index.clone();
        value = from.value.clone();
        cost = from.cost.clone();
        weight = from.weight.clone();
        place = from.place.clone();
        basis = from.basis.clone();
        x = from.x.clone();
        y = from.y.clone();
        lu = new Lu(m);
        cursor = from.cursor;
        random = new Random(from.n * 31L + from.m);
    }

    /** The same program in the same state; the two go separate ways from here. */
    Simplex copy() {
        return new Simplex(this);
    }

    /** Gives up what can be worked out again, to take less room. */
    void release() {
        lu = new Lu(m);
        stale = true;
    }

    private void makeRow(int i, double artificialCost) {
        shift[i] = SHIFT * (0.5 + random.nextDouble());
        artificial[i] = addColumn(new int[] {i}, new double[] {1}, artificialCost);
        surplus[i] = addColumn(new int[] {i}, new double[] {-1}, 0);
    }

    /** Back to the basis of artificial and surplus columns, which is always feasible. */
    void restart() {
        Arrays.fill(place, 0, n, -1);
        for (int i = 0; i < m; i++) {
            basis[i] = rhs[i] + perturbation(i) >= 0 ? artificial[i] : surplus[i];
            place[basis[i]] = i;
        }
        stale = true;
    }

    private double perturbation(int i) {
        if (unperturbed) {
            return 0;
        }
        return rhs[i] > 0 ? shift[i] : -shift[i];
    }

    /**
     * Goes on from an optimal basis to one that is optimal for the true right-hand side. The next change of the program
     * brings the perturbation back.
     *
     * @return false when rounding or the budget left some value below zero
     */
    boolean settle(Budget budget) {
        unperturbed = true;
        stale = true;
        dual(Double.MAX_VALUE, budget);
        boolean settled = mostNegative() < 0;
        unperturbed = false;
        return settled;
    }

    int rows() {
        return m;
    }

    int columns() {
        return n;
    }

    /** Adds a column; the arrays are kept, not copied. */
    int addColumn(int[] rows, double[] values, double price) {
        if (n == cost.length) {
            int room = n * 2;
            index = Arrays.copyOf(index, room);
            value = Arrays.copyOf(value, room);
            cost = Arrays.copyOf(cost, room);
            weight = Arrays.copyOf(weight, room);
            place = Arrays.copyOf(place, room);
        }
        index[n] = rows;
        value[n] = values;
        cost[n] = price;
        place[n] = -1;
        double norm = 1;
        for (double v : values) {
            norm += v * v;
        }
        weight[n] = 1 / Math.sqrt(norm);
        return n++;
    }

    /** Adds the row {@code sum coefficient x >= bound}; the basis stays dual feasible. */
    int addRow(double bound, int[] columns, double[] coefficients, double artificialCost) {
        int i = m++;
        rhs = Arrays.copyOf(rhs, m);
        shift = Arrays.copyOf(shift, m);
        surplus = Arrays.copyOf(surplus, m);
        artificial = Arrays.copyOf(artificial, m);
        basis = Arrays.copyOf(basis, m);
        x = Arrays.copyOf(x, m);
        y = Arrays.copyOf(y, m);
        rhs[i] = bound;
        makeRow(i, artificialCost);
        for (int t = 0; t < columns.length; t++) {
            int j = columns[t];
            int length = index[j].length;
            index[j] = Arrays.copyOf(index[j], length + 1);
            value[j] = Arrays.copyOf(value[j], length + 1);
            index[j][length] = i;
            value[j][length] = coefficients[t];
        }
        basis[i] = surplus[i];
        place[surplus[i]] = i;
        lu = new Lu(m);
        stale = true;
        return i;
    }

    void rhs(int i, double bound) {
        rhs[i] = bound;
        stale = true;
    }

    double rhs(int i) {
        return rhs[i];
    }

    void cost(int j, double price) {
        cost[j] = price;
        stale = true;
    }

    double cost(int j) {
        return cost[j];
    }

    int artificial(int i) {
        return artificial[i];
    }

    /** The column that is basic at place r. */
    int basic(int r) {
        return basis[r];
    }

    /** Row r of the inverse of the basis. */
    double[] rowOfInverse(int r) {
        double[] row = new double[m];
        row[r] = 1;
        lu.solveTransposed(row);
        return row;
    }

    boolean isBasic(int j) {
        return place[j] >= 0;
    }

    /**
     * Drops columns that are not basic.
     *
     * @param drop asked for every column beyond the rows' own
     * @return the old place of every column that stays
     */
    int[] dropColumns(IntPredicate drop) {
        boolean[] own = new boolean[n];
        for (int i = 0; i < m; i++) {
            own[surplus[i]] = true;
            own[artificial[i]] = true;
        }
        int[] old = new int[n];
        int[] fresh = new int[n];
        int kept = 0;
        for (int j = 0; j < n; j++) {
            if (own[j] || place[j] >= 0 || !drop.test(j)) {
                index[kept] = index[j];
                value[kept] = value[j];
                cost[kept] = cost[j];
                weight[kept] = weight[j];
                place[kept] = place[j];
                old[kept] = j;
                fresh[j] = kept++;
            }
        }
        for (int j = kept; j < n; j++) {
            index[j] = null;
            value[j] = null;
        }
        n = kept;
        for (int i = 0; i < m; i++) {
            surplus[i] = fresh[surplus[i]];
            artificial[i] = fresh[artificial[i]];
            basis[i] = fresh[basis[i]];
        }
        cursor = 0;
        return Arrays.copyOf(old, kept);
    }

    private void refresh() {
        boolean replaced = lu.factorise(basis, index, value, artificial);
        if (replaced) {
            Arrays.fill(place, 0, n, -1);
        }
        for (int r = 0; r < m; r++) {
            place[basis[r]] = r;
        }
        for (int i = 0; i < m; i++) {
            x[i] = rhs[i] + perturbation(i);
        }
        lu.solve(x);
        for (int r = 0; r < m; r++) {
            y[r] = cost[basis[r]];
        }
        lu.solveTransposed(y);
        stale = false;
    }

    private boolean worn() {
        return lu.exchanges() >= 100 || lu.exchangeEntries() > 2 * lu.entries() + 40 * m;
    }

    /** Reduced cost of a column. */
    double reduced(int j) {
        double d = cost[j];
        int[] rows = index[j];
        double[] values = value[j];
        for (int t = 0; t < rows.length; t++) {
            d -= y[rows[t]] * values[t];
        }
        return d;
    }

    /** Whole prices of the rows times the coefficients of a column, which must be whole. */
    long worth(int j, long[] price) {
        long sum = 0;
        int[] rows = index[j];
        double[] values = value[j];
        for (int t = 0; t < rows.length; t++) {
            sum = Math.addExact(sum, Math.multiplyExact(price[rows[t]], Math.round(values[t])));
        }
        return sum;
    }

    private int entering(Budget budget) {
        int looked = 0;
        while (looked < n) {
            int best = -1;
            double bestScore = -EPS;
            int block = Math.min(BLOCK, n - looked);
            for (int t = 0; t < block; t++) {
                int j = cursor++;
                if (cursor >= n) {
                    cursor = 0;
                }
                if (place[j] < 0) {
                    double d = reduced(j);
                    if (d < -EPS && d * weight[j] < bestScore) {
                        bestScore = d * weight[j];
                        best = j;
                    }
                }
            }
            looked += block;
            budget.spend(block);
            if (best >= 0) {
                return best;
            }
        }
        return -1;
    }

    /** Primal simplex from a feasible basis; false when the budget ended first. */
    boolean primal(Budget budget) {
        boolean fresh = false;
        if (stale) {
            refresh();
            fresh = true;
        }
        repair(budget);
        double[] alpha = new double[m];
        double[] rho = new double[m];
        while (true) {
            if (worn()) {
                refresh();
                fresh = true;
            }
            int q = entering(budget);
            if (q < 0) {
                if (fresh || lu.exchanges() < 40) {
                    return true;
                }
                refresh();
                fresh = true;
                continue;
            }
            load(q, alpha);
            int r = leaving(alpha);
            if (budget.spend(4L * m) || r < 0) {
                stale = true;
                return r < 0;
            }
            fresh = false;
            pivot(q, r, alpha, rho, Math.max(0, x[r]) / alpha[r]);
        }
    }

    private void load(int q, double[] alpha) {
        Arrays.fill(alpha, 0);
        int[] rows = index[q];
        double[] values = value[q];
        for (int t = 0; t < rows.length; t++) {
            alpha[rows[t]] += values[t];
        }
        lu.solve(alpha);
    }

    private int leaving(double[] alpha) {
        double limit = Double.MAX_VALUE;
        for (int r = 0; r < m; r++) {
            if (alpha[r] > PIVOT) {
                limit = Math.min(limit, (Math.max(0, x[r]) + 1e-9) / alpha[r]);
            }
        }
        int best = -1;
        for (int r = 0; r < m; r++) {
            if (alpha[r] > PIVOT && x[r] <= limit * alpha[r] && (best < 0 || alpha[r] > alpha[best])) {
                best = r;
            }
        }
        return best;
    }

    private void pivot(int q, int r, double[] alpha, double[] rho, double length) {
        double d = reduced(q);
        Arrays.fill(rho, 0);
        rho[r] = 1;
        lu.solveTransposed(rho);
        double turn = d / alpha[r];
        for (int i = 0; i < m; i++) {
            x[i] -= length * alpha[i];
            y[i] += turn * rho[i];
        }
        x[r] = length;
        place[basis[r]] = -1;
        basis[r] = q;
        place[q] = r;
        lu.exchange(r, alpha);
    }

    /** A basis that lost its feasibility to rounding is brought back by the dual method, or from the start. */
    private void repair(Budget budget) {
        for (int r = 0; r < m; r++) {
            if (x[r] < -1e-6) {
                dual(Double.MAX_VALUE, budget);
                break;
            }
        }
        for (int r = 0; r < m; r++) {
            if (x[r] < -1e-6) {
                restart();
                refresh();
                return;
            }
        }
    }

    /**
     * Dual simplex from a dual feasible basis.
     *
     * @param cutoff stops once the objective has passed it
     */
    void dual(double cutoff, Budget budget) {
        dual(cutoff, budget, 50 + 6 * m);
    }

    /** So many steps of the dual simplex at most: what the objective has come to then is still a lower bound. */
    void dual(double cutoff, Budget budget, int most) {
        if (stale) {
            refresh();
        }
        double[] alpha = new double[m];
        double[] rho = new double[m];
        for (int round = 0; round < most; round++) {
            if (worn()) {
                refresh();
            }
            int r = mostNegative();
            if (r < 0 || (cutoff < Double.MAX_VALUE && round % 8 == 0 && objective() > cutoff)) {
                return;
            }
            Arrays.fill(rho, 0);
            rho[r] = 1;
            lu.solveTransposed(rho);
            int q = dualEntering(rho);
            if (budget.spend(n + 4L * m) || q < 0) {
                return;
            }
            load(q, alpha);
            if (alpha[r] > -PIVOT) {
                refresh();
                if (lu.exchanges() == 0 && round > 0 && mostNegative() == r) {
                    return;
                }
                continue;
            }
            double[] again = alpha;
            pivot(q, r, again, rho, x[r] / alpha[r]);
        }
    }

    private int mostNegative() {
        int r = -1;
        double least = -1e-8;
        for (int i = 0; i < m; i++) {
            if (x[i] < least) {
                least = x[i];
                r = i;
            }
        }
        return r;
    }

    private int dualEntering(double[] rho) {
        double limit = Double.MAX_VALUE;
        int best = -1;
        double bestAlpha = 0;
        for (int j = 0; j < n; j++) {
            if (place[j] >= 0) {
                continue;
            }
            int[] rows = index[j];
            double[] values = value[j];
            double a = 0;
            for (int t = 0; t < rows.length; t++) {
                a += rho[rows[t]] * values[t];
            }
            if (a < -1e-7) {
                double ratio = Math.max(0, reduced(j)) / -a;
                if (ratio < limit - 1e-10 || (ratio < limit + 1e-10 && -a > bestAlpha)) {
                    limit = Math.min(limit, ratio);
                    best = j;
                    bestAlpha = -a;
                }
            }
        }
        return best;
    }

    /** Dual value with the true right-hand side: a lower bound on the program while no reduced cost is negative. */
    double objective() {
        double sum = 0;
        for (int i = 0; i < m; i++) {
            sum += rhs[i] * y[i];
        }
        return sum;
    }

    double[] duals() {
        return y.clone();
    }

    /** Values of all columns with the true right-hand side; those slightly below zero are read as zero. */
    double[] values() {
        if (stale) {
            refresh();
        }
        double[] exact = rhs.clone();
        lu.solve(exact);
        double[] all = new double[n];
        for (int r = 0; r < m; r++) {
            all[basis[r]] = Math.max(0, exact[r]);
        }
        return all;
    }
}
