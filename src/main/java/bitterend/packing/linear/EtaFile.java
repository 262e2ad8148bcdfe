package bitterend.packing.linear;

import java.util.Arrays;

/**
 * The columns exchanged since a basis was factorised: one elementary column for each.
 *
 * <p>Source: G. B. Dantzig and W. Orchard-Hays, "The product form for the inverse in the simplex method", Mathematical
 * Tables and Other Aids to Computation 8 (1954) 64-67.
 */
final class EtaFile {
    private final SparseVectors columns = new SparseVectors();
    private int[] row = new int[16];
    private double[] pivot = new double[16];

    void clear() {
        columns.clear();
    }

    int count() {
        return columns.vectors;
    }

    int entries() {
        return columns.size;
    }

    /** Replaces the column at place {@code at}; {@code alpha} is the new one, solved by the basis as it was. */
    void add(int at, double[] alpha) {
        int k = columns.vectors;
        if (k == row.length) {
            row = Arrays.copyOf(row, k * 2);
            pivot = Arrays.copyOf(pivot, k * 2);
        }
        row[k] = at;
        pivot[k] = alpha[at];
        for (int r = 0; r < alpha.length; r++) {
            if (r != at && Math.abs(alpha[r]) > Lu.TINY) {
                columns.add(r, alpha[r]);
            }
        }
        columns.close();
    }

    /** Carries a vector on over all exchanges, in place. */
    void solve(double[] a) {
        for (int k = 0; k < columns.vectors; k++) {
            int r = row[k];
            double t = a[r];
            if (t != 0) {
                t /= pivot[k];
                for (int s = columns.start[k]; s < columns.start[k + 1]; s++) {
                    a[columns.at[s]] -= columns.value[s] * t;
                }
                a[r] = t;
            }
        }
    }

    /** Carries a vector back over all exchanges, in place. */
    void solveTransposed(double[] c) {
        for (int k = columns.vectors - 1; k >= 0; k--) {
            int r = row[k];
            double t = c[r];
            for (int s = columns.start[k]; s < columns.start[k + 1]; s++) {
                t -= columns.value[s] * c[columns.at[s]];
            }
            c[r] = t / pivot[k];
        }
    }
}
