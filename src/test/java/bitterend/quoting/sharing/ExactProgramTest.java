package bitterend.quoting.sharing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Small linear programs whose answers are fractions. */
final class ExactProgramTest {
    private static BigFraction[] row(long... numbers) {
        return Arrays.stream(numbers).mapToObj(BigFraction::new).toArray(BigFraction[]::new);
    }

    private static BigFraction fraction(long above, long below) {
        return new BigFraction(above, below);
    }

    /** 2x + 3y least, x + 3y at least 1, 3x + y at least 1: x = y = 1/4. */
    @Test
    void answer_isTheFractionItself() {
        ExactProgram program = new ExactProgram(row(2, 3));
        program.atLeast(BigFraction.ONE, row(1, 3));
        program.atLeast(BigFraction.ONE, row(3, 1));
        assertEquals(
                List.of(fraction(1, 4), fraction(1, 4)),
                program.solve().values().orElseThrow());
    }

    @Test
    void withoutRows_everythingIsNothing() {
        assertEquals(
                List.of(BigFraction.ZERO, BigFraction.ZERO),
                new ExactProgram(row(1, 1)).solve().values().orElseThrow());
    }

    /** x + y at least 3, x at most 1, y at most 1: the three rows add up to 0 at least 1. */
    @Test
    void rowsThatClash_areNamedWithTheirFactors() {
        ExactProgram program = new ExactProgram(row(0, 1));
        program.atLeast(new BigFraction(3), row(1, 1));
        program.atLeast(BigFraction.MINUS_ONE, row(-1, 0));
        program.atLeast(BigFraction.MINUS_ONE, row(0, -1));
        ExactProgram.Outcome outcome = program.solve();
        assertTrue(outcome.values().isEmpty());
        assertEquals(Map.of(0, BigFraction.ONE, 1, BigFraction.ONE, 2, BigFraction.ONE), Map.copyOf(outcome.refusal()));
    }

    /** Many rows through one corner: Bland's rule ends all the same. */
    @Test
    void cornerOfManyRows_isLeft() {
        ExactProgram program = new ExactProgram(row(1, 1, 1));
        for (int a = 0; a <= 4; a++) {
            for (int b = 0; b <= 4; b++) {
                program.atLeast(new BigFraction(a + b), row(a, b, 0));
                program.atLeast(new BigFraction(a), row(a, 0, b));
            }
        }
        assertEquals(
                List.of(BigFraction.ONE, BigFraction.ONE, BigFraction.ZERO),
                program.solve().values().orElseThrow());
    }

    @Test
    void negativeCost_isTheCallersMistake() {
        assertThrows(IllegalArgumentException.class, () -> new ExactProgram(row(-1)));
    }
}
