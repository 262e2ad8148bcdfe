package bitterend.demand.calibration;

import bitterend.measure.FineLength;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Where the take-up of the next end lies, by a small sample of assemblies that show that of one end or the sum of two; gross
 * outliers left out.
 *
 * <p>Outliers among six and more are told by the generalised extreme studentised deviate test (Rosner, Technometrics 25,
 * 1983, 165-172), at most one in five. Fewer cannot tell by themselves: of them the one farthest from the others' median is
 * a blunder where it lies farther off than anybody takes for scatter.
 *
 * <p>Of the rest let n be the number, m the mean and s the standard deviation of one end, both ends of an assembly being
 * independent (s is that of sums of e = 2 over sqrt(2)). The next end is below {@code m + t s sqrt(1 + 1/(e n))} 95 times in
 * 100, and the sum of the next two below {@code 2 m + t s sqrt(2) sqrt(1 + 2/(e n))}, t being Student's one-sided quantile
 * with n - 1 degrees of freedom.
 */
final class PredictionFormula {
    private static final double COVER = 0.95;
    private static final double FALSE_ALARM = 0.01;
    private static final int FEWEST_FOR_OUTLIERS = 6;

    /** By the number of values: each takes a while to find. */
    private static final Map<Integer, Double> STUDENT = new ConcurrentHashMap<>();

    private static final Map<Integer, Double> CRITICAL = new ConcurrentHashMap<>();

    private final int ends;
    private final double[] kept;
    private final List<Integer> outliers;
    private final Optional<Integer> suspicious;

    private PredictionFormula(int ends, double[] kept, List<Integer> outliers, Optional<Integer> suspicious) {
        this.ends = ends;
        this.kept = kept;
        this.outliers = List.copyOf(outliers);
        this.suspicious = suspicious;
    }

    /**
     * The formula for at least three take-ups, in 1/10,000 mm.
     *
     * @param ends 1 when each is that of one end, 2 when it is the sum of two
     * @param implausible farther than this from the median of the others nobody takes one for scatter
     */
    static PredictionFormula ofTakeUps(int ends, long implausible, long... takeUps) {
        return ofEnds(
                ends,
                (double) implausible,
                Arrays.stream(takeUps).asDoubleStream().toArray());
    }

    /** To the nearest 1/10,000 mm. */
    FineLength meanLength() {
        return new FineLength(Math.round(mean()));
    }

    /** Rounded up. */
    FineLength marginLength() {
        return new FineLength((long) Math.ceil(margin()));
    }

    /** Rounded up. */
    FineLength marginOfTwoLength() {
        return new FineLength((long) Math.ceil(marginOfTwo()));
    }

    /** The formula for at least three values of one end, of which none is a blunder. */
    static PredictionFormula of(double... values) {
        return ofEnds(1, Double.POSITIVE_INFINITY, values);
    }

    /**
     * The formula for at least three values.
     *
     * @param ends 1 when each value is that of one end, 2 when it is the sum of two
     * @param implausible farther than this from the median of the others nobody takes a value for scatter
     */
    static PredictionFormula ofEnds(int ends, double implausible, double... values) {
        if (values.length < 3) {
            throw new IllegalArgumentException("three values at least: " + values.length);
        }
        return values.length < FEWEST_FOR_OUTLIERS ? amongFew(ends, implausible, values) : amongMany(ends, values);
    }

    private static PredictionFormula amongFew(int ends, double implausible, double[] values) {
        List<Integer> sound = new ArrayList<>();
        List<Integer> blunders = new ArrayList<>();
        int worst = 0;
        for (int i = 0; i < values.length; i++) {
            sound.add(i);
            worst = offTheOthers(values, i) > offTheOthers(values, worst) ? i : worst;
        }
        if (offTheOthers(values, worst) > implausible) {
            sound.remove(Integer.valueOf(worst));
            blunders.add(worst);
        }
        double[] kept = sample(values, sound);
        Optional<Integer> suspicious =
                blunders.isEmpty() && isFar(values, worst) ? Optional.of(worst) : Optional.empty();
        return new PredictionFormula(ends, kept, blunders, suspicious);
    }

    private static boolean isFar(double[] values, int one) {
        return Math.abs(values[one] - StatUtils.mean(values)) > critical(values.length) * deviation(values);
    }

    private static double offTheOthers(double[] values, int one) {
        double[] others = IntStream.range(0, values.length)
                .filter(i -> i != one)
                .mapToDouble(i -> values[i])
                .toArray();
        return Math.abs(values[one] - StatUtils.percentile(others, 50));
    }

    private static PredictionFormula amongMany(int ends, double[] values) {
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            left.add(i);
        }
        List<Integer> removed = new ArrayList<>();
        int outlying = 0;
        for (int i = 1; i <= values.length / 5; i++) {
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
        return new PredictionFormula(ends, sample(values, sound), outliers, Optional.empty());
    }

    /** Mean of one end. */
    double mean() {
        return StatUtils.mean(kept) / ends;
    }

    /** Standard deviation of one end. */
    double standardDeviation() {
        return deviation(kept) / Math.sqrt(ends);
    }

    /** From the mean to what the next end stays below, 95 times in 100. */
    double margin() {
        return student() * standardDeviation() * Math.sqrt(1 + 1.0 / (ends * kept.length));
    }

    /** For each of two ends of one assembly: twice this above both means their sum stays below, 95 times in 100. */
    double marginOfTwo() {
        return student() * standardDeviation() / Math.sqrt(2) * Math.sqrt(1 + 2.0 / (ends * kept.length));
    }

    private double student() {
        return STUDENT.computeIfAbsent(kept.length, n -> new TDistribution(n - 1).inverseCumulativeProbability(COVER));
    }

    /**
     * One of few values that lies far from the others, though not so far that it must be a blunder: by the same test, whose
     * false alarm is one in a hundred. Its place among the values.
     */
    Optional<Integer> suspicious() {
        return suspicious;
    }

    /** Places of the outliers among the values. */
    List<Integer> outliers() {
        return outliers;
    }

    int count() {
        return kept.length;
    }

    /** Rosner's critical value for the farthest of n, in standard deviations. */
    private static double critical(int count) {
        return CRITICAL.computeIfAbsent(count, PredictionFormula::criticalOf);
    }

    private static double criticalOf(int n) {
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
