package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.linear.Budget;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

final class RandomShopsTest {
    private static final int SHOPS = Integer.getInteger("shops", 200);
    private static final long SEED = Long.getLong("shops.seed", 20260101);

    @Test
    void bound_isAtMostTheOptimum_whichIsAtMostTheCost() {
        int proven = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            long seed = SEED + shop;
            PatternProblem problem = RandomShops.problem(new Random(seed), 1);
            PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(1_000_000));
            String where = "seed " + seed + " " + problem + "\n" + plan;
            PlanReferee.check(problem, plan);
            Exhaustive.Optimum optimum = new Exhaustive(problem).optimum();
            assertTrue(plan.weightBound() <= optimum.weight(), where);
            assertTrue(optimum.weight() <= plan.unplannedWeight(), where);
            if (plan.unplannedWeight() == optimum.weight()) {
                assertTrue(plan.bound() <= optimum.cost(), () -> where + "\n" + optimum);
                assertTrue(optimum.cost() <= plan.cost(), where);
            }
            proven += plan.proven() ? 1 : 0;
        }
        assertTrue(proven >= SHOPS * 8 / 10, "proven " + proven + " of " + SHOPS);
    }

    @Test
    void certificates_provePlainlyWhatTheyClaim() {
        for (int shop = 0; shop < SHOPS; shop++) {
            long seed = SEED + shop;
            PatternProblem problem = RandomShops.problem(new Random(seed), 1);
            PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(300_000));
            long step = new Normaliser(problem).task().step;
            long worked = CertificateReferee.bound(problem, plan.root());
            assertEquals(plan.root().bound(), (worked + step - 1) / step * step, "seed " + seed + " " + problem);
            assertEquals(
                    plan.weightRoot().bound(),
                    CertificateReferee.weightBound(problem, plan.weightRoot()),
                    "seed " + seed + " " + problem);
        }
    }

    @Test
    void anyWholeDuals_proveNoMoreThanTheOptimum() {
        for (int shop = 0; shop < SHOPS; shop++) {
            long seed = SEED + shop;
            Random random = new Random(seed);
            PatternProblem problem = RandomShops.problem(random, 1);
            Exhaustive.Optimum optimum = new Exhaustive(problem).optimum();
            Task task = new Normaliser(problem).task();
            for (int round = 0; round < 5; round++) {
                assertNoMore(task, optimum, random, "seed " + seed + " " + problem);
            }
        }
    }

    private static void assertNoMore(Task task, Exhaustive.Optimum optimum, Random random, String where) {
        long[] price = new long[task.items];
        for (int i = 0; i < price.length; i++) {
            price[i] = random.nextInt(60);
        }
        long scale = 1L + random.nextInt(3);
        int[] supply = new int[task.kinds.length];
        for (Kind kind : task.kinds) {
            supply[kind.index] = kind.supply;
        }
        long[] need = random.longs(supply.length, -50, 50).toArray();
        Pricer.Offers offers = new Pricer(task).price(price, scale, task.demand, need, false, Budget.endless());
        Leaving leaving = Leaving.limited(optimum.weight());
        Optional<Bound> bound = new SafeBound(task, leaving)
                .of(scale, price, random.nextInt(20), offers.net, task.demand, new int[supply.length], supply);
        assertTrue(bound.isEmpty() || bound.get().ceiling() <= optimum.cost(), where);
    }

    @Test
    void aThousandTimesLonger_isAThousandTimesTheCost() {
        for (int shop = 0; shop < SHOPS / 4; shop++) {
            long seed = SEED + shop;
            PatternPlan small = PatternPacker.pack(RandomShops.problem(new Random(seed), 1), Effort.ofWork(3_000_000));
            PatternProblem large = RandomShops.problem(new Random(seed), 1_000);
            PatternPlan plan = PatternPacker.pack(large, Effort.ofWork(3_000_000));
            PlanReferee.check(large, plan);
            assertEquals(small.unplannedWeight(), plan.unplannedWeight(), "seed " + seed);
        }
    }

    @Test
    void cancelledAtAnyMoment_leavesASoundPlanAndBound() {
        for (int shop = 0; shop < SHOPS; shop++) {
            long seed = SEED + shop;
            Random random = new Random(seed);
            PatternProblem problem = RandomShops.problem(random, 1);
            AtomicInteger asked = new AtomicInteger();
            int patience = random.nextInt(12);
            Effort effort = Effort.ofWork(2_000_000).withCancel(() -> asked.incrementAndGet() > patience);
            PatternPlan plan = PatternPacker.pack(problem, effort);
            PlanReferee.check(problem, plan);
            Exhaustive.Optimum optimum = new Exhaustive(problem).optimum();
            assertTrue(plan.weightBound() <= optimum.weight(), "seed " + seed);
            if (plan.unplannedWeight() == optimum.weight()) {
                assertTrue(plan.bound() <= optimum.cost(), "seed " + seed);
            }
        }
    }

    @Test
    void sameSeedAndWork_giveTheSamePlan() {
        for (int shop = 0; shop < SHOPS / 4; shop++) {
            PatternProblem problem = RandomShops.problem(new Random(SEED + shop), 1);
            List<Draw> once =
                    PatternPacker.pack(problem, Effort.ofWork(500_000)).draws();
            assertEquals(
                    once, PatternPacker.pack(problem, Effort.ofWork(500_000)).draws());
        }
    }
}
