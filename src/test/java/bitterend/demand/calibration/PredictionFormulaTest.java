package bitterend.demand.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Where the next splice lies. */
final class PredictionFormulaTest {
    private static final long SEED = 20_260_301;
    private static final int TRIALS = 10_000;

    /** 10, 12, 14: m 12, s 2, t(0.95, 2) 2.919986 from any table of Student's distribution. */
    @Test
    void upper_isMeanAndStudentTimesDeviation() {
        PredictionFormula formula = PredictionFormula.of(10, 12, 14);
        assertEquals(12, formula.mean(), 1e-12);
        assertEquals(2, formula.standardDeviation(), 1e-12);
        assertEquals(12 + 2.919986 * 2 * Math.sqrt(4.0 / 3), formula.mean() + formula.margin(), 1e-4);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 5, 6, 10, 20, 40})
    void upper_coversTheNextSplice93To97TimesInAHundred(int n) {
        Random random = new Random(SEED + n);
        int covered = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double[] sample = random.doubles(n)
                    .map(any -> 150 + 8 * random.nextGaussian())
                    .toArray();
            double next = 150 + 8 * random.nextGaussian();
            if (next <= upper(PredictionFormula.of(sample))) {
                covered++;
            }
        }
        double share = covered / (double) TRIALS;
        assertTrue(share >= 0.93 && share <= 0.97, "n " + n + ": " + share);
    }

    /** One gross outlier among ten, on either side, in 1,000 samples: the mean stays within the clean sample's interval. */
    @ParameterizedTest
    @ValueSource(doubles = {-500, -100, 100, 500, 5000})
    void grossOutlier_doesNotMoveTheEstimateBeyondItsInterval(double error) {
        Random random = new Random(SEED);
        for (int trial = 0; trial < 1000; trial++) {
            double[] clean = random.doubles(10)
                    .map(any -> 150 + 8 * random.nextGaussian())
                    .toArray();
            double[] spoilt = clean.clone();
            spoilt[trial % 10] += error;
            PredictionFormula before = PredictionFormula.of(clean);
            PredictionFormula after = PredictionFormula.of(spoilt);
            double halfWidth = before.margin();
            assertTrue(Math.abs(after.mean() - before.mean()) <= halfWidth, Arrays.toString(spoilt));
        }
    }

    @Test
    void grossOutlier_isNamedByItsPlace() {
        PredictionFormula formula = PredictionFormula.of(150, 148, 152, 151, 149, 950, 150, 147, 153, 150);
        assertEquals(List.of(5), formula.outliers());
        assertEquals(9, formula.count());
        assertEquals(150, formula.mean(), 1e-9);
    }

    @Test
    void twoOutliersOfTen_doNotHideOneAnother() {
        PredictionFormula formula = PredictionFormula.of(150, 148, 152, 940, 149, 950, 150, 147, 153, 150);
        assertEquals(List.of(5, 3), formula.outliers());
    }

    @Test
    void ordinaryScatter_losesNothing() {
        assertEquals(
                List.of(),
                PredictionFormula.of(150, 141, 158, 151, 149, 162, 150, 139, 153, 150)
                        .outliers());
        assertEquals(
                List.of(), PredictionFormula.of(150, 150, 150, 150, 150, 150).outliers());
    }

    /**
     * By hand, for sums of two ends 300, 304, 308: mean of an end 152, s of the sums 4, t(0.95, 2) 2.919986. One end:
     * 2.919986 x 4 / sqrt(2) x sqrt(1 + 1/6) = 8.921; each of two: 2.919986 x 4 x sqrt(1 + 1/3) / 2 = 6.743.
     */
    @Test
    void sumsOfTwoEnds_giveOneEndMoreThanEachOfTwo() {
        PredictionFormula formula = PredictionFormula.ofEnds(2, Double.POSITIVE_INFINITY, 300, 304, 308);
        assertEquals(152, formula.mean(), 1e-12);
        assertEquals(8.9207, formula.margin(), 1e-3);
        assertEquals(6.7434, formula.marginOfTwo(), 1e-3);
    }

    /** By hand, for single ends 10, 12, 14: each of two 2.919986 x 2 / sqrt(2) x sqrt(1 + 2/3) = 5.331. */
    @Test
    void singleEnds_giveEachOfTwoLess() {
        assertEquals(5.3312, PredictionFormula.of(10, 12, 14).marginOfTwo(), 1e-3);
    }

    static Stream<Arguments> pieces() {
        return IntStream.of(3, 5, 8, 30).boxed().flatMap(n -> Stream.of(1, 2).flatMap(seen -> Stream.of(1, 2)
                .flatMap(asked -> Stream.of(false, true).map(blunder -> Arguments.of(n, seen, asked, blunder)))));
    }

    /** Ends independent, 150 mm with a deviation of 8; a blunder of 400 mm in one measurement, 24 mm being scatter. */
    @ParameterizedTest
    @MethodSource("pieces")
    void limit_coversTheNextPiece_945To965TimesInAThousand(int n, int seen, int asked, boolean blunder) {
        Random random = new Random(SEED + 100L * n + 10L * seen + asked);
        int trials = 40_000;
        int covered = 0;
        for (int trial = 0; trial < trials; trial++) {
            double[] sample = random.doubles(n).map(any -> ends(random, seen)).toArray();
            if (blunder) {
                sample[trial % n] += trial % 2 == 0 ? 400 : -400;
            }
            PredictionFormula formula = PredictionFormula.ofEnds(seen, 96.0 * seen, sample);
            double limit = asked * (formula.mean() + (asked == 1 ? formula.margin() : formula.marginOfTwo()));
            if (ends(random, asked) <= limit) {
                covered++;
            }
        }
        double share = covered / (double) trials;
        assertTrue(share >= 0.945 && share <= 0.965, "cover " + share);
    }

    private static double ends(Random random, int count) {
        double sum = 0;
        for (int end = 0; end < count; end++) {
            sum += 150 + 8 * random.nextGaussian();
        }
        return sum;
    }

    private static double upper(PredictionFormula formula) {
        return formula.mean() + formula.margin();
    }

    @Test
    void blunderAmongFew_isLeftOut_andAFarOneIsSuspected() {
        PredictionFormula blunder = PredictionFormula.ofEnds(1, 96.0, 150, 152, 148, 151, 400);
        assertEquals(List.of(4), blunder.outliers());
        assertEquals(150.25, blunder.mean(), 1e-9);
        PredictionFormula far = PredictionFormula.ofEnds(1, 96.0, 150, 150.5, 149.5, 150, 210);
        assertEquals(List.of(), far.outliers());
        assertEquals(Optional.of(4), far.suspicious());
        assertEquals(
                Optional.empty(),
                PredictionFormula.ofEnds(1, 96.0, 150, 158, 141, 155, 147).suspicious());
    }

    @Test
    void fewerThanThree_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> PredictionFormula.of(150, 151));
    }
}
