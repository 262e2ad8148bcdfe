package bitterend.demand.calibration;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Where the next value of a small sample lies, gross outliers left out.
 *
 * <p>Outliers are told by the generalised extreme studentised deviate test (Rosner, Technometrics 25, 1983, 165-172), at
 * most one in five and none among fewer than six. Of the rest, with mean m, standard deviation s and number n, the next
 * value is below {@code m + t s sqrt(1 + 1/n)} 95 times in 100, t being Student's one-sided quantile with n - 1 degrees of
 * freedom.
 */
final class PredictionFormula {
    private static final double COVER = 0.95;
    private static final double FALSE_ALARM = 0.01;
    private static final int FEWEST_FOR_OUTLIERS = 6;

    private final double[] kept;
    private final List<Integer> outliers;

    private PredictionFormula(double[] kept, List<Integer> outliers) {
        this.kept = kept;
        this.outliers = List.copyOf(outliers);
    }

    /** The formula for at least three values. */
    static PredictionFormula of(double... values) {
        if (values.length < 3) {
            throw new IllegalArgumentException("three values at least: " + values.length);
        }
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            left.add(i);
        }
        List<Integer> removed = new ArrayList<>();
        int outlying = 0;
        int most = values.length < FEWEST_FOR_OUTLIERS ? 0 : values.length / 5;
        for (int i = 1; i <= most; i++) {
            int farthest = farthest(values, left);
            double[] sample = sample(values, left);
            double distance = Math.abs(values[farthest] - StatUtils.mean(sample));
            if (distance > critical(left.size()) * deviation(sample)) {
                outlying = i;
            }
            left.remove(Integer.valueOf(farthest));
            removed.add(farthest);
        }
        List<Integer> outliers = removed.subList(0, outlying);
        List<Integer> sound = new ArrayList<>(left);
        sound.addAll(removed.subList(outlying, removed.size()));
        return new PredictionFormula(sample(values, sound), outliers);
    }

    double mean() {
        return StatUtils.mean(kept);
    }

    double standardDeviation() {
        return deviation(kept);
    }

    /** The limit that the next value stays below, 95 times in 100. */
    double upper() {
        int n = kept.length;
        double t = new TDistribution(n - 1).inverseCumulativeProbability(COVER);
        return mean() + t * standardDeviation() * Math.sqrt(1 + 1.0 / n);
    }

    /** Places of the outliers among the values. */
    List<Integer> outliers() {
        return outliers;
    }

    int count() {
        return kept.length;
    }

    /** Rosner's critical value for the farthest of n, in standard deviations. */
    private static double critical(int n) {
        double t = new TDistribution(n - 2).inverseCumulativeProbability(1 - FALSE_ALARM / (2 * n));
        return (n - 1) * t / Math.sqrt((n - 2 + t * t) * n);
    }

    private static int farthest(double[] values, List<Integer> left) {
        double mean = StatUtils.mean(sample(values, left));
        int farthest = left.get(0);
        for (int i : left) {
            if (Math.abs(values[i] - mean) > Math.abs(values[farthest] - mean)) {
                farthest = i;
            }
        }
        return farthest;
    }

    private static double[] sample(double[] values, List<Integer> places) {
        return places.stream().mapToDouble(place -> values[place]).toArray();
    }

    private static double deviation(double[] sample) {
        return Math.sqrt(StatUtils.variance(sample));
    }
}
