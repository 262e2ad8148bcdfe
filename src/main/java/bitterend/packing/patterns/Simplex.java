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
 * selection methods of the Devex LP code", Mathematical Programming 5 (1973) 1-28 (two-pass ratio test, reference
 * weights).
 */
final class Simplex {
    static final double EPS = 1e-9;
    private static final double PIVOT = 1e-8;
    private static final double SHIFT = 1e-5;
    private static final int BLOCK = 1500;
    private static final double LOOSE = 1e-3;

    private int m;
    private double[] rhs;
    private double[] shift;
    /** Rows that may be dropped again. */
    private boolean[] cut;

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
        cut = new boolean[m];
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
        cut = from.cut.clone();
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

    /** Adds a row that {@link #dropCuts} may drop again. */
    void addCut(double bound, int[] columns, double[] coefficients, double artificialCost) {
        int row = addRow(bound, columns, coefficients, artificialCost);
        cut[row] = true;
    }

    /** Adds the row {@code sum coefficient x >= bound}; the basis stays dual feasible. */
    int addRow(double bound, int[] columns, double[] coefficients, double artificialCost) {
        int i = m++;
        cut = Arrays.copyOf(cut, m);
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
        return compact(j -> own[j] || place[j] >= 0 || !drop.test(j));
    }

    private int[] compact(IntPredicate stays) {
        int[] old = new int[n];
        int[] fresh = new int[n];
        int kept = 0;
        for (int j = 0; j < n; j++) {
            if (stays.test(j)) {
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

    /**
     * Drops the cuts that do not bind: rows whose surplus is basic and above zero.
     *
     * @return the old place of every column that stays; empty when no row was dropped
     */
    int[] dropCuts() {
        if (stale) {
            refresh();
        }
        boolean[] gone = new boolean[m];
        int[] fresh = new int[m];
        boolean[] away = new boolean[m];
        int kept = 0;
        for (int i = 0; i < m; i++) {
            int r = place[surplus[i]];
            gone[i] = cut[i] && r >= 0 && x[r] > LOOSE && place[artificial[i]] < 0;
            fresh[i] = gone[i] ? -1 : kept++;
            if (gone[i]) {
                away[r] = true;
            }
        }
        if (kept == m) {
            return new int[0];
        }
        int[] rest = new int[kept];
        int size = 0;
        for (int r = 0; r < m; r++) {
            if (!away[r]) {
                rest[size++] = basis[r];
            }
        }
        return shrink(gone, fresh, kept, rest);
    }

    private int[] shrink(boolean[] gone, int[] fresh, int kept, int[] rest) {
        boolean[] dropped = new boolean[n];
        for (int i = 0; i < m; i++) {
            dropped[surplus[i]] = gone[i];
            dropped[artificial[i]] = gone[i];
        }
        for (int i = 0; i < m; i++) {
            if (!gone[i]) {
                rhs[fresh[i]] = rhs[i];
                shift[fresh[i]] = shift[i];
                cut[fresh[i]] = cut[i];
                surplus[fresh[i]] = surplus[i];
                artificial[fresh[i]] = artificial[i];
            }
        }
        m = kept;
        rhs = Arrays.copyOf(rhs, m);
        shift = Arrays.copyOf(shift, m);
        surplus = Arrays.copyOf(surplus, m);
        artificial = Arrays.copyOf(artificial, m);
        cut = Arrays.copyOf(cut, m);
        basis = Arrays.copyOf(rest, m);
        x = new double[m];
        y = new double[m];
        lu = new Lu(m);
        stale = true;
        Arrays.fill(place, 0, n, -1);
        for (int r = 0; r < m; r++) {
            place[basis[r]] = r;
        }
        for (int j = 0; j < n; j++) {
            if (!dropped[j]) {
                thin(j, fresh);
            }
        }
        return compact(j -> !dropped[j]);
    }

    /** Takes the rows that are gone out of a column. */
    private void thin(int j, int[] fresh) {
        int[] rows = index[j];
        int size = 0;
        boolean same = true;
        for (int row : rows) {
            size += fresh[row] >= 0 ? 1 : 0;
            same &= fresh[row] == row;
        }
        if (same) {
            return;
        }
        int[] thinRows = new int[size];
        double[] thinValues = new double[size];
        size = 0;
        for (int t = 0; t < rows.length; t++) {
            if (fresh[rows[t]] >= 0) {
                thinRows[size] = fresh[rows[t]];
                thinValues[size++] = value[j][t];
            }
        }
        index[j] = thinRows;
        value[j] = thinValues;
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
        double[] row = new double[n];
        double[] price = prices();
        double[] reference = ones();
        for (int round = 0; round < most; round++) {
            if (worn()) {
                refresh();
                price = prices();
            }
            int r = dualLeaving(reference);
            if (r < 0 || (cutoff < Double.MAX_VALUE && round % 8 == 0 && objective() > cutoff)) {
                return;
            }
            Arrays.fill(rho, 0);
            rho[r] = 1;
            lu.solveTransposed(rho);
            int q = dualEntering(rho, row, price);
            if (budget.spend(n + 4L * m) || q < 0) {
                return;
            }
            load(q, alpha);
            if (alpha[r] > -PIVOT) {
                refresh();
                price = prices();
                if (lu.exchanges() == 0 && round > 0 && dualLeaving(reference) == r) {
                    return;
                }
                continue;
            }
            update(reference, r, alpha);
            turn(price, row, q, r);
            double[] again = alpha;
            pivot(q, r, again, rho, x[r] / alpha[r]);
        }
    }

    /** Reduced costs of all columns. */
    private double[] prices() {
        double[] price = new double[n];
        for (int j = 0; j < n; j++) {
            price[j] = place[j] >= 0 ? 0 : reduced(j);
        }
        return price;
    }

    private double[] ones() {
        double[] ones = new double[m];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static void update(double[] reference, int r, double[] alpha) {
        double own = reference[r] / (alpha[r] * alpha[r]);
        for (int i = 0; i < alpha.length; i++) {
            if (alpha[i] != 0 && i != r) {
                reference[i] = Math.max(reference[i], alpha[i] * alpha[i] * own);
            }
        }
        reference[r] = Math.max(own, 1);
    }

    private void turn(double[] price, double[] row, int q, int r) {
        double step = price[q] / row[q];
        for (int j = 0; j < n; j++) {
            price[j] -= step * row[j];
        }
        price[q] = 0;
        price[basis[r]] = -step;
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

    /** The row farthest below zero, as the reference weights measure it. */
    private int dualLeaving(double[] reference) {
        int r = -1;
        double most = 0;
        for (int i = 0; i < m; i++) {
            if (x[i] < -1e-8 && x[i] * x[i] > most * reference[i]) {
                most = x[i] * x[i] / reference[i];
                r = i;
            }
        }
        return r;
    }

    private int dualEntering(double[] rho, double[] row, double[] price) {
        double limit = Double.MAX_VALUE;
        int best = -1;
        double bestAlpha = 0;
        for (int j = 0; j < n; j++) {
            row[j] = 0;
            if (place[j] >= 0) {
                continue;
            }
            int[] rows = index[j];
            double[] values = value[j];
            double a = 0;
            for (int t = 0; t < rows.length; t++) {
                a += rho[rows[t]] * values[t];
            }
            row[j] = a;
            if (a < -1e-7) {
                double ratio = Math.max(0, price[j]) / -a;
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
