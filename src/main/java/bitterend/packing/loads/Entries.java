package bitterend.packing.loads;

import java.util.Map;
import java.util.TreeMap;

/** The entries of a column or a row, summed by place. */
final class Entries {
    private final Map<Integer, Double> entries = new TreeMap<>();

    void add(int at, double value) {
        entries.merge(at, value, Double::sum);
    }

    int[] rows() {
        return entries.keySet().stream().mapToInt(Integer::intValue).toArray();
    }

    double[] values() {
        return entries.values().stream().mapToDouble(Double::doubleValue).toArray();
    }
}
