package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How sure a mean is, held against printed tables. */
final class StandardErrorsTest {
    /**
     * Student's t that one value in twenty exceeds, on both sides together, by degrees of freedom: NIST/SEMATECH e-Handbook
     * of Statistical Methods, 1.3.6.7.2, column 0.975.
     */
    @ParameterizedTest
    @CsvSource({"1, 12.706", "4, 2.776", "9, 2.262", "29, 2.045", "99, 1.984"})
    void margin_isTheTwoSidedT(int degrees, double t) {
        long margin = StandardErrors.margin(new Cost(1_000_000), degrees + 1, 1).millis();
        assertTrue(Math.abs(margin - Math.round(t * 1_000_000)) <= 600, margin + " against " + t);
    }

    /** With two rivals each claim has half the risk: column 0.9875 is not printed there; 0.99 and 0.975 lie about it. */
    @Test
    void margin_growsWithTheRivals() {
        long one = StandardErrors.margin(new Cost(1_000_000), 10, 1).millis();
        long two = StandardErrors.margin(new Cost(1_000_000), 10, 2).millis();
        assertTrue(Math.abs(one - 2_262_158) <= 2, "t of 9 " + one);
        assertTrue(two > 2_262_158 && two < 2_821_438, two + " of t between 0.975 and 0.99");
    }

    @Test
    void mean_isRoundedDown_andWhatIsSavedAtMostUp() {
        long[] values = {1, 2, 2};
        assertEquals(1, StandardErrors.mean(values));
        assertEquals(2, StandardErrors.meanAtMost(values));
        assertEquals(0, StandardErrors.meanAtMost(new long[0]));
        assertEquals(7, StandardErrors.meanAtMost(new long[] {7, 7}));
        assertEquals(-1, StandardErrors.meanAtMost(new long[] {-1, -2}));
    }
}
