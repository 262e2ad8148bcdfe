package bitterend.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import org.junit.jupiter.api.Test;

/** Scrap that no way of planning avoids. */
final class LeastScrapTest {
    private static WeekRope rope(int shortest, int longest, int lengths) {
        return new WeekRope(
                "1-few",
                100,
                new UnitPrice(310_000),
                Length.ofMetres(shortest),
                Length.ofMetres(longest),
                lengths,
                500,
                3);
    }

    @Test
    void twoLengths_threeOrTwoToAReel() {
        // Six of each: two reels of three of 30 m and three of two of 40 m; 500 m less 420 m and twelve cuts.
        assertEquals(100 * (500 - 420 - 0.12) / 420, LeastScrap.percent(rope(30, 40, 2)), 1e-6);
    }

    @Test
    void mixOfBothLengths_isBetterThanEachAlone() {
        // Five of each: one reel of three of 20 m and one of 39 m, two of one of 20 m and two of 39 m.
        assertEquals(100 * (300 - 295 - 0.1) / 295, LeastScrap.percent(rope(20, 39, 2)), 1e-6);
    }

    @Test
    void lengthsThatFillAReel_leaveNothing() {
        WeekRope halves =
                new WeekRope("1-few", 100, new UnitPrice(310_000), new Length(24_990), new Length(49_990), 2, 500, 3);
        assertEquals(0, LeastScrap.percent(halves), 1e-6);
    }

    @Test
    void anyLength_nothingIsProven() {
        assertEquals(0, LeastScrap.percent(rope(30, 40, 0)));
    }

    @Test
    void ropesOfTheBenchmark_asListingEveryWayToDivideAReelFinds() {
        assertEquals(1.788, LeastScrap.percent(WeekRope.some(24).get(4)), 0.0005);
        assertEquals(1.288, LeastScrap.percent(WeekRope.some(24).get(19)), 0.0005);
    }
}
