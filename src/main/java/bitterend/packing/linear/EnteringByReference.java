package bitterend.packing.linear;

import bitterend.packing.linear.Simplex.Steps;
import java.util.Arrays;

/**
 * The column whose reduced cost is largest against how far the basic values have come to move with it. Its steps are dearer;
 * where many rows have no room it takes half of them.
 *
 * <p>Source: P. M. J. Harris, "Pivot selection methods of the Devex LP code", Mathematical Programming 5 (1973) 1-28.
 */
final class EnteringByReference implements Entering {
    private static final double LARGEST = 1e8;

    private final Columns columns;
    private final Basis basis;
    /** Reference weights of the columns; one for columns that came since. */
    private double[] reference = {};
    /** Reduced costs of all columns, zero for the basic ones. */
    private double[] price = {};

    EnteringByReference(Columns columns, Basis basis) {
        this.columns = columns;
        this.basis = basis;
    }

    @Override
    public void renewed() {
        int before = reference.length;
        if (before < columns.n) {
            reference = Arrays.copyOf(reference, 2 * columns.n);
            Arrays.fill(reference, before, reference.length, 1);
            price = new double[reference.length];
        }
        for (int j = 0; j < columns.n; j++) {
            price[j] = columns.place[j] >= 0 ? 0 : basis.reduced(j);
        }
    }

    @Override
    public int next(Steps budget) {
        budget.spend(columns.n);
        int best = -1;
        double most = 0;
        for (int j = 0; j < columns.n; j++) {
            if (price[j] < -Simplex.EPS && price[j] * price[j] > most * reference[j]) {
                most = price[j] * price[j] / reference[j];
                best = j;
            }
        }
        return best;
    }

    @Override
    public void exchange(int q, int r, double pivot, double[] rho) {
        double step = price[q] / pivot;
        double own = reference[q] / (pivot * pivot);
        int leaves = basis.column[r];
        for (int j = 0; j < columns.n; j++) {
            if (columns.place[j] < 0) {
                double row = columns.times(j, rho);
                price[j] -= step * row;
                reference[j] = Math.max(reference[j], row * row * own);
            }
        }
        price[q] = 0;
        price[leaves] = -step;
        reference[leaves] = Math.max(own, 1);
        if (own > LARGEST) {
            Arrays.fill(reference, 1);
        }
    }
}
