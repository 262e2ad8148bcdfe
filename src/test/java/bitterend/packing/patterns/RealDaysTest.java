package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Days of an invented loft, by number of pieces. */
final class RealDaysTest {
    @Test
    void day_ofAHundredPieces_isWithinAThirdOfAPercentOfItsBound() {
        for (int seed = 0; seed < 4; seed++) {
            PatternProblem problem = RandomDays.day(seed, 100, 15, 1_500, 40_000, 3_000);
            PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(60_000_000));
            PlanReferee.check(problem, plan);
            assertTrue(plan.complete());
            assertTrue((plan.cost() - plan.bound()) * 300 <= plan.cost(), () -> plan.bound() + " " + plan.cost());
        }
    }

    @Test
    void quickPacking_isSoundAndWithinTwoPercent() {
        for (int seed = 0; seed < 20; seed++) {
            PatternProblem problem = RandomDays.day(seed, 40, 4, 1_500, 30_000, 3_000);
            PatternPlan plan = PatternPacker.pack(problem, Effort.quick());
            PlanReferee.check(problem, plan);
            assertTrue(plan.complete());
            assertTrue((plan.cost() - plan.bound()) * 50 <= plan.cost(), () -> plan.bound() + " " + plan.cost());
        }
    }

    @Test
    void tenThousandPieces_haveAPlanAndABoundCloseToIt() {
        PatternProblem problem = RandomDays.day(1, 10_000, 60, 1_500, 40_000, 3_000);
        PatternPlan plan = PatternPacker.pack(problem, Effort.ofWork(100_000_000));
        PlanReferee.check(problem, plan);
        assertEquals(0, plan.unplannedWeight());
        assertTrue((plan.cost() - plan.bound()) * 200 <= plan.cost(), () -> plan.bound() + " " + plan.cost());
    }
}
