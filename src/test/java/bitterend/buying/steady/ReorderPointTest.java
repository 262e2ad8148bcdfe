package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

final class ReorderPointTest {
    private static final Ratio SERVICE = Ratio.percent(97);
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    /** Three weeks of 40 m, since reels take two weeks and a week passes until the next look. */
    @Test
    void levelDemand_isCoveredUntilReelsCome() {
        ReorderPoint point = point(Orders.level(30, 30, 10), new LeadTime(10, 0, 2), 100, 1);
        assertEquals(3, point.weeks());
        assertEquals(Length.ofMetres(120), point.use());
        assertEquals(Length.ofMetres(120), point.point());
        assertEquals(1, point.reels());
        assertEquals(
                5, point(Orders.level(30, 30), new LeadTime(0, 0, 0), 100, 5).reels(), "the minimum");
    }

    /** 3 % of a large reel is more than three weeks of use: it would be ordered when nothing is left. */
    @Test
    void largeReel_isOrderedBeforeItsRopeRunsDry() {
        ReorderPoint point = point(Orders.level(30, 30, 10), new LeadTime(10, 0, 2), 5_000, 1);
        assertEquals(point.use(), point.point());
    }

    @Test
    void spreadOfTheLead_andLumps_raiseIt() {
        PastWeeks past = Orders.past(5, 104, week -> 2);
        Length plain = point(past, new LeadTime(7, 0, 0), 200, 1).point();
        assertTrue(point(past, new LeadTime(7, 21, 0), 200, 1).point().isLongerThan(plain));
        PastWeeks lumpy = past.with(cuts -> cuts.size() == 3 ? cuts : cuts.subList(0, 1));
        assertTrue(point(lumpy, new LeadTime(7, 0, 0), 200, 1).point().isShorterThan(plain));
    }

    @Test
    void season_raisesItBeforeTheSummer() {
        Demand demand = new Demand(Orders.past(5, 104, Orders.seasonal(3)), new DemandShape(true, 1000));
        ReorderPoint.Terms terms = new ReorderPoint.Terms(Length.ofMetres(200), 1, new LeadTime(14, 0, 0), SERVICE);
        Length spring = ReorderPoint.of(demand, Length.ZERO, terms, LocalDate.of(2026, 5, 25), 1)
                .point();
        Length winter = ReorderPoint.of(demand, Length.ZERO, terms, LocalDate.of(2026, 12, 7), 1)
                .point();
        assertTrue(spring.isLongerThan(winter.times(2)), spring + " against " + winter);
    }

    /** What is used beyond the point until an order comes is 3 % of an order, by another count over the same futures. */
    @Test
    void missedRope_isTheShareThatMayBeMissed() {
        Demand demand = new Demand(Orders.past(8, 80, week -> 2), DemandShape.LEVEL);
        LeadTime lead = new LeadTime(12, 5, 2);
        ReorderPoint point = ReorderPoint.of(
                demand, new Length(10), new ReorderPoint.Terms(Length.ofMetres(200), 1, lead, SERVICE), DAY, 3);
        long[] uses = ReorderPoint.uses(demand, new Length(10), lead, PastWeeks.placeOf(DAY), 3);
        long missed = Arrays.stream(uses)
                .map(use -> Math.max(0, use - point.point().mm()))
                .sum();
        assertEquals(6_000.0, (double) missed / uses.length, 2.0);
    }

    private static ReorderPoint point(PastWeeks past, LeadTime lead, int reel, int minimum) {
        return ReorderPoint.of(
                new Demand(past, DemandShape.LEVEL),
                Length.ZERO,
                new ReorderPoint.Terms(Length.ofMetres(reel), minimum, lead, SERVICE),
                DAY,
                1);
    }
}
