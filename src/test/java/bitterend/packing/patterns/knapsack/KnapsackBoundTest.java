package bitterend.packing.patterns.knapsack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What can still be reached from a load, beside every way to go on and beside the hull worked out in fractions. */
final class KnapsackBoundTest {
    private static final int RUNS = 20 * Integer.getInteger("shops", 60);

    @Test
    void bound_isNeverBelowAnyWayToGoOn() {
        for (int seed = 0; seed < RUNS; seed++) {
            SmallRuns small = SmallRuns.any(new Random(seed));
            KnapsackBound bound = bound(small, Hull.of(small.run));
            for (int u = 0; u <= small.order.size; u++) {
                for (long drawn = 0; drawn <= small.run.cap; drawn++) {
                    String where = "seed " + seed + " from " + u + " at " + drawn;
                    assertTrue(bound.from(u, drawn, 13) >= small.best(u, drawn, 13), where);
                }
            }
        }
    }

    @Test
    void bound_isWhatTheHullAndTheDensestItemLeft_giveInFractions() {
        for (int seed = 0; seed < RUNS; seed++) {
            SmallRuns small = SmallRuns.any(new Random(seed));
            Hull hull = Hull.of(small.run);
            KnapsackBound bound = bound(small, hull);
            for (int u = 0; u <= small.order.size; u++) {
                for (long drawn = 0; drawn <= small.run.cap; drawn++) {
                    double exact = 7 + inFractions(small, hull, u, drawn);
                    long found = bound.from(u, drawn, 7);
                    String where = "seed " + seed + " from " + u + " at " + drawn + ": " + found + " for " + exact;
                    assertTrue(found >= Math.floor(exact - 1e-6), where);
                    assertTrue(found <= exact + 1 + small.run.cap, where);
                }
            }
        }
    }

    /** Filling pays up to the load where the hull is steeper than the densest item left. */
    private static double inFractions(SmallRuns small, Hull hull, int u, long drawn) {
        double density = 0;
        for (int v = u; v < small.order.size; v++) {
            density = Math.max(density, (double) small.order.worth[v] / small.order.load[v]);
        }
        double best = -small.scale * HullTest.at(hull, drawn);
        for (int corner = 0; corner < hull.load.length; corner++) {
            if (hull.load[corner] >= drawn) {
                best = Math.max(best, density * (hull.load[corner] - drawn) - small.scale * (double) hull.drop[corner]);
            }
        }
        return best;
    }

    private static KnapsackBound bound(SmallRuns small, Hull hull) {
        return new KnapsackBound(small.order, small.run, hull, small.scale);
    }

    @Test
    void aCurveThatIsFarTooSteep_isNeverFilled() {
        ValuedRun run = new ValuedRun(4, 4, 0, left -> left << 44);
        ItemsByDensity order = ItemsByDensity.of(new long[] {1}, new long[] {1}, new int[] {4}, 4);
        KnapsackBound bound = new KnapsackBound(order, run, Hull.of(run), 1);
        for (long drawn = 0; drawn <= 4; drawn++) {
            assertEquals(5 - (drawn << 44), bound.from(0, drawn, 5));
        }
    }

    /** Steeper than fits the scale of the densities by a little only: the loss is not taken for more than it is. */
    @Test
    void aCurveThatIsALittleTooSteep_losesNoMoreThanItDoes() {
        ValuedRun run = new ValuedRun(24, 24, 0, left -> 12 * left);
        ItemsByDensity order = ItemsByDensity.of(new long[] {24}, new long[] {1}, new int[] {1}, 24);
        KnapsackBound bound = new KnapsackBound(order, run, Hull.of(run), 1);
        for (long drawn = 0; drawn <= 24; drawn++) {
            assertEquals(-12 * drawn, bound.from(1, drawn, 0));
        }
    }

    @Test
    void longLoadsAndHighPrices_areBoundedAsInBigNumbers() {
        Random random = new Random(3);
        for (int n = 0; n < RUNS; n++) {
            long cap = random.nextLong(1L << 30, 1L << 46);
            long load = random.nextLong(cap / 1000, cap);
            long price = random.nextLong(1, 1L << 48);
            ItemsByDensity order = ItemsByDensity.of(new long[] {load}, new long[] {price}, new int[] {2_000}, cap);
            ValuedRun run = new ValuedRun(cap, cap, 0, left -> 0);
            long drawn = random.nextLong(cap);
            long exact = BigInteger.valueOf(cap - drawn)
                    .multiply(BigInteger.valueOf(price))
                    .divide(BigInteger.valueOf(load))
                    .longValueExact();
            long found = new KnapsackBound(order, run, Hull.of(run), 1).from(0, drawn, 0);
            assertTrue(found >= exact, cap + " " + load + " " + price);
            assertTrue(found <= exact + 1 + (cap >> order.shift), cap + " " + load + " " + price);
        }
    }
}
