package bitterend.packing.linear;

import bitterend.packing.linear.Simplex.Steps;
import java.util.Arrays;

/**
 * One run of the dual simplex method: as long as a value is below zero, its column leaves, and the column enters whose
 * reduced cost reaches zero first. Reduced costs and reference weights are kept along the way.
 */
final class DualMethod {
    private static final double PIVOT = 1e-8;
    /** A shut column leaves though its value be zero: so far it counts as above. */
    private static final double LEAVES = 1e-6;
    /** The objective is looked at every so many steps. */
    private static final int LOOK = 8;

    private final Columns columns;
    private final Basis basis;
    private final Steps budget;
    /** What one unit of the entering column takes from each basic one. */
    private final double[] alpha;
    /** Row of the inverse where a column leaves. */
    private final double[] rho;
    /** That row times all columns, zero for the basic ones and those that are shut. */
    private final double[] row;
    /** Reduced costs of the columns that are not shut. */
    private final double[] price;
    /** What a value below zero is measured by, by place. */
    private final double[] reference;
    /** Columns that may not be basic, whatever their values. */
    private final boolean[] shut;

    /** @param shut columns that leave and do not come back */
    DualMethod(Columns columns, Basis basis, Steps budget, boolean[] shut) {
        this.columns = columns;
        this.shut = shut;
        this.basis = basis;
        this.budget = budget;
        basis.refactorise();
        int m = basis.x.length;
        alpha = new double[m];
        rho = new double[m];
        row = new double[columns.n];
        price = new double[columns.n];
        reference = new double[m];
        Arrays.fill(reference, 1);
        workOutPrices();
    }

    /**
     * @param cutoff stops once the objective has passed it
     * @param most steps
     */
    void run(double cutoff, int most) {
        for (int round = 0; round < most; round++) {
            if (basis.hasTooManyEtas()) {
                refresh();
            }
            int r = leaving();
            if (r < 0 || (cutoff < Double.MAX_VALUE && round % LOOK == 0 && basis.objective() > cutoff)) {
                return;
            }
            basis.btran(r, rho);
            double sign = basis.x[r] > 0 ? -1 : 1;
            int q = entering(sign);
            if (budget.spend(columns.n + 4L * alpha.length) || q < 0) {
                return;
            }
            basis.ftran(q, alpha);
            if (alpha[r] * sign > -PIVOT) {
                refresh();
                if (round > 0 && leaving() == r) {
                    return;
                }
            } else {
                updateReferenceWeights(r);
                updateReducedCosts(q, r);
                basis.pivot(q, r, alpha, rho, basis.x[r] / alpha[r]);
            }
        }
    }

    private void refresh() {
        basis.refresh();
        workOutPrices();
    }

    private void workOutPrices() {
        for (int j = 0; j < price.length; j++) {
            price[j] = columns.place[j] >= 0 ? 0 : basis.reduced(j);
        }
    }

    /** The place farthest from where it may be, as the reference weights measure it; -1 when none is. */
    private int leaving() {
        double[] x = basis.x;
        int r = -1;
        double most = 0;
        for (int i = 0; i < x.length; i++) {
            double off = x[i] < -Simplex.NEGATIVE ? x[i] : shut[basis.column[i]] ? Math.max(x[i], LEAVES) : 0;
            if (off != 0 && off * off > most * reference[i]) {
                most = off * off / reference[i];
                r = i;
            }
        }
        return r;
    }

    /**
     * Works out the row, and the column whose reduced cost reaches zero first; -1 when none does.
     *
     * @param sign 1 where a value is to rise, -1 where it is to fall
     */
    private int entering(double sign) {
        double limit = Double.MAX_VALUE;
        int best = -1;
        double bestAlpha = 0;
        for (int j = 0; j < row.length; j++) {
            row[j] = 0;
            if (columns.place[j] >= 0 || shut[j]) {
                continue;
            }
            row[j] = columns.times(j, rho);
            double a = sign * row[j];
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

    /** Carries the reference weights on over the exchange at place r. */
    private void updateReferenceWeights(int r) {
        double own = reference[r] / (alpha[r] * alpha[r]);
        for (int i = 0; i < alpha.length; i++) {
            if (alpha[i] != 0 && i != r) {
                reference[i] = Math.max(reference[i], alpha[i] * alpha[i] * own);
            }
        }
        reference[r] = Math.max(own, 1);
    }

    /** Carries the reduced costs on over the exchange of column q at place r. */
    private void updateReducedCosts(int q, int r) {
        double step = price[q] / row[q];
        for (int j = 0; j < price.length; j++) {
            price[j] -= step * row[j];
        }
        price[q] = 0;
        price[basis.column[r]] = -step;
    }
}
