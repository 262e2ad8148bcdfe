package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.check.BoundChecker;
import bitterend.packing.check.BoundVerdict;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.BruteForce;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.List;
import org.junit.jupiter.api.Test;

final class RopeAloneTest {
    private static final int SHOPS = Integer.getInteger("shops", 200);

    @Test
    void of_isBelowTheBestPlanAndConfirmedByTheChecker() {
        int known = 0;
        int costly = 0;
        for (int seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            BruteForce.Best optimum = BruteForce.best(shop);
            Bound bound = new RopeAlone(shop).of(optimum.undone()).orElseThrow();
            assertTrue(bound.best().compareTo(optimum.cost()) <= 0, "seed " + seed);
            known += bound.best().compareTo(Cost.ZERO) > 0 ? 1 : 0;
            costly += optimum.cost().compareTo(Cost.ZERO) > 0 ? 1 : 0;
            CutPlan plan = new CuttingOrder(shop).plan(optimum.packing());
            CutPlan made =
                    new CutPlan(plan.day(), plan.draws(), plan.unplanned(), plan.book(), plan.cost(), List.of(bound));
            for (BoundVerdict verdict : BoundChecker.check(shop, made)) {
                assertEquals(BoundVerdict.State.CONFIRMED, verdict.state(), "seed " + seed + " " + verdict.sentence());
            }
        }
        assertTrue(known > costly / 2, known + " of " + costly + " shops have a bound");
    }
}
