package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Branching on how many reels of a kind are used, to the end and broken off. */
final class BranchingOnReelCountsTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260800);

    @Test
    void bound_isAtMostTheOptimum_afterAnyNumberOfNodes() {
        int raised = 0;
        int counted = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            int found = raised(SEED + shop);
            raised += Math.max(0, found);
            counted += found < 0 ? 0 : 1;
        }
        assertTrue(counted > SHOPS / 4, "counted " + counted);
        assertTrue(raised > SHOPS / 16, "hardly any bound was raised: " + raised + " of " + counted);
    }

    /** Broken off while the side that was opened first is not the one whose bound is lowest. */
    @Test
    void lowestBound_isThatOfAllOpenSides_notOfTheOldest() {
        assertTrue(raised(20261169) >= 0);
    }

    /** Whether the bound was raised; below zero where nothing is counted. */
    private static int raised(long seed) {
        Random random = new Random(seed);
        BranchAndCutTest.Case one = new BranchAndCutTest.Case(seed, 8, 12);
        if (!one.usable() || !one.instance.counted()) {
            return -1;
        }
        Pricer pricer = new Pricer(one.instance);
        Master master = new Master(one.instance, pricer, Rejection.NEVER, one.start, 1);
        master.solve(Long.MAX_VALUE / 4, Integer.MAX_VALUE, false, Budget.endless());
        long root = one.instance.roundUp(master.bound().ceiling());
        Budget budget =
                random.nextBoolean() ? Budget.endless() : Budget.endless().part(random.nextInt(400_000));
        BranchingOnReelCounts counts =
                new BranchingOnReelCounts(one.instance, pricer, Rejection.NEVER, one.best, master, 1, budget);
        counts.run(random.nextInt(3) == 0 ? 1 + random.nextInt(6) : 300, root);
        assertTrue(one.best.bound() <= one.optimum, one.where + ": " + one.best.bound() + " above " + one.optimum);
        return one.best.bound() > root ? 1 : 0;
    }
}
