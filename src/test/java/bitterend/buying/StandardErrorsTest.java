package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

final class StandardErrorsTest {
    @Test
    void mean_isRoundedDown() {
        assertEquals(1, StandardErrors.mean(new long[] {1, 2, 2}));
        assertEquals(0, StandardErrors.mean(new long[0]));
        assertEquals(-2, StandardErrors.mean(new long[] {-1, -2}));
    }

    /** Values 1 to 9 have a variance of 7.5; their mean has an error of its root through 3. */
    @Test
    void errorOfChance_isThatOfTheMean_roundedUp() {
        long[] values = {1_000, 2_000, 3_000, 4_000, 5_000, 6_000, 7_000, 8_000, 9_000};
        assertEquals(913, StandardErrors.ofChance(values).millis());
    }
}
