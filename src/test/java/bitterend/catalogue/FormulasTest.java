package bitterend.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Seizings and thimbles against worked numbers. */
final class FormulasTest {
    private static final Diameter ROPE = Diameter.ofMillimetres(12);
    private static final Diameter STUFF = Diameter.ofMillimetres(3);

    /** Geometry: 12 mm rope, 3 mm stuff: lower turn 71.12 mm, rider 89.97 mm. */
    @Test
    void seizing_takesSoMuchStuffATurn() {
        assertEquals(71.12, mm(SeizingFormula.turn(ROPE, STUFF)), 0.005);
        assertEquals(89.97, mm(SeizingFormula.rider(ROPE, STUFF)), 0.005);
    }

    /** Round seizing of ten turns and nine riders, or eight and seven (published handbook [1], no. 3388): 1,521 and 1,199 mm before crossing and ends. */
    @ParameterizedTest
    @CsvSource({"10, 9, 1521", "8, 7, 1199"})
    void roundSeizing_takesTurnsAndRiders(int turns, int riders, double expected) {
        FineLength sum = SeizingFormula.turn(ROPE, STUFF)
                .times(turns)
                .plus(SeizingFormula.rider(ROPE, STUFF).times(riders));
        assertEquals(expected, mm(sum), 0.5);
        Seizing seizing = new Seizing(new Ratio(1, 4), turns, riders, 2, false);
        assertEquals(
                mm(sum) + 4 * mm(SeizingFormula.rider(ROPE, STUFF)),
                mm(SeizingFormula.whole(ROPE, STUFF, seizing)),
                0.001);
    }

    /**
     * A flat seizing has no riders (published handbook [1], no. 3383): ten turns of 71.12 mm. A racking one (no. 3400) runs in
     * a figure of eight of two circles, 2 pi (12 + 3) = 94.25 mm a turn. Two crossing turns and both ends as riders of 89.97 mm.
     */
    @ParameterizedTest
    @CsvSource({"false, 711.2", "true, 942.5"})
    void flatAndRackingSeizings_haveNoRiders(boolean racked, double expected) {
        Seizing seizing = new Seizing(new Ratio(1, 4), 10, 0, 2, racked);
        assertEquals(expected + 4 * 89.97, mm(SeizingFormula.whole(ROPE, STUFF, seizing)), 0.2);
    }

    /** Heavy thimbles, a dealer's sheet: inside perimeter from inside width and length, in. */
    @ParameterizedTest
    @CsvSource({
        "0.88, 1.62, 3.91",
        "1.06, 1.88, 4.58",
        "1.12, 2.12, 5.08",
        "1.50, 2.75, 6.641",
        "1.75, 3.25, 7.83",
        "2.00, 3.75, 9.01",
        "2.25, 4.25, 10.19",
        "2.50, 4.50, 10.91"
    })
    void teardrop_isSoFarRound(String width, String length, double perimeter) {
        assertEquals(perimeter, mm(TeardropFormula.perimeter(inch(width), inch(length))) / 25.4, 0.01);
    }

    @Test
    void teardrop_isLongerThanWide() {
        assertFalse(TeardropFormula.isOne(inch("2"), inch("2")));
        assertEquals(168.7, mm(TeardropFormula.perimeter(inch("1.50"), inch("2.75"))), 0.05);
    }

    private static FineLength inch(String inches) {
        return LengthText.parseFine(inches + " in").value().orElseThrow();
    }

    private static double mm(FineLength length) {
        return length.units() / 10_000.0;
    }
}
