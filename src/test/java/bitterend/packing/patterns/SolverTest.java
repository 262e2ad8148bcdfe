package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The order of things: what each step leaves behind, and that no step outlives its budget. */
final class SolverTest {
    private static final int SHOPS = Integer.getInteger("shops", 60);

    @Test
    void bound_isNeverBelowWhatTheRootProves() {
        for (int seed = 0; seed < SHOPS; seed++) {
            PatternProblem problem = RandomShops.problem(new Random(seed), 1);
            PatternPlan plan = PatternPacker.withoutShortcut(problem, Effort.ofWork(200_000));
            PlanReferee.check(problem, plan);
            assertTrue(plan.root().bound() <= plan.bound(), "seed " + seed);
            assertTrue(plan.weightRoot().bound() <= plan.weightBound(), "seed " + seed);
        }
    }

    @Test
    void moreLengthsThanTheProgramHasRowsFor_areBoundedInGroups() {
        List<Item> items = new ArrayList<>();
        List<Long> lengths = new ArrayList<>();
        for (int i = 0; i < 520; i++) {
            items.add(Item.must(1));
            lengths.add(34_000L + 28L * i);
        }
        PatternProblem problem =
                new PatternProblem(items, List.of(ReelKind.whole(100_000, 1, ReelKind.UNLIMITED, lengths)));
        PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(3_000_000));
        PlanReferee.check(problem, plan);
        assertEquals(260, plan.cost());
        assertTrue(plan.proven(), "bound " + plan.bound());
        assertEquals(260, plan.root().bound());
        assertTrue(plan.work() < 3_000_000, "work " + plan.work());
    }

    @Test
    void aSolverWithNothingToCutFrom_leavesAllOut_andProvesIt() {
        PatternProblem problem = new PatternProblem(List.of(new Item(3, 2), Item.must(1)), List.of());
        PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(1_000));
        assertEquals(List.of(3, 1), plan.unplanned());
        assertEquals(6 + 7, plan.unplannedWeight());
        assertTrue(plan.proven());
        assertEquals(0, plan.cost());
    }

    @Test
    void effortOfNothing_stillGivesAPlan() {
        PatternProblem problem = PatternProblem.oneLength(10, List.of(6L, 5L, 4L, 3L), List.of(2, 2, 2, 2));
        PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(0));
        PlanReferee.check(problem, plan);
        assertTrue(plan.complete());
    }

    @Test
    void quickEffort_isSpentWithinReason() {
        for (int seed = 0; seed < 10; seed++) {
            PatternProblem problem = TreeShops.problem(new Random(seed), 20, 40);
            PatternPlan plan = PatternPacker.pack(problem, Effort.quick());
            PlanReferee.check(problem, plan);
            assertTrue(plan.work() < 8_000_000, "seed " + seed + ": " + plan.work());
        }
    }

    /** Reels of 10 for 7, 6, 6, 5 and 4: only 6 and 4 go together. */
    @Test
    void oneReelLess_isDeniedInTheLengthsOfTheProblem_andChargedForItsLook() {
        for (long step : new long[] {1, 7}) {
            Instance instance = new Normaliser(PatternProblem.oneLength(
                            10 * step + step / 2, List.of(7 * step, 6 * step, 5 * step, 4 * step), List.of(1, 2, 1, 1)))
                    .instance();
            Incumbent best = new Incumbent(instance, progress -> {});
            new InitialPlans(instance, best, 1, Budget.endless()).run(4);
            assertEquals(4, best.cost());
            best.raise(3, Rejection.NEVER);
            OneReelLess less = new OneReelLess(instance, best);
            assertTrue(less.isLeft());
            Budget budget = Budget.endless().part(1L << 40);
            less.begin(budget);
            assertTrue(budget.spent() > 0);
            less.run(budget);
            assertEquals(4, best.bound());
            assertEquals(3, best.denial().orElseThrow().reels());
            assertEquals(7 * step, best.denial().orElseThrow().lines().get(0).size());
            assertTrue(!less.isLeft());
        }
    }
}
