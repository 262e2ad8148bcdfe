package bitterend.packing.linear;

import bitterend.packing.linear.Simplex.Steps;

/** The column of a block that promises most for its length; blocks are looked at in turn until one has any. */
final class EnteringByBlocks implements Entering {
    private static final int BLOCK = 1500;

    private final Columns columns;
    private final Basis basis;
    /** Where the next look begins. */
    private int cursor;

    EnteringByBlocks(Columns columns, Basis basis) {
        this.columns = columns;
        this.basis = basis;
    }

    /** On a copy of the program, from where this one stands. */
    EnteringByBlocks copy(Columns ofCopy, Basis basisOfCopy) {
        EnteringByBlocks copy = new EnteringByBlocks(ofCopy, basisOfCopy);
        copy.cursor = cursor;
        return copy;
    }

    /** Starts its looks at the first column again. */
    void rewind() {
        cursor = 0;
    }

    @Override
    public void renewed() {}

    @Override
    public void exchange(int q, int r, double pivot, double[] rho) {}

    @Override
    public int next(Steps budget) {
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
}
