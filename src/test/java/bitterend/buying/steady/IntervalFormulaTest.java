package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Intervals held against printed tables. */
final class IntervalFormulaTest {
    /**
     * Groups of one future each, half of them at -1, half at +1 million: the sum of squares is their number. Student's t that one
     * value in twenty exceeds on both sides together, by degrees of freedom: NIST/SEMATECH e-Handbook of Statistical Methods,
     * 1.3.6.7.2, column 0.975. Chi-squared that one value in five is below: from memory of printed tables.
     */
    @ParameterizedTest
    @CsvSource({"9, 2.262, 5.380", "29, 2.045, 22.475"})
    void reach_isTheTwoSidedT_ofTheSpreadAtItsUpperEnd(int degrees, double t, double chiSquared) {
        int groups = degrees + 1;
        Figure figure = IntervalFormula.mean(turns(groups), ownGroups(groups), 1);
        double expected = 1e6 * t * Math.sqrt(groups / chiSquared * (1 + 1.0 / groups));
        assertEquals(0, figure.value());
        assertEquals(expected, (double) figure.high(), expected / 1_000);
        assertEquals(-expected, (double) figure.low(), expected / 1_000);
    }

    @Test
    void reach_growsWithTheClaims() {
        long one = IntervalFormula.mean(turns(10), ownGroups(10), 1).high();
        long two = IntervalFormula.mean(turns(10), ownGroups(10), 2).high();
        assertTrue(two > one && two < one * 2_821 / 2_262, two + " of t between 0.975 and 0.99, against " + one);
    }

    /** Many futures of one past are no more than one past says. */
    @Test
    void moreFuturesOfTheSamePasts_doNotMakeTheHistorySmaller() {
        long[] few = turns(10);
        long[] many = new long[1_000];
        int[] groups = new int[1_000];
        Arrays.setAll(many, i -> few[i / 100]);
        Arrays.setAll(groups, i -> i / 100);
        assertEquals(
                (double) IntervalFormula.mean(few, ownGroups(10), 1).high(),
                (double) IntervalFormula.mean(many, groups, 1).high(),
                1_000.0);
    }

    @Test
    void share_isNeverMoreThanAll() {
        Figure share = IntervalFormula.share(
                new long[] {9, 0, 0, 1}, new long[] {10, 10, 10, 10}, 10_000, new int[] {0, 1, 2, 3});
        assertEquals(2_500, share.value());
        assertEquals(10_000, share.high());
    }

    @Test
    void oneGroup_saysNothingOfItsError() {
        assertFalse(IntervalFormula.mean(new long[] {1, 2}, new int[] {0, 0}, 1).known());
    }

    @Test
    void differenceOfRatios_takesWhatBothShareOff() {
        long[] used = {1_000, 3_000, 500, 2_000};
        long[] dear = {2_100, 6_300, 1_050, 4_200};
        long[] cheap = {2_000, 6_000, 1_000, 4_000};
        Figure more = IntervalFormula.difference(
                new long[][] {dear, used}, new long[][] {cheap, used}, 1_000, ownGroups(4), 1);
        assertEquals(100, more.value());
        assertTrue(more.high() - more.low() <= 2, more.toString());
    }

    private static long[] turns(int count) {
        long[] turns = new long[count];
        Arrays.setAll(turns, i -> i % 2 == 0 ? -1_000_000 : 1_000_000);
        return turns;
    }

    private static int[] ownGroups(int count) {
        int[] groups = new int[count];
        Arrays.setAll(groups, i -> i);
        return groups;
    }
}
