package bitterend.packing.linear;

import bitterend.packing.linear.Simplex.Steps;

/**
 * The primal simplex method: as long as a column promises to lower the cost, it enters, and the first basic column to
 * reach zero leaves.
 */
final class PrimalMethod {
    private static final double PIVOT = 1e-8;
    private static final int BLOCK = 1500;
    private static final int FEW_EXCHANGES = 40;

    private final Columns columns;
    private final Basis basis;
    /** Where the next look for a column to enter begins. */
    private int cursor;

    PrimalMethod(Columns columns, Basis basis) {
        this.columns = columns;
        this.basis = basis;
    }

    /** On a copy of the program, from where this one stands. */
    PrimalMethod copy(Columns ofCopy, Basis basisOfCopy) {
        PrimalMethod copy = new PrimalMethod(ofCopy, basisOfCopy);
        copy.cursor = cursor;
        return copy;
    }

    /** Starts its looks at the first column again. */
    void rewind() {
        cursor = 0;
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
        while (true) {
            if (basis.hasTooManyEtas()) {
                basis.refresh();
                exact = true;
            }
            int q = entering(budget);
            if (q < 0) {
                if (exact || basis.etas() < FEW_EXCHANGES) {
                    return true;
                }
                basis.refresh();
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
            basis.pivot(q, r, alpha, rho, Math.max(0, basis.x[r]) / alpha[r]);
        }
    }

    /** The column of a block that promises most for its length; blocks are looked at in turn until one has any. */
    private int entering(Steps budget) {
        int n = columns.n;
        int looked = 0;
        while (looked < n) {
            int block = Math.min(BLOCK, n - looked);
            int best = bestOf(block);
            looked += block;
            budget.spend(block);
            if (best >= 0) {
                return best;
            }
        }
        return -1;
    }

    private int bestOf(int block) {
        int best = -1;
        double bestScore = -Simplex.EPS;
        for (int t = 0; t < block; t++) {
            int j = cursor++;
            if (cursor >= columns.n) {
                cursor = 0;
            }
            if (columns.place[j] < 0) {
                double d = basis.reduced(j);
                if (d < -Simplex.EPS && d * columns.weight[j] < bestScore) {
                    bestScore = d * columns.weight[j];
                    best = j;
                }
            }
        }
        return best;
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
