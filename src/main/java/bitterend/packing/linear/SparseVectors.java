package bitterend.packing.linear;

import java.util.Arrays;

/** Sparse vectors one behind another: entries are added to the last one until it is closed. */
final class SparseVectors {
    /** Where each vector starts among the entries. */
    int[] start = new int[17];

    int[] at = new int[64];
    double[] value = new double[64];
    int vectors;
    int size;

    void clear() {
        vectors = 0;
        size = 0;
    }

    void add(int row, double v) {
        if (size == at.length) {
            at = Arrays.copyOf(at, size * 2);
            value = Arrays.copyOf(value, size * 2);
        }
        at[size] = row;
        value[size++] = v;
    }

    void close() {
        vectors++;
        if (vectors == start.length) {
            start = Arrays.copyOf(start, vectors * 2);
        }
        start[vectors] = size;
    }
}
