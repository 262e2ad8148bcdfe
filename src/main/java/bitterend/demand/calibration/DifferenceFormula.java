package bitterend.demand.calibration;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.apache.commons.math3.stat.inference.OneWayAnova;

/**
 * Whether samples differ by more than chance: the one-way analysis of variance (R. A. Fisher, Statistical Methods for
 * Research Workers, 1925), told where means would lie so far apart once in twenty times by chance alone. Samples of one
 * value say nothing.
 */
final class DifferenceFormula {
    private static final double BY_CHANCE = 0.05;

    private DifferenceFormula() {}

    /** Whether at least two of the samples can be told apart. */
    static boolean differ(Collection<long[]> samples) {
        List<double[]> some = samples.stream()
                .filter(sample -> sample.length >= 2)
                .map(sample -> Arrays.stream(sample).asDoubleStream().toArray())
                .toList();
        return some.size() >= 2 && new OneWayAnova().anovaTest(some, BY_CHANCE);
    }
}
