package bitterend.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.FineLength;
import bitterend.measure.Length;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The triangle of a sling's leg against Pythagorean triples, identities of angles and printed figures. */
final class HangFormulaTest {
    private static FineLength mm(long mm) {
        return FineLength.ofMillimetres(mm);
    }

    /** Whole triples (Euclid, Elements X, lemma to 29): height, reach and length exact, each from the other two. */
    @ParameterizedTest
    @CsvSource({"4000, 3000, 5000", "3000, 4000, 5000", "12000, 5000, 13000", "8400, 1300, 8500", "20, 21, 29"})
    void triples_areExact(long height, long out, long length) {
        assertEquals(new Length(length), HangFormula.length(mm(height), mm(out)));
        assertEquals(mm(out), HangFormula.otherSide(mm(length), mm(height)));
        assertEquals(mm(height), HangFormula.otherSide(mm(length), mm(out)));
        assertEquals(
                mm(length).units() / 2,
                HangFormula.halfDiagonal(mm(height), mm(out)).units());
    }

    /** Unequal legs of a bridle primer: 3 ft out and 4 ft down are 5 ft, 6 ft out and 3 ft down 6.7 ft. */
    @Test
    void unequalLegs_areWorkedOutEachByItself() {
        FineLength foot = new FineLength(3_048_000);
        assertEquals(new Length(1524), HangFormula.length(foot.times(4), foot.times(3)));
        assertEquals(6.7, HangFormula.length(foot.times(3), foot.times(6)).mm() / 304.8, 0.02);
    }

    /** Length over height as load factors are printed on trade pages: 1.154 at 60 degrees included, 1.414 at 90, 2 at 120. */
    @ParameterizedTest
    @CsvSource({"30000, 1154.7", "45000, 1414.2", "60000, 2000"})
    void lengthOverHeight_isThePrintedFactor(long millidegrees, String factor) {
        long length = HangFormula.lengthByHeight(mm(1_000_000), new LegAngle(millidegrees))
                .mm();
        assertEquals(Double.parseDouble(factor), length / 1000.0, 0.05);
    }

    /** At exactly 60 degrees a leg is twice its height; that is not above 60, and a hair wider is. */
    @Test
    void sixtyDegrees_areNotAboveSixty() {
        LegAngle sixty = new LegAngle(60_000);
        assertEquals(mm(1500), HangFormula.height(mm(3000), sixty));
        FineLength out = HangFormula.otherSide(mm(3000), mm(1500));
        assertEquals(60_000, HangFormula.millidegreesByHeight(mm(3000), mm(1500)));
        assertEquals(30_000, HangFormula.millidegreesByReach(mm(3000), mm(1500)));
        assertFalse(sixty.isWide());
        assertTrue(new LegAngle(HangFormula.millidegrees(mm(1500), out.plus(mm(1)))).isWide());
        assertEquals("60.0 degrees from the vertical, 30.0 from the horizontal", sixty.words());
        assertEquals("120.0", sixty.included().toString());
    }

    @Test
    void angles_roundUpOnce_andStillAddUpToARightAngle() {
        LegAngle angle = new LegAngle(HangFormula.millidegrees(mm(4000), mm(3000)));
        assertEquals(36_870, angle.millidegrees());
        assertEquals("36.9 degrees from the vertical, 53.1 from the horizontal", angle.words());
        assertEquals("73.8", angle.included().toString());
    }

    /** From height and reach to length and angle and back: never short, and within what an angle rounds. */
    @Test
    void thereAndBack_isNeverShort() {
        Random random = new Random(7);
        for (int i = 0; i < 5_000; i++) {
            FineLength height = mm(1 + random.nextInt(30_000));
            FineLength out = mm(1 + random.nextInt(30_000));
            Length length = HangFormula.length(height, out);
            LegAngle angle = new LegAngle(HangFormula.millidegrees(height, out));
            assertTrue(HangFormula.otherSide(length.fine(), height).compareTo(out) >= 0, height + " " + out);
            assertTrue(HangFormula.reach(length.fine(), angle).compareTo(out) >= 0, height + " " + out);
            double rounded = length.mm() * Math.toRadians(0.001) + 1;
            assertEquals(
                    (double) length.mm(),
                    (double) HangFormula.lengthByReach(out, angle).mm(),
                    rounded / Math.sin(Math.atan2((double) out.units(), (double) height.units())));
            assertEquals(
                    length.mm() * length.mm() / 1e6,
                    (square(HangFormula.height(length.fine(), angle)) + square(HangFormula.reach(length.fine(), angle)))
                            / 1e6,
                    1e-3);
        }
    }

    private static double square(FineLength side) {
        return Math.pow(side.units() / 1e4, 2);
    }
}
