package bitterend.packing.linear;

import bitterend.packing.linear.Simplex.Steps;
import java.util.Arrays;

/**
 * One run of the dual simplex method: as long as a value is below zero, its column leaves, and the column enters whose
 * reduced cost reaches zero first. Reduced costs and reference weights are kept along the way.
 */
final class DualMethod {
    private static final double PIVOT = 1e-8;
    /** The objective is looked at every so many steps. */
    private static final int LOOK = 8;

    private final Columns columns;
    private final Basis basis;
    private final Steps budget;
    /** What one unit of the entering column takes from each basic one. */
    private final double[] alpha;
    /** Row of the inverse where a column leaves. */
    private final double[] rho;
    /** That row times all columns, zero for the basic ones. */
    private final double[] row;
    /** Reduced costs of all columns. */
    private final double[] price;
    /** What a value below zero is measured by, by place. */
    private final double[] reference;

    DualMethod(Columns columns, Basis basis, Steps budget) {
        this.columns = columns;
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
            int q = entering();
            if (budget.spend(columns.n + 4L * alpha.length) || q < 0) {
                return;
            }
            basis.ftran(q, alpha);
            if (alpha[r] > -PIVOT) {
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

    /** The place farthest below zero, as the reference weights measure it; -1 when none is. */
    private int leaving() {
        double[] x = basis.x;
        int r = -1;
        double most = 0;
        for (int i = 0; i < x.length; i++) {
            if (x[i] < -Simplex.NEGATIVE && x[i] * x[i] > most * reference[i]) {
                most = x[i] * x[i] / reference[i];
                r = i;
            }
        }
        return r;
    }

    /** Works out the row, and the column whose reduced cost reaches zero first; -1 when none does. */
    private int entering() {
        double limit = Double.MAX_VALUE;
        int best = -1;
        double bestAlpha = 0;
        for (int j = 0; j < row.length; j++) {
            row[j] = 0;
            if (columns.place[j] >= 0) {
                continue;
            }
            double a = columns.times(j, rho);
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
