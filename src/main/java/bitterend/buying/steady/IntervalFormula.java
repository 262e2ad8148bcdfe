package bitterend.buying.steady;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * One interval for a figure, in which chance and a thin history are combined. Futures come in groups; those of one group draw
 * from one past, which was itself drawn from the weeks recorded. What groups differ by beyond chance is what the history does not
 * say (one-way analysis of variance with random effects), and it stays however many futures there are:
 *
 * <pre>error^2 = history^2 (1 + 1/groups) + within/futures,   history^2 = max(0, (between - within)/futures of a group)</pre>
 *
 * <p>The spread between groups is uncertain itself, the more so the fewer they are; it is taken at the upper end of what four in
 * five such spreads would be (chi-squared), or too many intervals would be too narrow.
 */
final class IntervalFormula {
    /** One claim in twenty may be wrong. */
    private static final double RISK = 0.05;

    /** The spread between groups is smaller than it is taken for in four cases of five. */
    private static final double DOUBT = 0.2;

    private static final int CLEAR = 4;
    private static final double MOST_TIMES = 8;

    private IntervalFormula() {}

    /**
     * A ratio of two sums with its interval, outwards to whole numbers.
     *
     * @param above of each future
     * @param below of each future; none negative
     * @param scale of the ratio
     * @param groups which past each future draws from
     * @param claims how many such figures share the risk of one in twenty
     */
    static Figure ratio(long[] above, long[] below, long scale, int[] groups, int claims) {
        double bottom = Arrays.stream(below).asDoubleStream().sum();
        if (bottom <= 0) {
            return new Figure(0, 0, 0, false);
        }
        double ratio = scale * Arrays.stream(above).asDoubleStream().sum() / bottom;
        double[] off = new double[above.length];
        Arrays.setAll(off, i -> (scale * (double) above[i] - ratio * below[i]) * above.length / bottom);
        return around(ratio, off, groups, claims);
    }

    /**
     * A share that is often near nothing, with its interval: up by as many times as down, since such shares are skewed, and never
     * less than without, nor more than all.
     */
    static Figure share(long[] above, long[] below, long scale, int[] groups) {
        Figure plain = ratio(above, below, scale, groups, 1).notNegative();
        if (plain.value() == 0) {
            return plain;
        }
        double times = Math.min(MOST_TIMES, Math.exp((double) (plain.high() - plain.value()) / plain.value()));
        return plain.reaching((long) Math.ceil(plain.value() * times)).notAbove(scale);
    }

    /**
     * A positive length with its interval: by as many times up as down, by how far it spreads over pasts that might have been
     * recorded, which is taken at its upper end like the spread between groups.
     *
     * @param drawn the same length by each of those pasts
     * @param least lengths below it are taken for it; positive
     */
    static Figure times(long value, long[] drawn, long least) {
        double[] logs = Arrays.stream(drawn)
                .mapToDouble(each -> Math.log((double) Math.max(least, each)))
                .toArray();
        double mean = Arrays.stream(logs).average().orElse(0);
        double squares =
                Arrays.stream(logs).map(each -> (each - mean) * (each - mean)).sum();
        int freedom = logs.length - 1;
        double spread = Math.sqrt(squares / new ChiSquaredDistribution(freedom).inverseCumulativeProbability(DOUBT));
        double reach = spread * new TDistribution(freedom).inverseCumulativeProbability(1 - RISK / 2);
        double times = Math.min(MOST_TIMES, Math.exp(reach));
        return new Figure(value, (long) Math.floor(value / times), (long) Math.ceil(value * times), true);
    }

    /** A mean with its interval. */
    static Figure mean(long[] values, int[] groups, int claims) {
        long[] ones = new long[values.length];
        Arrays.fill(ones, 1);
        return ratio(values, ones, 1, groups, claims);
    }

    /** The difference of two ratios of the same futures, with its interval. */
    static Figure difference(long[][] of, long[][] and, long scale, int[] groups, int claims) {
        double bottomOf = Arrays.stream(of[1]).asDoubleStream().sum();
        double bottomAnd = Arrays.stream(and[1]).asDoubleStream().sum();
        if (bottomOf <= 0 || bottomAnd <= 0) {
            return new Figure(0, 0, 0, false);
        }
        double ratioOf = scale * Arrays.stream(of[0]).asDoubleStream().sum() / bottomOf;
        double ratioAnd = scale * Arrays.stream(and[0]).asDoubleStream().sum() / bottomAnd;
        int count = of[0].length;
        double[] off = new double[count];
        Arrays.setAll(
                off,
                i -> (scale * (double) of[0][i] - ratioOf * of[1][i]) * count / bottomOf
                        - (scale * (double) and[0][i] - ratioAnd * and[1][i]) * count / bottomAnd);
        return around(ratioOf - ratioAnd, off, groups, claims);
    }

    private static Figure around(double value, double[] off, int[] groups, int claims) {
        long rounded = Math.round(value);
        double[] error = error(off, groups);
        if (error.length == 0) {
            return new Figure(rounded, rounded, rounded, false);
        }
        double tail = RISK / 2 / Math.max(1, claims);
        double reach = error[0] * new TDistribution(error[1]).inverseCumulativeProbability(1 - tail);
        return new Figure(rounded, (long) Math.floor(value - reach), (long) Math.ceil(value + reach), true);
    }

    /** The standard error and its degrees of freedom; nothing with fewer than two groups. */
    private static double[] error(double[] off, int[] groups) {
        Map<Integer, double[]> sums = new TreeMap<>();
        double mean = Arrays.stream(off).average().orElse(0);
        for (int i = 0; i < off.length; i++) {
            double[] sum = sums.computeIfAbsent(groups[i], group -> new double[2]);
            sum[0] += off[i] - mean;
            sum[1]++;
        }
        double all =
                Arrays.stream(off).map(each -> (each - mean) * (each - mean)).sum();
        int count = sums.size();
        if (count < 2) {
            return new double[0];
        }
        double between = 0;
        double squares = 0;
        for (double[] sum : sums.values()) {
            between += sum[0] * sum[0] / sum[1];
            squares += sum[1] * sum[1];
        }
        double within = all > between && off.length > count ? (all - between) / (off.length - count) : 0;
        double ofAGroup = (off.length - squares / off.length) / (count - 1);
        double atMost = between / new ChiSquaredDistribution(count - 1).inverseCumulativeProbability(DOUBT);
        double history = Math.max(0, atMost - within) / ofAGroup;
        return new double[] {Math.sqrt(history * (1 + 1.0 / count) + within / off.length), count - 1};
    }

    /** Whether the mean of independent values is so far above nothing that more of them would change nothing. */
    static boolean isClearlyAbove(long[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        double squares = Arrays.stream(values)
                .mapToDouble(each -> (each - mean) * (each - mean))
                .sum();
        return mean > CLEAR * Math.sqrt(squares / Math.max(1, values.length - 1) / Math.max(1, values.length));
    }
}
