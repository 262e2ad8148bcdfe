package bitterend.packing.patterns.knapsack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a flat run still brings, exactly. */
final class RoomTableTest {
    @Test
    void from_isTheBestWayToGoOn() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            int step = 1 + random.nextInt(3);
            int items = 1 + random.nextInt(5);
            long[] load = new long[items];
            long[] price = new long[items];
            int[] demand = new int[items];
            for (int i = 0; i < items; i++) {
                load[i] = (long) step * (1 + random.nextInt(12));
                price[i] = 1L + random.nextInt(50);
                demand[i] = 1 + random.nextInt(5);
            }
            long cap = (long) step * (12 + random.nextInt(30));
            ValuedRun run = new ValuedRun(cap, cap, 0, left -> 0);
            ItemsByDensity order = ItemsByDensity.of(load, price, demand, cap);
            RoomTable table = RoomTable.of(order, run, Budget.endless()).orElseThrow();
            for (int u = 0; u <= order.size; u++) {
                long drawn = (long) step * random.nextInt((int) (cap / step) + 1);
                assertEquals(7 + best(order, u, cap - drawn), table.from(u, drawn, 7), "seed " + seed);
            }
        }
    }

    private static long best(ItemsByDensity order, int u, long room) {
        if (u == order.size) {
            return 0;
        }
        long best = 0;
        for (int copies = 0; copies <= order.bound[u] && copies * order.load[u] <= room; copies++) {
            best = Math.max(best, copies * order.worth[u] + best(order, u + 1, room - copies * order.load[u]));
        }
        return best;
    }

    @Test
    void aRunOfWorth_orTooFinelyDivided_hasNone() {
        ItemsByDensity order = ItemsByDensity.of(new long[] {7, 1}, new long[] {1, 1}, new int[] {1, 1}, 100_000_000);
        assertTrue(RoomTable.of(order, new ValuedRun(100, 100, 0, left -> left), Budget.endless())
                .isEmpty());
        assertTrue(RoomTable.of(order, new ValuedRun(100_000_000, 100_000_000, 0, left -> 0), Budget.endless())
                .isEmpty());
    }

    @Test
    void aBudgetThatATableWouldEatUp_isLeftToTheSearch() {
        ItemsByDensity order = ItemsByDensity.of(new long[] {7, 1}, new long[] {1, 1}, new int[] {1, 1}, 2000);
        ValuedRun run = new ValuedRun(2000, 2000, 0, left -> 0);
        Budget little = Budget.endless().part(2000);
        assertTrue(RoomTable.of(order, run, little).isEmpty());
        assertEquals(0, little.spent());
        assertTrue(RoomTable.of(order, run, Budget.endless().part(8000)).isPresent());
    }
}
