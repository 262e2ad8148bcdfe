package bitterend.buying;

import bitterend.measure.Cost;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How sure a mean is. Two errors, never mixed: that of chance, which more scenarios make smaller, and that of a thin
 * history, which only more weeks make smaller. Every error is rounded up to 1/1000 minor unit.
 */
final class StandardErrors {
    /** One claim in twenty may be wrong. */
    private static final double RISK = 0.05;

    private StandardErrors() {}

    /** The mean, rounded down. */
    static long mean(long[] values) {
        return values.length == 0 ? 0 : Math.floorDiv(Arrays.stream(values).reduce(0, Math::addExact), values.length);
    }

    /** The mean, rounded up: for what is saved at most. */
    static long meanAtMost(long[] values) {
        return values.length == 0 ? 0 : -Math.floorDiv(-Arrays.stream(values).reduce(0, Math::addExact), values.length);
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

    /**
     * The standard error of the mean that comes from the weeks recorded: the jackknife after the bootstrap (Efron, J. R.
     * Stat. Soc. B 54, 1992, 83-127). Leaving week w out is the mean over the scenarios that do not draw it; with n
     * weeks the variance is (n - 1)/n times the sum of squares about the mean of those means. What chance alone would
     * add to that sum is taken off, as Wager, Hastie and Efron (J. Mach. Learn. Res. 15, 2014, 1625-1651) do.
     *
     * @return nothing when a week is drawn in every scenario, or there is but one week
     */
    static OptionalLong ofHistory(long[] values, List<int[]> weeks, int pastWeeks) {
        if (pastWeeks < 2) {
            return OptionalLong.empty();
        }
        double[] without = new double[pastWeeks];
        double noise = 0;
        double spread = variance(values);
        for (int week = 0; week < pastWeeks; week++) {
            long sum = 0;
            int count = 0;
            for (int i = 0; i < values.length; i++) {
                if (!contains(weeks.get(i), week)) {
                    sum = Math.addExact(sum, values[i]);
                    count++;
                }
            }
            if (count == 0) {
                return OptionalLong.empty();
            }
            without[week] = (double) sum / count;
            noise += spread * (1.0 / count - 1.0 / values.length);
        }
        double middle = Arrays.stream(without).average().orElse(0);
        double squares = Arrays.stream(without)
                .map(mean -> (mean - middle) * (mean - middle))
                .sum();
        double variance = (pastWeeks - 1.0) / pastWeeks * Math.max(0, squares - noise);
        return OptionalLong.of(up(Math.sqrt(variance)).millis());
    }

    /**
     * The least difference that is no tie: Student's t of the values at a risk of one in twenty, shared out over so many
     * rivals, times the error. Rounded up.
     */
    static Cost margin(Cost error, int values, int rivals) {
        double tail = RISK / 2 / Math.max(1, rivals);
        double t = new TDistribution(Math.max(1, values - 1)).inverseCumulativeProbability(1 - tail);
        return up(t * error.millis());
    }

    /** How many weeks would make a margin as small as the difference: n (margin / difference)^2, rounded up. */
    static long weeksToSettle(int weeks, Cost margin, Cost difference) {
        double ratio = (double) margin.millis() / Math.max(1, difference.millis());
        return (long) Math.min(1e6, Math.ceil(weeks * ratio * ratio));
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

    private static boolean contains(int[] weeks, int week) {
        return Arrays.stream(weeks).anyMatch(each -> each == week);
    }

    private static Cost up(double millis) {
        return new Cost((long) Math.ceil(millis));
    }
}
