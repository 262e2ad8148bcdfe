package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where a plan of all pieces is known, the bound is on such plans even if the patterns find none themselves. */
final class EverythingFitsTest {
    private static final int SHOPS = Math.max(80, Integer.getInteger("shops", 200));
    private static final long SEED = Long.getLong("shops.seed", 20260306);

    @Test
    void bound_isOnPlansOfAllPieces() {
        int tight = 0;
        int fitting = 0;
        for (long seed = SEED; seed < SEED + SHOPS; seed++) {
            PatternProblem problem = TreeShops.all(new Random(seed), 8, 12);
            Instance instance = new Normaliser(problem).instance();
            Exhaustive.Optimum optimum = StateReferee.optimum(instance)
                    .filter(found -> found.weight() == 0)
                    .orElse(null);
            if (optimum != null) {
                PatternPlan plan = PatternPacker.packAll(problem, Effort.ofWork(100_000));
                PlanReferee.check(problem, plan);
                String where = "seed " + seed;
                assertEquals(0, plan.root().unplannedWeight(), where);
                assertTrue(plan.root().bound() <= optimum.cost(), where);
                long worked = DualProofReferee.bound(problem, plan.root());
                assertEquals(plan.root().bound(), instance.roundUp(worked), where);
                tight += plan.root().bound() >= optimum.cost() * 9 / 10 ? 1 : 0;
                fitting++;
            }
        }
        assertTrue(tight * 2 > fitting, "hardly any bound says anything: " + tight + " of " + fitting);
    }
}
