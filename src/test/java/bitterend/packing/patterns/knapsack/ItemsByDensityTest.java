package bitterend.packing.patterns.knapsack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The order of the items, and what is said of those from each place on. */
final class ItemsByDensityTest {
    private static final int CASES = 10 * Integer.getInteger("shops", 60);

    @Test
    void items_standDensestFirst_andOfEquallyDenseOnesInTheirOrder() {
        for (int seed = 0; seed < CASES; seed++) {
            Random random = new Random(seed);
            int items = 1 + random.nextInt(12);
            long[] load = random.longs(items, 1, 20).toArray();
            long[] price = random.longs(items, 0, 9).toArray();
            int[] demand = random.ints(items, 0, 4).toArray();
            ItemsByDensity order = ItemsByDensity.of(load, price, demand, 15);
            List<Integer> expected = IntStream.range(0, items)
                    .filter(i -> price[i] > 0 && demand[i] > 0 && load[i] <= 15)
                    .boxed()
                    .sorted((a, b) -> Long.compare(price[b] * load[a], price[a] * load[b]))
                    .toList();
            assertEquals(expected, Arrays.stream(order.item).boxed().toList(), "seed " + seed);
            assertEquals(expected.size(), order.size);
            for (int u = 0; u < order.size; u++) {
                int i = order.item[u];
                assertEquals(load[i], order.load[u]);
                assertEquals(price[i], order.worth[u]);
                assertEquals(Math.min(demand[i], 15 / load[i]), order.bound[u], "seed " + seed);
            }
        }
    }

    @Test
    void densities_areRoundedUp_andLeaveRoomForAFullRun() {
        for (int seed = 0; seed < CASES; seed++) {
            Random random = new Random(seed);
            int items = 1 + random.nextInt(8);
            long cap = random.nextLong(1L << 20, 1L << 46);
            long[] load = random.longs(items, cap / 500, cap).toArray();
            long[] price = random.longs(items, 1, 1L << random.nextInt(1, 50)).toArray();
            int[] demand = random.ints(items, 1, 9).toArray();
            ItemsByDensity order = ItemsByDensity.of(load, price, demand, cap);
            BigInteger densest = BigInteger.ZERO;
            long shortest = Long.MAX_VALUE;
            assertEquals(0, order.density[order.size]);
            assertEquals(Long.MAX_VALUE, order.shortest[order.size]);
            for (int u = order.size - 1; u >= 0; u--) {
                densest = densest.max(roundedUp(order.worth[u], order.shift, order.load[u]));
                shortest = Math.min(shortest, order.load[u]);
                assertEquals(densest.longValueExact(), order.density[u], "seed " + seed);
                assertEquals(shortest, order.shortest[u], "seed " + seed);
            }
            assertTrue(densest.multiply(BigInteger.valueOf(cap)).bitLength() < 63, "seed " + seed);
            assertTrue(order.shift > 0, "seed " + seed);
        }
    }

    private static BigInteger roundedUp(long price, int shift, long load) {
        BigInteger[] parts = BigInteger.valueOf(price).shiftLeft(shift).divideAndRemainder(BigInteger.valueOf(load));
        return parts[1].signum() > 0 ? parts[0].add(BigInteger.ONE) : parts[0];
    }

    @Test
    void veryManyItems_keepTheirOrder() {
        Random random = new Random(9);
        int items = 3_000;
        long[] load = random.longs(items, 1_000, 100_000).toArray();
        long[] price = random.longs(items, 1, 1L << 40).toArray();
        int[] demand = new int[items];
        Arrays.fill(demand, 1);
        ItemsByDensity order = ItemsByDensity.of(load, price, demand, 100_000);
        List<Integer> expected = IntStream.range(0, items)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -(double) price[i] / load[i]))
                .toList();
        assertEquals(expected, Arrays.stream(order.item).boxed().toList());
    }

    @Test
    void whatHasNoPrice_noDemand_orDoesNotFit_isLeftOut() {
        ItemsByDensity order = ItemsByDensity.of(
                new long[] {5, 5, 5, 11, 10}, new long[] {0, 3, 3, 9, 1}, new int[] {1, 0, 3, 1, 1}, 10);
        assertArrayEquals(new int[] {2, 4}, order.item);
        assertArrayEquals(new int[] {2, 1}, order.bound);
        assertEquals(0, ItemsByDensity.of(new long[] {5}, new long[] {1}, new int[] {1}, 4).size);
    }
}
