package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/** Lengths in groups: what is a plan of the groups is one of the items, and what bounds the groups bounds the items. */
final class GroupingTest {
    private static final int SHOPS = Math.max(60, Integer.getInteger("shops", 200) / 2);
    private static final long SEED = Long.getLong("shops.seed", 20260306);

    @Test
    void planOfTheLongestOfEachGroup_isAPlanOfTheItems() {
        int complete = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Instance instance = instance(SEED + shop);
            Grouping up = Grouping.up(instance, 3);
            Incumbent coarse = started(up.coarse());
            assertEquals(instance.pieces(), up.coarse().pieces());
            if (coarse.complete()) {
                Incumbent fine = new Incumbent(instance, progress -> {});
                assertTrue(fine.offer(up.inItems(coarse.plan())), "seed " + (SEED + shop));
                assertTrue(fine.complete(), "seed " + (SEED + shop));
                complete++;
            }
        }
        assertTrue(complete > SHOPS / 4, "hardly any plan was complete: " + complete);
    }

    @Test
    void boundOfTheShortestOfEachGroup_isNeverAboveTheOptimum() {
        int bounded = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Instance instance = instance(SEED + shop);
            Exhaustive.Optimum optimum = StateReferee.optimum(instance)
                    .filter(found -> found.weight() == 0)
                    .orElse(null);
            if (optimum != null && instance.types.length > 0) {
                Grouping down = Grouping.down(instance, 3);
                ColumnGeneration root = new ColumnGeneration(
                        down.coarse(), Rejection.NEVER, started(down.coarse()), Effort.ofWork(1_000_000), false);
                root.bound(Budget.endless().part(10_000_000));
                Bound bound = down.inItems(root.root());
                assertTrue(bound.ceiling() <= optimum.cost(), "seed " + (SEED + shop));
                bounded += bound.ceiling() > optimum.cost() / 2 ? 1 : 0;
            }
        }
        assertTrue(bounded > SHOPS / 4, "hardly any bound says anything: " + bounded);
    }

    /** Pieces of more than a quarter of a reel: the rope alone bounds them badly, first fit packs them badly. */
    @Test
    void manyLengths_areBoundedAndPackedWithinAHundredth() {
        List<Long> lengths = LongStream.rangeClosed(1, 600)
                .mapToObj(step -> 2_600 + step * 5)
                .toList();
        PatternProblem problem = new PatternProblem(
                Collections.nCopies(600, Item.must(1)),
                List.of(ReelKind.whole(10_000, 1, ReelKind.UNLIMITED, lengths)));
        PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(300_000_000));
        PlanReferee.check(problem, plan);
        assertTrue(DualProofReferee.bound(problem, plan.root()) >= plan.root().bound());
        assertTrue(
                plan.root().bound() > 247,
                "no better than the rope alone: " + plan.root().bound());
        assertTrue(plan.cost() - plan.bound() <= plan.cost() / 100, plan.cost() + " against " + plan.bound());
    }

    private static Instance instance(long seed) {
        return new Normaliser(TreeShops.all(new Random(seed), 8, 12)).instance();
    }

    private static Incumbent started(Instance instance) {
        Incumbent best = new Incumbent(instance, progress -> {});
        new InitialPlans(instance, best, 1, Budget.endless()).run(2);
        return best;
    }
}
