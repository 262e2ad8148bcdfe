package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
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
            long step = new Normaliser(problem).instance().step;
            long worked = DualProofReferee.bound(problem, plan.root());
            assertEquals(plan.root().bound(), (worked + step - 1) / step * step, "seed " + seed + " " + problem);
            assertEquals(
                    plan.weightRoot().bound(),
                    DualProofReferee.weightBound(problem, plan.weightRoot()),
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
            Instance instance = new Normaliser(problem).instance();
            for (int round = 0; round < 5; round++) {
                assertNoMore(instance, optimum, random, "seed " + seed + " " + problem);
            }
        }
    }

    private static void assertNoMore(Instance instance, Exhaustive.Optimum optimum, Random random, String where) {
        long[] price = new long[instance.items];
        for (int i = 0; i < price.length; i++) {
            price[i] = random.nextInt(60);
        }
        long scale = 1L + random.nextInt(3);
        int[] supply = new int[instance.types.length];
        for (ReelType type : instance.types) {
            supply[type.index] = type.supply;
        }
        long[] need = random.longs(supply.length, -50, 50).toArray();
        Pricer.Offers offers = new Pricer(instance).price(price, scale, instance.demand, need, false, Budget.endless());
        Rejection rejection = Rejection.limited(optimum.weight());
        Optional<Bound> bound = new SafeBound(instance, rejection)
                .of(
                        scale,
                        price,
                        random.nextInt(20),
                        offers.reducedProfit,
                        instance.demand,
                        new int[supply.length],
                        supply);
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
    void oneLengthWithoutLimit_isProvenBesideAPieceThatFitsNowhere() {
        for (int seed = 0; seed < 5; seed++) {
            Random random = new Random(seed);
            List<Item> items = new ArrayList<>(List.of(new Item(1, 1)));
            List<Long> lengths = new ArrayList<>(List.of(1001L));
            for (int i = 0; i < 20; i++) {
                items.add(new Item(1 + random.nextInt(5), 1));
                lengths.add(100L + random.nextInt(400));
            }
            ReelKind reel = ReelKind.whole(1000, 1, ReelKind.UNLIMITED, lengths);
            PatternProblem problem = new PatternProblem(items, List.of(reel));
            PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(10_000_000));
            PlanReferee.check(problem, plan);
            assertEquals(1, plan.unplannedWeight(), "seed " + seed);
            assertTrue(plan.proven(), "seed " + seed + ": " + plan.bound() + " for " + plan.cost());
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
