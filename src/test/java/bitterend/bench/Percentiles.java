package bitterend.bench;

import java.util.Arrays;
import java.util.Collection;

/** Some figures of one kind, to be told by their median and what lies about it. */
final class Percentiles {
    private final double[] sorted;

    Percentiles(Collection<Double> figures) {
        sorted = figures.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(sorted);
    }

    /** The smallest figure that so large a share of them does not exceed (nearest rank); NaN when there are none. */
    double at(double share) {
        if (share <= 0 || share > 1) {
            throw new IllegalArgumentException("share from 0 to 1: " + share);
        }
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.ceil(share * sorted.length - 1e-9) - 1];
    }

    double median() {
        return at(0.5);
    }

    double most() {
        return at(1);
    }

    double mean() {
        return Arrays.stream(sorted).average().orElse(Double.NaN);
    }
}
