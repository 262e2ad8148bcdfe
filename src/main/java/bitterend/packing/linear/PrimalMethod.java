package bitterend.packing.linear;

import bitterend.packing.linear.Simplex.Steps;

/**
 * The primal simplex method: as long as a column promises to lower the cost, it enters, and the first basic column to
 * reach zero leaves.
 */
final class PrimalMethod {
    private static final double PIVOT = 1e-8;
    private static final int FEW_EXCHANGES = 40;

    private final Basis basis;
    private final Entering entering;

    PrimalMethod(Basis basis, Entering entering) {
        this.basis = basis;
        this.entering = entering;
    }

    /**
     * Goes on from a feasible basis to an optimal one.
     *
     * @param fresh everything was just worked out
     * @return false when the budget ended first
     */
    boolean run(boolean fresh, Steps budget) {
        double[] alpha = new double[basis.x.length];
        double[] rho = new double[alpha.length];
        boolean exact = fresh;
        entering.renewed();
        while (true) {
            if (basis.hasTooManyEtas()) {
                refresh();
                exact = true;
            }
            int q = entering.next(budget);
            if (q < 0) {
                if (exact || basis.etas() < FEW_EXCHANGES) {
                    return true;
                }
                refresh();
                exact = true;
                continue;
            }
            basis.ftran(q, alpha);
            int r = leaving(alpha);
            if (budget.spend(4L * alpha.length) || r < 0) {
                basis.needsRefactorisation = true;
                return r < 0;
            }
            exact = false;
            basis.btran(r, rho);
            entering.exchange(q, r, alpha[r], rho);
            basis.pivot(q, r, alpha, rho, Math.max(0, basis.x[r]) / alpha[r]);
        }
    }

    private void refresh() {
        basis.refresh();
        entering.renewed();
    }

    /** Of the places that reach zero first, give or take a little, the one with the largest pivot; -1 when none does. */
    private int leaving(double[] alpha) {
        double[] x = basis.x;
        double limit = Double.MAX_VALUE;
        for (int r = 0; r < alpha.length; r++) {
            if (alpha[r] > PIVOT) {
                limit = Math.min(limit, (Math.max(0, x[r]) + 1e-9) / alpha[r]);
            }
        }
        int best = -1;
        for (int r = 0; r < alpha.length; r++) {
            if (alpha[r] > PIVOT && x[r] <= limit * alpha[r] && (best < 0 || alpha[r] > alpha[best])) {
                best = r;
            }
        }
        return best;
    }
}
