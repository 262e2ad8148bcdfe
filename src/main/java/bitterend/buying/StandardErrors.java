package bitterend.buying;

import bitterend.measure.Cost;
import java.util.Arrays;

/** Means, and how sure they are. Every error is rounded up to 1/1000 minor unit. */
final class StandardErrors {
    private StandardErrors() {}

    /** The mean, rounded down. */
    static long mean(long[] values) {
        return values.length == 0 ? 0 : Math.floorDiv(Arrays.stream(values).reduce(0, Math::addExact), values.length);
    }

    /** The value that this share of all values, in per cent, does not exceed: the nearest rank. */
    static long percentile(long[] values, int percent) {
        long[] sorted = values.clone();
        Arrays.sort(sorted);
        int rank = Math.max(1, (percent * sorted.length + 99) / 100);
        return sorted[rank - 1];
    }

    /** The standard error of the mean of independent values: s / sqrt(n). */
    static Cost ofChance(long[] values) {
        return up(Math.sqrt(variance(values) / values.length));
    }

    private static double variance(long[] values) {
        if (values.length < 2) {
            return 0;
        }
        double mean = Arrays.stream(values).average().orElse(0);
        return Arrays.stream(values)
                        .mapToDouble(value -> (value - mean) * (value - mean))
                        .sum()
                / (values.length - 1);
    }

    private static Cost up(double millis) {
        return new Cost((long) Math.ceil(millis));
    }
}
