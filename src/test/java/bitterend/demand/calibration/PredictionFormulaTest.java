package bitterend.demand.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
        assertEquals(12 + 2.919986 * 2 * Math.sqrt(4.0 / 3), formula.upper(), 1e-4);
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
            if (next <= PredictionFormula.of(sample).upper()) {
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
            double halfWidth = before.upper() - before.mean();
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

    @Test
    void fewerThanThree_areRefused() {
        assertThrows(IllegalArgumentException.class, () -> PredictionFormula.of(150, 151));
    }
}
