package bitterend.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every number not marked otherwise is exact geometry, worked out by hand or with a desk calculator. */
final class EyeFormulaTest {
    private static final Diameter THIN = Diameter.NONE;

    @Test
    void round_ofAFlatEyeMatchesTheWorkedLength() {
        assertMillimetres(618.970, EyeFormula.round(mm(300), Diameter.NONE, pin(12)));
    }

    @Test
    void round_ofTheFederalItemMatchesItsWorkedLength() {
        // CID A-A-52069: eyes of 43 in inside perimeter, rope of 1.114 in
        FineLength round = EyeFormula.round(thousandths(21_500), Diameter.NONE, new Diameter(1114 * 254));
        assertEquals(44.7643, round.units() / 254_000.0, 0.00005);
    }

    @ParameterizedTest
    @CsvSource({"0, 3187.923, 12.759", "12, 3208.135, 13.271"})
    void round_ofRatioFiveOnAPinOf300(long rope, double round, double degrees) {
        Diameter thickness = rope == 0 ? THIN : pin(rope);
        assertMillimetres(round, EyeFormula.round(mm(1500), pin(300), thickness));
        assertDegrees(degrees, EyeFormula.throatAngle(mm(1500), pin(300), thickness));
    }

    @ParameterizedTest
    @CsvSource({"50, 283.9", "100, 264.2", "150, 236.5"})
    void insideLength_ofAFlatEyeShortensOnItsPin(long pin, double inside) {
        FineLength round = EyeFormula.round(mm(300), Diameter.NONE, pin(12));
        assertEquals(inside, millimetres(EyeFormula.insideLength(round, pin(pin), pin(12))), 0.05);
    }

    @Test
    void throatAngle_ofA300FlatEyeOnAPinOf150() {
        FineLength round = EyeFormula.round(mm(300), Diameter.NONE, pin(12));
        FineLength used = EyeFormula.insideLength(round, pin(150), pin(12));
        assertEquals(
                "60.2 degrees", EyeFormula.throatAngle(used, pin(150), pin(12)).words());
    }

    /** theta = 2 asin(0.5 / (h/d - 0.5)), rope thickness left out; 1.5 is the limit of 29 CFR 1926.251(d). */
    @ParameterizedTest
    @CsvSource({"1500, 60.0", "2432, 30.0", "3000, 23.1", "5000, 12.8"})
    void throatAngle_byRatioOfEyeToPin(long thousandthsOfPin, double degrees) {
        FineLength inside = pin(1000).times(new Ratio(thousandthsOfPin, 1000));
        assertEquals(degrees, EyeFormula.throatAngle(inside, pin(1000), THIN).millidegrees() / 1000.0, 0.05);
    }

    @Test
    void throatAngle_ofSixtyDegreesIsNotWiderThanSixty() {
        assertEquals(ThroatAngle.ofDegrees(60), EyeFormula.throatAngle(mm(1500), pin(1000), THIN));
    }

    /** The same laid flat: 60 degrees in use is 1.91 x the pin flat, 30 degrees 2.78 x; 3 x in use is 3.34 x flat. */
    @ParameterizedTest
    @CsvSource({"1500, 1.91", "2432, 2.78", "3000, 3.34"})
    void insideLength_laidFlatIsLongerThanInUse(long inUse, double flat) {
        Diameter thin = new Diameter(1);
        FineLength round = EyeFormula.round(pin(1000).times(new Ratio(inUse, 1000)), pin(1000), thin);
        assertEquals(flat, millimetres(EyeFormula.insideLength(round, Diameter.NONE, thin)) / 1000, 0.005);
    }

    @ParameterizedTest
    @CsvSource({"0, 148.850", "60, 155.133"})
    void roundThimble_addsTheTurnOfTheCentreLine(long degrees, double round) {
        assertMillimetres(round, EyeFormula.roundThimble(mm(130), ThroatAngle.ofDegrees(degrees), pin(12)));
    }

    @Test
    void choked_isPiTimesPinAndRope() {
        assertMillimetres(Math.PI * 162, EyeFormula.choked(pin(150), pin(12)));
    }

    @Test
    void round_justAboveTheLimitIsTheWholeCircle() {
        // s one unit above r: the legs cross at once, C tends to 2 pi r
        FineLength least = new FineLength(1_560_001);
        assertTrue(EyeFormula.closes(least, pin(150), pin(12)));
        assertEquals(
                millimetres(EyeFormula.choked(pin(150), pin(12))),
                millimetres(EyeFormula.round(least, pin(150), pin(12))),
                0.05);
        assertTrue(EyeFormula.throatAngle(least, pin(150), pin(12)).isWiderThan(ThroatAngle.ofDegrees(179)));
    }

    @Test
    void round_refusesAnEyeThatCannotClose() {
        assertFalse(EyeFormula.closes(mm(156), pin(150), pin(12)));
        assertThrows(IllegalArgumentException.class, () -> EyeFormula.round(mm(156), pin(150), pin(12)));
        FineLength tooLittle = EyeFormula.choked(pin(150), pin(12));
        assertThrows(IllegalArgumentException.class, () -> EyeFormula.insideLength(tooLittle, pin(150), pin(12)));
    }

    @Test
    void round_ofALongEyeIsTwiceItsLengthAndHalfATurn() {
        // far from the fitting the legs are nearly straight: C tends to 2 h + pi r - d from below its own correction
        FineLength round = EyeFormula.round(mm(100_000), Diameter.NONE, pin(12));
        assertEquals(200_000 + Math.PI * 6, millimetres(round), 0.001);
    }

    @Property
    void insideLength_undoesRound(
            @ForAll @LongRange(min = 10_000, max = 1_000_000) long rope,
            @ForAll @LongRange(min = 0, max = 5_000_000) long pin,
            @ForAll @LongRange(min = 1, max = 30_000_000) long beyond) {
        Diameter thickness = new Diameter(rope);
        Diameter fitting = new Diameter(pin);
        FineLength inside = new FineLength(pin + rope / 2 + 1 + beyond);
        FineLength round = EyeFormula.round(inside, fitting, thickness);
        Assume.that(EyeFormula.reachesRound(round, fitting, thickness));
        // near the limit C hardly grows with h, so it is C that must come back, to the unit
        FineLength back = EyeFormula.insideLength(round, fitting, thickness);
        FineLength next = new FineLength(back.units() + 2);
        assertTrue(EyeFormula.round(back, fitting, thickness).compareTo(round) <= 0);
        assertTrue(EyeFormula.round(next, fitting, thickness).compareTo(round) >= 0);
    }

    @Property
    void round_growsWithTheEyeThePinAndTheRope(
            @ForAll @LongRange(min = 10_000, max = 1_000_000) long rope,
            @ForAll @LongRange(min = 0, max = 5_000_000) long pin,
            @ForAll @LongRange(min = 100_000, max = 30_000_000) long beyond) {
        FineLength inside = new FineLength(pin + rope + beyond);
        FineLength round = EyeFormula.round(inside, new Diameter(pin), new Diameter(rope));
        FineLength longer =
                EyeFormula.round(new FineLength(inside.units() + 10_000), new Diameter(pin), new Diameter(rope));
        FineLength thicker = EyeFormula.round(inside, new Diameter(pin), new Diameter(rope + 1000));
        FineLength wider = EyeFormula.round(inside, new Diameter(pin + 1000), new Diameter(rope));
        assertTrue(longer.compareTo(round) > 0);
        assertTrue(thicker.compareTo(round) > 0);
        assertTrue(wider.compareTo(round) > 0);
    }

    private static void assertMillimetres(double expected, FineLength actual) {
        assertEquals(expected, millimetres(actual), 0.0006);
    }

    private static void assertDegrees(double expected, ThroatAngle actual) {
        assertEquals(expected, actual.millidegrees() / 1000.0, 0.0006);
    }

    private static double millimetres(FineLength length) {
        return length.units() / 10_000.0;
    }

    private static FineLength mm(long mm) {
        return FineLength.ofMillimetres(mm);
    }

    private static FineLength thousandths(long thousandthsOfInch) {
        return new FineLength(thousandthsOfInch * 254);
    }

    private static Diameter pin(long mm) {
        return Diameter.ofMillimetres(mm);
    }
}
