package bitterend.packing.patterns.knapsack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The best way to draw from one run: depth first, and by all loads, beside every way there is. */
final class KnapsackTest {
    private static final int RUNS = 20 * Integer.getInteger("shops", 60);

    @Test
    void search_findsTheBestWay_andNamesIt() {
        for (int seed = 0; seed < RUNS; seed++) {
            SmallRuns small = SmallRuns.any(new Random(seed));
            Knapsack knapsack = knapsack(small, Long.MAX_VALUE);
            assertTrue(knapsack.search(0), "seed " + seed);
            long best = small.best(0, 0, 0);
            assertEquals(best, knapsack.best(), "seed " + seed);
            assertEquals(best > 0, knapsack.found(), "seed " + seed);
            if (best > 0) {
                isSound(small, knapsack.items(), knapsack.counts(), best, "seed " + seed);
            }
        }
    }

    @Test
    void search_findsNothingThatDoesNotBeatTheFloor() {
        for (int seed = 0; seed < RUNS; seed++) {
            SmallRuns small = SmallRuns.any(new Random(seed));
            long best = small.best(0, 0, 0);
            Knapsack above = knapsack(small, Long.MAX_VALUE);
            assertTrue(above.search(best), "seed " + seed);
            assertFalse(above.found(), "seed " + seed);
            assertEquals(best, above.best(), "seed " + seed);
            assertEquals(0, above.items().length + above.counts().length, "seed " + seed);
        }
    }

    @Test
    void search_givesUpAfterSoManyNodes_withASoundWay() {
        int givenUp = 0;
        for (int seed = 0; seed < RUNS; seed++) {
            Random random = new Random(seed);
            SmallRuns small = SmallRuns.any(random);
            int most = random.nextInt(6);
            Knapsack knapsack = knapsack(small, most);
            boolean complete = knapsack.search(0);
            assertTrue(complete ? knapsack.nodes() <= most : knapsack.nodes() == most + 1, "seed " + seed);
            assertTrue(!complete || knapsack.best() == small.best(0, 0, 0), "seed " + seed);
            if (knapsack.found()) {
                isSound(small, knapsack.items(), knapsack.counts(), knapsack.best(), "seed " + seed);
            }
            givenUp += complete ? 0 : 1;
        }
        assertTrue(givenUp > RUNS / 20, "given up " + givenUp);
    }

    private static Knapsack knapsack(SmallRuns small, long most) {
        KnapsackBound bound = new KnapsackBound(small.order, small.run, Hull.of(small.run), small.scale);
        return new Knapsack(small.order, small.run, bound, small.scale, most);
    }

    private static void isSound(SmallRuns small, int[] items, int[] counts, long best, String where) {
        long load = 0;
        long worth = 0;
        assertEquals(items.length, counts.length, where);
        for (int t = 0; t < items.length; t++) {
            assertTrue(counts[t] > 0 && counts[t] <= small.demand[items[t]], where);
            load += counts[t] * small.load[items[t]];
            worth += counts[t] * small.price[items[t]];
        }
        assertTrue(load <= small.run.cap, where);
        assertEquals(best, worth - small.scale * small.run.drop(load), where);
    }

    @Test
    void table_holdsEveryLoadThatNoShorterOneOutdoes() {
        for (int seed = 0; seed < RUNS; seed++) {
            SmallRuns small = SmallRuns.any(new Random(seed));
            KnapsackTable table = new KnapsackTable(small.order, small.run.cap, 100_000);
            assertTrue(table.build((next, load, worth) -> false, Budget.endless()), "seed " + seed);
            long[] most = mostWithin(small);
            int state = 0;
            for (int cap = 0; cap < most.length; cap++) {
                if (cap == 0 || most[cap] > most[cap - 1]) {
                    assertEquals(cap, table.load(state), "seed " + seed);
                    assertEquals(most[cap], table.worth(state), "seed " + seed);
                    traced(small, table, state, "seed " + seed);
                    state++;
                }
            }
            assertEquals(state, table.states(), "seed " + seed);
        }
    }

    /** The highest worth within each load, piece after piece. */
    private static long[] mostWithin(SmallRuns small) {
        long[] most = new long[(int) small.run.cap + 1];
        for (int i = 0; i < small.load.length; i++) {
            for (int piece = 0; piece < small.demand[i]; piece++) {
                for (int load = most.length - 1; load >= small.load[i]; load--) {
                    most[load] = Math.max(most[load], most[load - (int) small.load[i]] + small.price[i]);
                }
            }
        }
        return most;
    }

    private static void traced(SmallRuns small, KnapsackTable table, int state, String where) {
        int[] counts = new int[small.load.length];
        table.trace(state, counts);
        long load = 0;
        long worth = 0;
        for (int i = 0; i < counts.length; i++) {
            assertTrue(counts[i] <= small.demand[i], where);
            load += counts[i] * small.load[i];
            worth += counts[i] * small.price[i];
        }
        assertEquals(table.load(state), load, where);
        assertEquals(table.worth(state), worth, where);
    }

    @Test
    void table_withoutHopelessStates_stillHoldsTheBest() {
        for (int seed = 0; seed < RUNS; seed++) {
            SmallRuns small = SmallRuns.any(new Random(seed));
            KnapsackBound bound = new KnapsackBound(small.order, small.run, Hull.of(small.run), small.scale);
            long best = small.best(0, 0, 0);
            KnapsackTable table = new KnapsackTable(small.order, small.run.cap, 100_000);
            assertTrue(table.build((next, load, worth) -> bound.from(next, load, worth) < best, Budget.endless()));
            long found = Long.MIN_VALUE;
            for (int s = 0; s < table.states(); s++) {
                found = Math.max(found, table.worth(s) - small.scale * small.run.drop(table.load(s)));
            }
            assertEquals(best, found, "seed " + seed);
        }
    }

    @Test
    void table_growsBeyondItsFirstRoom() {
        long[] load = new long[13];
        long[] price = new long[13];
        int[] demand = new int[13];
        for (int i = 0; i < load.length; i++) {
            load[i] = 1L << i;
            price[i] = 1L << i;
            demand[i] = 1;
        }
        ItemsByDensity order = ItemsByDensity.of(load, price, demand, 6_000);
        KnapsackTable table = new KnapsackTable(order, 6_000, 10_000);
        assertTrue(table.build((next, drawn, worth) -> false, Budget.endless()));
        assertEquals(6_001, table.states());
        int[] counts = new int[13];
        table.trace(5_000, counts);
        assertArrayEquals(new int[] {0, 0, 0, 1, 0, 0, 0, 1, 1, 1, 0, 0, 1}, counts);
        assertFalse(new KnapsackTable(order, 6_000, 6_000).build((next, drawn, worth) -> false, Budget.endless()));
        assertTrue(new KnapsackTable(order, 6_000, 6_001).build((next, drawn, worth) -> false, Budget.endless()));
        Budget little = Budget.endless().part(20_000);
        assertFalse(
                new KnapsackTable(order, 6_000, 10_000).build((next, drawn, worth) -> false, little) && little.over());
    }

    @Test
    void sharedList_isMadeOnce_whereItIsOfUse() {
        ItemsByDensity order = ItemsByDensity.of(new long[] {3, 2}, new long[] {3, 2}, new int[] {1, 1}, 5);
        SharedStates shared = new SharedStates(true, order, 5, Budget.endless());
        assertFalse(shared.tried());
        KnapsackTable list = shared.list();
        assertNotNull(list);
        assertTrue(shared.tried());
        assertEquals(4, list.states());
        assertSame(list, shared.list());
        SharedStates useless = new SharedStates(false, order, 5, Budget.endless());
        assertNull(useless.list());
        assertFalse(useless.tried());
    }

    @Test
    void sharedList_thatIsNotMadeInTime_isNone() {
        ItemsByDensity order = ItemsByDensity.of(new long[] {3, 2}, new long[] {3, 2}, new int[] {1, 1}, 5);
        Budget nothing = Budget.endless().part(0);
        nothing.spend(1 << 20);
        SharedStates late = new SharedStates(true, order, 5, nothing);
        assertNull(late.list());
        assertTrue(late.tried());
    }

    @Test
    void solution_namesWhatIsTaken_andIsNothingWhereNothingIs() {
        RunSolution some = RunSolution.of(7, new int[] {0, 2, 0, 1});
        assertArrayEquals(new int[] {1, 3}, some.items());
        assertArrayEquals(new int[] {2, 1}, some.counts());
        assertEquals(7, some.reducedProfit());
        assertTrue(some.found());
        RunSolution none = RunSolution.none(-4);
        assertEquals(-4, none.reducedProfit());
        assertFalse(none.found());
        assertEquals(0, none.items().length + none.counts().length);
        assertFalse(RunSolution.of(0, new int[] {0, 0}).found());
    }

    @Test
    void run_losesWhatIsNoLongerWorthAnything() {
        ValuedRun run = new ValuedRun(10, 12, 3, left -> 2 * left);
        assertEquals(20, run.full);
        assertEquals(0, run.drop(0));
        assertEquals(8, run.drop(4));
        assertEquals(20, run.drop(12));
        assertFalse(run.flat());
        ValuedRun flat = new ValuedRun(10, 12, 3, left -> 0);
        assertTrue(flat.flat());
        assertEquals(0, flat.drop(4));
    }
}
