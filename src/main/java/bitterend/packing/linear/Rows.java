package bitterend.packing.linear;

import java.util.Arrays;
import java.util.Random;

/**
 * The rows of a linear program: their right-hand sides, a little perturbed against degeneracy, and the two columns that
 * every row has of its own.
 */
final class Rows {
    private static final double SHIFT = 1e-5;
    private static final double HALF = 0.5;

    /** How many there are. */
    int m;

    double[] rhs;
    /** Rows that may be dropped again. */
    boolean[] cut;

    int[] surplus;
    int[] artificial;
    /** Right-hand sides are taken as they are. */
    boolean unperturbed;

    private double[] shift;
    private final Random random;

    Rows(double[] rhs, long seed) {
        m = rhs.length;
        random = new Random(seed);
        this.rhs = rhs.clone();
        shift = new double[m];
        cut = new boolean[m];
        surplus = new int[m];
        artificial = new int[m];
        for (int i = 0; i < m; i++) {
            shift[i] = randomShift();
        }
    }

    /** A copy with its own random numbers. */
    Rows(Rows from, long seed) {
        m = from.m;
        random = new Random(seed);
        rhs = from.rhs.clone();
        shift = from.shift.clone();
        cut = from.cut.clone();
        surplus = from.surplus.clone();
        artificial = from.artificial.clone();
    }

    private double randomShift() {
        return shift(random);
    }

    /** A little against degeneracy, another each time. */
    static double shift(Random random) {
        return SHIFT * (HALF + random.nextDouble());
    }

    /** The perturbed right-hand side. */
    double perturbed(int i) {
        if (unperturbed) {
            return rhs[i];
        }
        return rhs[i] > 0 ? rhs[i] + shift[i] : rhs[i] - shift[i];
    }

    /** Adds a row; its own columns are still to be named. */
    int add(double bound) {
        int i = m++;
        resize();
        rhs[i] = bound;
        shift[i] = randomShift();
        return i;
    }

    private void resize() {
        rhs = Arrays.copyOf(rhs, m);
        shift = Arrays.copyOf(shift, m);
        cut = Arrays.copyOf(cut, m);
        surplus = Arrays.copyOf(surplus, m);
        artificial = Arrays.copyOf(artificial, m);
    }

    /** @param fresh the new place of every row, -1 for those that go; rows never move up */
    void drop(int[] fresh) {
        int kept = 0;
        for (int i = 0; i < m; i++) {
            if (fresh[i] >= 0) {
                rhs[kept] = rhs[i];
                shift[kept] = shift[i];
                cut[kept] = cut[i];
                surplus[kept] = surplus[i];
                artificial[kept++] = artificial[i];
            }
        }
        m = kept;
        resize();
    }

    /** @param fresh the new place of every column */
    void renumber(int[] fresh) {
        for (int i = 0; i < m; i++) {
            surplus[i] = fresh[surplus[i]];
            artificial[i] = fresh[artificial[i]];
        }
    }
}
