package bitterend.packing.patterns.knapsack;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** The largest convex function below what a run loses. */
final class HullTest {
    private static final int RUNS = 5 * Integer.getInteger("shops", 60);

    /** What the hull says of a load, between its corners in proportion. */
    static double at(Hull hull, long load) {
        int s = 0;
        while (s + 1 < hull.load.length && hull.load[s + 1] < load) {
            s++;
        }
        if (s + 1 == hull.load.length) {
            return hull.drop[s];
        }
        double part = (double) (load - hull.load[s]) / (hull.load[s + 1] - hull.load[s]);
        return hull.drop[s] + part * (hull.drop[s + 1] - hull.drop[s]);
    }

    @Test
    void hull_hasItsCornersOnTheCurve_bendsUpwards_andNoLoadLosesLess() {
        for (int seed = 0; seed < RUNS; seed++) {
            Random random = new Random(seed);
            int length = 1 + random.nextInt(60);
            long[] value = SmallRuns.rising(random, length);
            ValuedRun run = new ValuedRun(length, length + random.nextInt(4), 0, left -> value[(int) left]);
            Hull hull = Hull.of(run);
            ends(hull, run, seed);
            for (int s = 0; s < hull.load.length; s++) {
                assertEquals(run.drop(hull.load[s]), hull.drop[s], "seed " + seed);
            }
            isBelow(hull, run, seed);
        }
    }

    @Test
    void longRun_isSampledFromBelow_andFollowsABendingCurveClosely() {
        for (int seed = 0; seed < 10; seed++) {
            Random random = new Random(seed);
            long length = 2_000L + random.nextInt(30_000);
            long full = Math.round(40 * Math.sqrt((double) length));
            ValuedRun run = new ValuedRun(length, length + 7, 0, left -> Math.round(40 * Math.sqrt((double) left)));
            Hull hull = Hull.of(run);
            ends(hull, run, seed);
            isBelow(hull, run, seed);
            long width = run.cap / 2048 + 1;
            for (long load = width; load < length; load++) {
                assertTrue(at(hull, load) >= run.drop(load - width) - 2, "seed " + seed + " at " + load);
            }
            assertEquals(full, hull.drop[hull.drop.length - 1], "seed " + seed);
        }
    }

    private static void ends(Hull hull, ValuedRun run, int seed) {
        assertEquals(0, hull.load[0], "seed " + seed);
        assertEquals(0, hull.drop[0], "seed " + seed);
        assertEquals(run.cap, hull.load[hull.load.length - 1], "seed " + seed);
        for (int s = 2; s < hull.load.length; s++) {
            long before = (hull.drop[s - 1] - hull.drop[s - 2]) * (hull.load[s] - hull.load[s - 1]);
            long behind = (hull.drop[s] - hull.drop[s - 1]) * (hull.load[s - 1] - hull.load[s - 2]);
            assertTrue(before < behind, "seed " + seed + " at corner " + s);
        }
    }

    private static void isBelow(Hull hull, ValuedRun run, int seed) {
        for (long load = 0; load <= run.cap; load++) {
            assertTrue(at(hull, load) <= run.drop(load) + 1e-9, "seed " + seed + " at " + load);
        }
    }

    @Test
    void corners_ofACurveByHand() {
        long[] value = {0, 5, 7, 8, 8};
        Hull hull = Hull.of(new ValuedRun(4, 4, 0, left -> value[(int) left]));
        assertArrayEquals(new long[] {0, 1, 2, 3, 4}, hull.load);
        assertArrayEquals(new long[] {0, 0, 1, 3, 8}, hull.drop);
        Hull straight = Hull.of(new ValuedRun(4, 5, 0, left -> 3 * left));
        assertArrayEquals(new long[] {0, 5}, straight.load);
        assertArrayEquals(new long[] {0, 12}, straight.drop);
    }

    @Test
    void hullOfARun_isWorkedOutOnce() {
        Hulls hulls = new Hulls();
        ValuedRun run = new ValuedRun(4, 5, 0, left -> left);
        assertSame(hulls.of(run), hulls.of(run));
        assertArrayEquals(new long[] {0, 5}, hulls.of(run).load);
    }
}
