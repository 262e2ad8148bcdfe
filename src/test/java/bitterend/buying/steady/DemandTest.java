package bitterend.buying.steady;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;

final class DemandTest {
    private static final int PASTS = 60;

    @Test
    void seasonThatIsThere_isSeen_andOneThatIsNot_isSeenNoMoreOftenThanItsRisk() {
        assertTrue(seasons(104, Orders.seasonal(3)) >= PASTS - 2, "a clear season of two years");
        assertTrue(seasons(52, Orders.seasonal(3)) >= PASTS * 9 / 10, "a clear season of one year");
        assertTrue(seasons(104, week -> 3) <= PASTS / 5, "no season: one in ten is believed, at twice that this fails");
        assertEquals(0, seasons(51, Orders.seasonal(3)), "less than a year shows none");
    }

    @Test
    void trendThatIsThere_isSeen_andOneThatIsNot_isSeenNoMoreOftenThanItsRisk() {
        IntToDoubleFunction twice = week -> Orders.seasonal(3).applyAsDouble(week) * (week < 52 ? 1 : 1.9);
        assertTrue(trends(104, twice) >= PASTS * 8 / 10, trends(104, twice) + " of " + PASTS);
        assertTrue(trends(104, Orders.seasonal(3)) <= PASTS / 8, "no trend: one in twenty is believed");
        assertEquals(0, trends(103, twice), "less than two years shows none");
    }

    @Test
    void weeksOfASeason_comeFromAboutTheSameTimeOfTheYear() {
        PastWeeks past = new PastWeeks(Orders.MONDAY, Arrays.asList(marked(104)));
        Demand demand = new Demand(past, new DemandShape(true, 1000));
        int[][] weeks = demand.asRecorded().weeks(Demand.dice(1, 0), 50, 104);
        for (int week = 0; week < 104; week++) {
            int place = (weeks[week][0] / 1000 - 1) % 52;
            int apart = Math.floorMod(place - (50 + week), 52);
            assertTrue(Math.min(apart, 52 - apart) <= 4, "week " + (50 + week) + " from " + place);
        }
    }

    @Test
    void olderWeeks_areBroughtToTheLevelOfToday() {
        PastWeeks past = Orders.level(104, 10);
        int[][] weeks =
                new Demand(past, new DemandShape(false, 2000)).asRecorded().weeks(Demand.dice(1, 0), 0, 10);
        assertEquals(10, weeks.length);
        long[] sums = new long[104];
        Arrays.fill(sums, 0, 52, 10_000);
        Arrays.fill(sums, 52, 104, 20_000);
        assertEquals(2000, DemandFormula.growth(sums, DemandFormula.ones(104)));
        assertEquals(1000, DemandFormula.level(2000, 0));
        assertEquals(2000, DemandFormula.level(2000, 52));
        assertEquals(500, DemandFormula.level(500, 52));
    }

    @Test
    void drawnPast_dependsOnSeedAndGroupAlone() {
        Demand demand = new Demand(Orders.past(3, 60, week -> 2), DemandShape.LEVEL);
        int[][] once = demand.drawn(7, 4).weeks(Demand.dice(7, 9), 0, 30);
        int[][] again = demand.drawn(7, 4).weeks(Demand.dice(7, 9), 0, 30);
        for (int week = 0; week < 30; week++) {
            assertArrayEquals(once[week], again[week]);
        }
        assertFalse(Arrays.deepEquals(once, demand.drawn(7, 5).weeks(Demand.dice(7, 9), 0, 30)));
    }

    /** Each week one piece as long as its number. */
    @SuppressWarnings({"unchecked", "rawtypes"})
    private static List<List<Length>>[] marked(int weeks) {
        List[] all = new List[weeks];
        for (int week = 0; week < weeks; week++) {
            all[week] = List.of(List.of(Length.ofMetres(week + 1)));
        }
        return all;
    }

    private static int seasons(int weeks, IntToDoubleFunction mean) {
        int seen = 0;
        for (int seed = 0; seed < PASTS; seed++) {
            seen += DemandShape.of(Orders.past(seed, weeks, mean)).season() ? 1 : 0;
        }
        return seen;
    }

    private static int trends(int weeks, IntToDoubleFunction mean) {
        int seen = 0;
        for (int seed = 0; seed < PASTS; seed++) {
            seen += DemandShape.of(Orders.past(seed, weeks, mean)).trend() ? 1 : 0;
        }
        return seen;
    }
}
