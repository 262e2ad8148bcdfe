package bitterend.packing.linear;

import java.util.Arrays;

/** One column of the upper triangle while it grows. */
final class UpperColumn {
    int[] at = new int[4];
    double[] value = new double[4];
    int size;

    void add(int row, double v) {
        if (size == at.length) {
            at = Arrays.copyOf(at, size * 2);
            value = Arrays.copyOf(value, size * 2);
        }
        at[size] = row;
        value[size++] = v;
    }
}
