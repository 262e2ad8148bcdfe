package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The whole search above the root, the shortcut for small problems switched off and used as the referee. */
final class SearchTreeTest {
    private static final int SHOPS = Math.max(40, Integer.getInteger("shops", 200) / 4);
    private static final long SEED = Long.getLong("shops.seed", 20260370);

    @Test
    void bound_isAtMostTheOptimum_howeverLongItSearches() {
        int above = 0;
        int proven = 0;
        int compared = 0;
        for (int shop = 0; shop < SHOPS; shop++) {
            Random random = new Random(SEED + shop);
            PatternProblem problem = TreeShops.problem(random, 8, 14);
            Optional<Exhaustive.Optimum> found = StateReferee.optimum(new Normaliser(problem).instance());
            if (found.isEmpty()) {
                continue;
            }
            Exhaustive.Optimum optimum = found.get();
            PatternPlan plan = PatternPacker.withoutShortcut(problem, Effort.ofWork(100_000L << random.nextInt(6)));
            String where = "seed " + (SEED + shop) + " " + problem + "\n" + plan + "\n" + optimum;
            PlanReferee.check(problem, plan);
            assertTrue(plan.weightBound() <= optimum.weight(), where);
            assertTrue(optimum.weight() <= plan.unplannedWeight(), where);
            if (plan.unplannedWeight() == optimum.weight()) {
                assertTrue(plan.bound() <= optimum.cost(), where);
                assertTrue(optimum.cost() <= plan.cost(), where);
                compared++;
            }
            above += plan.boundByBranching() ? 1 : 0;
            proven += plan.proven() ? 1 : 0;
        }
        assertTrue(above > SHOPS / 8, "hardly any bound was raised above the root: " + above + " of " + SHOPS);
        assertTrue(proven > SHOPS / 2, "proven " + proven + " of " + SHOPS);
        assertTrue(compared > SHOPS / 2, "compared " + compared + " of " + SHOPS);
    }

    @Test
    void referee_isRightItself() {
        for (int shop = 0; shop < SHOPS; shop++) {
            PatternProblem problem = TreeShops.problem(new Random(SEED + shop), 4, 7);
            assertEquals(
                    new Exhaustive(problem).optimum(),
                    StateReferee.optimum(new Normaliser(problem).instance()).orElseThrow(),
                    "seed " + (SEED + shop) + " " + problem);
        }
    }
}
