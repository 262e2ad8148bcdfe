package bitterend.packing.linear;

import java.util.Arrays;

/** The lower and the upper triangle that a matrix was factorised into. */
final class Triangles {
    private final int m;
    /** Rows in the order in which they were eliminated. */
    int[] order = new int[0];
    /** By row. */
    double[] pivot = new double[0];

    final SparseVectors lower = new SparseVectors();
    /** Columns, in the order of their rows. */
    final SparseVectors upper = new SparseVectors();
    /** The row eliminated by each vector of the lower triangle. */
    private int[] lowerRow = new int[16];

    Triangles(int m) {
        this.m = m;
    }

    void clear() {
        lower.clear();
        upper.clear();
        order = new int[m];
        pivot = new double[m];
    }

    /** The vector at the end of the lower triangle belongs to this row. */
    void closeLower(int row) {
        if (lower.vectors == lowerRow.length) {
            lowerRow = Arrays.copyOf(lowerRow, lowerRow.length * 2);
        }
        lowerRow[lower.vectors] = row;
        lower.close();
    }

    int entries() {
        return lower.size + upper.size + m;
    }

    /** Solves L U x = a in place. */
    void solve(double[] a) {
        for (int k = 0; k < lower.vectors; k++) {
            double t = a[lowerRow[k]];
            if (t != 0) {
                for (int s = lower.start[k]; s < lower.start[k + 1]; s++) {
                    a[lower.at[s]] -= lower.value[s] * t;
                }
            }
        }
        for (int k = m - 1; k >= 0; k--) {
            int r = order[k];
            double t = a[r];
            if (t != 0) {
                t /= pivot[r];
                a[r] = t;
                for (int s = upper.start[k]; s < upper.start[k + 1]; s++) {
                    a[upper.at[s]] -= upper.value[s] * t;
                }
            }
        }
    }

    /** Solves (L U)' y = c in place. */
    void solveTransposed(double[] c) {
        for (int k = 0; k < m; k++) {
            int r = order[k];
            double t = c[r];
            for (int s = upper.start[k]; s < upper.start[k + 1]; s++) {
                t -= upper.value[s] * c[upper.at[s]];
            }
            c[r] = t / pivot[r];
        }
        for (int k = lower.vectors - 1; k >= 0; k--) {
            double t = c[lowerRow[k]];
            for (int s = lower.start[k]; s < lower.start[k + 1]; s++) {
                t -= lower.value[s] * c[lower.at[s]];
            }
            c[lowerRow[k]] = t;
        }
    }
}
