package bitterend.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.LinearMass;
import bitterend.measure.Mass;
import bitterend.measure.Ratio;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rope on a reel by size and by weight, against published and worked values. */
final class GaugeTest {

    /**
     * Handbook of Oceanographic Winch, Wire and Cable Technology, chapter 12: B 12, h 9, W 18, d 1 is 890.6 ft; taken in
     * tenths of an inch so that all sizes are whole (the figure scales with the length unit).
     */
    @Test
    void formula_givesThePublishedExample() {
        Gauge.Wound tenthsOfAnInch = new Gauge.Wound(mm(120), mm(90), mm(180), Diameter.ofMillimetres(10));
        Length tenths = Gauge.bySize(tenthsOfAnInch, Gauge.USUAL_FILL).formula();
        assertEquals(890.6, tenths.mm() / 120.0, 0.06);
    }

    /** A second printed formula, (A + D) x A x B x K with K = 0.2618 / d^2: flange depth A, drum D, width B; 890.6 ft too. */
    @Test
    void secondFormula_givesTheSameLength() {
        double printed = (9 + 12) * 9 * 18 * 0.2618;
        Gauge.Wound tenthsOfAnInch = new Gauge.Wound(mm(120), mm(90), mm(180), Diameter.ofMillimetres(10));
        assertEquals(
                printed,
                Gauge.bySize(tenthsOfAnInch, Gauge.USUAL_FILL).formula().mm() / 120.0,
                0.1);
    }

    /** With 2 in of clearance under the rim of the same 9 in flange, 7 in of rope: 626.8 ft. */
    @Test
    void secondFormula_withClearanceUnderTheRim() {
        Gauge.Wound tenthsOfAnInch = new Gauge.Wound(mm(120), mm(70), mm(180), Diameter.ofMillimetres(10));
        assertEquals(626.8, (7 + 12) * 7 * 18 * 0.2618, 0.06);
        assertEquals(
                626.8, Gauge.bySize(tenthsOfAnInch, Gauge.USUAL_FILL).formula().mm() / 120.0, 0.1);
    }

    /** The printed factor, in any unit: A 9, D 12, B 18 in at 0.2618 is 890.6 ft, 271,463 mm; sizes in millimetres here. */
    @Test
    void factorOfTheMaker_givesThePrintedLength() {
        Gauge.Wound inches = new Gauge.Wound(mm(3048), mm(2286), mm(4572), Diameter.ofMillimetres(254));
        Length tenfold = Gauge.byFactor(inches, new Ratio(2618, 10_000));
        assertEquals(890.6, tenfold.mm() / 304.8 / 1000, 0.06);
    }

    /**
     * Rope 4 % thicker than its name holds so much less: a fill found on a reel of the type has that in it, and the usual
     * 0.85 is not taken off it again.
     */
    @Test
    void oversize_isNotTakenTwice() {
        Length named = Gauge.bySize(wound(150, 450, 300, 12), Ratio.ONE).turns();
        Length really = new Length(Math.round((double) named.mm() / (1.04 * 1.04)));
        Ratio taught = new Ratio(really.mm(), named.mm());
        Gauge.BySize again = Gauge.bySize(wound(150, 450, 300, 12), Gauge.fill(List.of(taught)));
        assertNear((double) really.mm(), again.safe(), 1);
    }

    /** Worked from the formula and from whole turns: B 200, flange 600, W 400, d 16 mm; B 150, F 450, W 300, d 12 mm. */
    @Test
    void wholeTurns_areLessThanTheFormula() {
        Gauge.BySize large = Gauge.bySize(wound(200, 600, 400, 16), Gauge.USUAL_FILL);
        assertNear(392_700, large.formula(), 50);
        assertNear(369_500, large.turns(), 50);
        assertNear(0.85 * 369_451.3, large.safe(), 2);
        Gauge.BySize small = Gauge.bySize(wound(150, 450, 300, 12), Gauge.USUAL_FILL);
        assertNear(294_500, small.formula(), 50);
        assertNear(277_100, small.turns(), 50);
    }

    /** Worked: 20 m of 6 mm rope on a 50 mm barrel 60 mm wide reach 133.3 mm by formula, 134 mm in seven whole layers. */
    @Test
    void outside_isReachedAtTheWorkedDiameter() {
        // Ten times as large in every size: a hundred times the volume over the square of a rope ten times as thick.
        Gauge.Wound byFormula = new Gauge.Wound(mm(500), mm(416), mm(600), Diameter.ofMillimetres(60));
        assertNear(200_000, Gauge.bySize(byFormula, Ratio.ONE).formula(), 500);
        Diameter six = Diameter.ofMillimetres(6);
        assertTrue(turns(new Gauge.Wound(mm(50), mm(42), mm(60), six)) >= 20_000);
        assertTrue(turns(new Gauge.Wound(mm(50), mm(36), mm(60), six)) < 20_000);
    }

    /** Worked: 96.4 - 12.0 kg at 0.179 kg/m is 471.5 m; 5 % of mass either way gives 449 to 496 m. */
    @Test
    void weight_givesALengthAndItsRange() {
        Gauge.ByWeight weighed =
                Gauge.byWeight(new Mass(96_400), new Mass(12_000), new LinearMass(179_000), Ratio.percent(5));
        assertNear(471_500, weighed.expected(), 50);
        assertNear(449_000, weighed.least(), 500);
        assertNear(496_000, weighed.most(), 500);
    }

    @Test
    void fill_isTheLeastThatWasGauged() {
        assertEquals(Gauge.USUAL_FILL, Gauge.fill(List.of()));
        assertEquals(Ratio.percent(88), Gauge.fill(List.of(Ratio.percent(91), Ratio.percent(88), Ratio.percent(95))));
    }

    private static long turns(Gauge.Wound wound) {
        return Gauge.bySize(wound, Ratio.ONE).turns().mm();
    }

    private static Gauge.Wound wound(long barrel, long flange, long traverse, long rope) {
        Length depth = Gauge.Wound.depthOf(mm(flange), mm(barrel));
        return new Gauge.Wound(mm(barrel), depth, mm(traverse), Diameter.ofMillimetres(rope));
    }

    private static void assertNear(double expected, Length found, double within) {
        assertTrue(Math.abs(found.mm() - expected) <= within, found.mm() + " mm instead of " + expected);
    }

    private static Length mm(long mm) {
        return new Length(mm);
    }
}
