package bitterend.packing.patterns;

import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The linear program over given patterns: a row for every item, and where reels are counted two for every kind.
 * {@code double} only to hand whole coefficients to {@link Simplex}.
 */
final class PatternProgram {
    /** Of an artificial column, in units of the dearest reel. */
    static final double DEAR = 100;

    private static final int BITS_OF_DEAR = 8;

    final Instance instance;
    /** Cost of the dearest reel: what prices in the program are stated in. */
    final double unit;
    /** Units of whole prices in one unit of cost. */
    final long scale;
    /** Reels of a kind are limited, or there are several kinds. */
    final boolean counted;
    /** Where a piece cut once too often is not free to leave out, no piece may be cut too often. */
    private final boolean exact;

    PatternProgram(Instance instance) {
        this.instance = instance;
        unit = instance.dearest();
        counted = instance.counted();
        exact = !instance.trimmable();
        int bits = Math.max(1, Math.getExponent(unit) + 1);
        int pieces = 64 - Long.numberOfLeadingZeros(instance.pieces());
        scale = 1L << Math.max(0, Math.min(36, 58 - BITS_OF_DEAR - pieces) - bits);
    }

    /** The program over these patterns, not yet solved. */
    PatternNode root(List<Pattern> patterns, int[] least, int[] most) {
        int m = instance.items;
        int types = counted ? instance.types.length : 0;
        int rows = m + 2 * types + (exact ? m : 0);
        double[] rhs = new double[rows];
        double[] price = new double[rows];
        Arrays.fill(price, DEAR);
        for (int i = 0; i < m; i++) {
            rhs[i] = instance.demand[i];
            if (exact) {
                rhs[m + 2 * types + i] = -instance.demand[i];
            }
        }
        for (int k = 0; k < types; k++) {
            rhs[m + k] = -most[k];
            rhs[m + types + k] = least[k];
        }
        Simplex lp = new Simplex(rhs, price, 7);
        List<Pattern> columns = new ArrayList<>();
        while (columns.size() < lp.columns()) {
            columns.add(Pattern.NOTHING);
        }
        for (Pattern pattern : patterns) {
            lp.addColumn(rows(pattern), coefficients(pattern), pattern.cost / unit);
            columns.add(pattern);
        }
        return new PatternNode(this, lp, columns, 0);
    }

    private int[] rows(Pattern pattern) {
        int size = pattern.item.length;
        int[] rows = Arrays.copyOf(pattern.item, size + (counted ? 2 : 0) + (exact ? size : 0));
        int at = size;
        if (counted) {
            rows[at++] = instance.items + pattern.type;
            rows[at++] = instance.items + instance.types.length + pattern.type;
        }
        for (int t = 0; t < size && exact; t++) {
            rows[at++] = instance.items + (counted ? 2 * instance.types.length : 0) + pattern.item[t];
        }
        return rows;
    }

    private double[] coefficients(Pattern pattern) {
        int size = pattern.item.length;
        double[] values = new double[size + (counted ? 2 : 0) + (exact ? size : 0)];
        int at = size;
        for (int t = 0; t < size; t++) {
            values[t] = pattern.count[t];
        }
        if (counted) {
            values[at++] = -1;
            values[at++] = 1;
        }
        for (int t = 0; t < size && exact; t++) {
            values[at++] = -pattern.count[t];
        }
        return values;
    }
}
