package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Rigging.BOOK;
import static bitterend.demand.Rigging.BRAID;
import static bitterend.demand.Rigging.EYE;
import static bitterend.demand.Rigging.LARGER_SHACKLE;
import static bitterend.demand.Rigging.SHACKLE;
import static bitterend.demand.Rigging.TURNBUCKLE;
import static bitterend.demand.Rigging.between;
import static bitterend.demand.Rigging.demanded;
import static bitterend.demand.Rigging.eyeWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Measuring.Points;
import bitterend.finding.Finding;
import bitterend.measure.Length;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Where hardware hangs on an end, the order says between which points its length runs. */
final class MeasuredPointsTest {
    private static final Length TEN_METRES = Length.ofMetres(10);
    private static final EndSpec TWO_SHACKLES = eyeWith(SHACKLE, LARGER_SHACKLE);

    @Test
    void overAll_asksForHardware() {
        assertEquals(
                "measured: over all: hardware on an end, such as with SB12; without any: pin to pin, flat or outside",
                told("over all", "over all", EYE, EYE));
        assertEquals("", told("over all", "over all", eyeWith(SHACKLE), EYE));
    }

    @Test
    void hardware_asksForTwoPoints() {
        assertEquals(
                "measured: pin to pin: two points, for hardware hangs on an end: over all, SB12 to end, or end to end"
                        + " for the rope alone",
                told("", "", eyeWith(SHACKLE), EYE));
        assertEquals("", told("", "", EYE, EYE));
        assertEquals("", told("end", "end", eyeWith(SHACKLE), EYE));
    }

    @Test
    void point_thatAnEndHasNotIsRefusedWithThoseItHas() {
        assertEquals(
                "measured: hook: a point of end A: end, SB12, TB12",
                told("hook", "end", eyeWith(SHACKLE, TURNBUCKLE), EYE));
        assertEquals("measured: hook: a point of end B: end", told("end", "hook", EYE, EYE));
    }

    @Test
    void word_thatNamesTwoThingsIsRefused() {
        assertEquals(
                "measured: shackle: the id of one of them: end A has two of that kind",
                told("shackle", "end", TWO_SHACKLES, EYE));
        assertEquals("", told("shackle", "end", eyeWith(SHACKLE, TURNBUCKLE), EYE));
        assertEquals("", told("sb14", "end", TWO_SHACKLES, EYE));
    }

    /** Shackles of 48 and 56 mm inside: a length over one of them or both leaves so much less to the rope. */
    @Test
    void rope_isShorterByTheHardwareUpToThePoint() {
        long bare = cut("end", TWO_SHACKLES);
        assertEquals(bare - 48, cut("SB12", TWO_SHACKLES));
        assertEquals(bare - 48 - 56, cut("SB14", TWO_SHACKLES));
        assertEquals(bare - 48 - 56, cut("over all", TWO_SHACKLES));
    }

    @Test
    void derivation_namesThePointsAndTakesTheHardwareOff() {
        Derivation derivation = demanded(one(between("SB14", "end", TEN_METRES, TWO_SHACKLES, EYE)))
                .derivations()
                .get(0);
        assertEquals(
                "inside of shackle SB14 to bearing point of end B",
                derivation.lines().get(0).formula().exact());
        assertEquals(fine(-48), Bench.amount(derivation, "end A: shackle SB12"));
        assertEquals(fine(-56), Bench.amount(derivation, "end A: shackle SB14"));
        assertEquals(
                "inside length, +/- 1 mm", derivation.lines().get(1).formula().exact());
    }

    /** The clear rope of a leg over its shackle: 10 m less 48 mm and two bearings of 300 mm. */
    @Test
    void card_hasTheClearRopeWithoutTheHardware() {
        Demanded demanded = demanded(one(between("SB12", "end", TEN_METRES, eyeWith(SHACKLE), EYE)));
        assertEquals(fine(9_352), demanded.findCard().orElseThrow().clear());
    }

    @Test
    void takeUp_isKnownOnlyBetweenPointsThatAreThere() {
        assertTrue(takeUp("SB12", eyeWith(SHACKLE)).isKnown());
        assertTrue(takeUp("", EYE).isKnown());
        TakeUp unknown = takeUp("hook", eyeWith(SHACKLE));
        assertFalse(unknown.isKnown());
        assertEquals("measured", unknown.findings().get(0).field());
    }

    @Test
    void points_areSaidAsAnOrderSaysThem() {
        assertEquals("", between("", "", TEN_METRES, EYE, EYE).measuring().betweenPoints());
        assertEquals(
                "pin to pin", between("", "", TEN_METRES, EYE, EYE).measuring().words());
        assertEquals(
                "shackle to end",
                between("shackle", "end", TEN_METRES, EYE, EYE).measuring().betweenPoints());
        assertEquals(
                "over all",
                between(Points.OUTERMOST, Points.OUTERMOST, TEN_METRES, EYE, EYE)
                        .measuring()
                        .words());
    }

    private static String told(String a, String b, EndSpec endA, EndSpec endB) {
        return demanded(one(between(a, b, TEN_METRES, endA, endB))).findings().stream()
                .filter(Finding::isError)
                .map(each -> each.field() + ": " + each.found() + ": " + each.expected())
                .collect(Collectors.joining("\n"));
    }

    private static long cut(String point, EndSpec endA) {
        List<Piece> pieces =
                demanded(one(between(point, "end", TEN_METRES, endA, EYE))).pieces();
        return pieces.get(0).cut().mm();
    }

    private static TakeUp takeUp(String point, EndSpec endA) {
        String other = point.isEmpty() ? "" : "end";
        return model(BOOK, BRAID).takeUp(one(between(point, other, TEN_METRES, endA, EYE)), fine(12_000));
    }
}
