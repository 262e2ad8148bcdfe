package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import bitterend.packing.check.BoundVerdict;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.shops.BruteForce;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import org.junit.jupiter.api.Test;

final class FullStrategyTest {
    private static final int SHOPS = Integer.getInteger("shops", 200);
    private static final Packer PATTERNS_ALONE = FullStrategy.patternsAlone();

    @Test
    void bound_isNeverAboveTheOptimumAndTheCostNeverBelow() {
        int proven = 0;
        for (long seed = 1; seed <= SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            Packer.Result result = PATTERNS_ALONE.pack(shop, Effort.of(Duration.ofMillis(300)));
            PlanPrice price = new PlanPrice(shop);
            BruteForce.Best optimum = BruteForce.best(shop);
            Undone undone = price.undone(result.packing());
            Cost bound = bound(result);
            assertTrue(bound.compareTo(result.cost()) <= 0, "seed " + seed);
            assertTrue(!undone.isLessThan(optimum.undone()), "seed " + seed);
            if (undone.equals(optimum.undone())) {
                assertTrue(bound.compareTo(optimum.cost()) <= 0, "seed " + seed + ": " + bound + " " + optimum);
                proven += bound.equals(optimum.cost()) ? 1 : 0;
            }
        }
        assertTrue(proven > SHOPS / 3, "bounds that meet the optimum: " + proven);
    }

    @Test
    void bounds_areConfirmedByTheChecker() {
        for (long seed = 1; seed <= SHOPS / 4; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            CutPlan plan = new DayPlanner(PATTERNS_ALONE).plan(shop, Effort.of(Duration.ofMillis(200)));
            for (BoundVerdict verdict : PlanChecker.verdict(shop, plan).bounds()) {
                assertEquals(BoundVerdict.State.CONFIRMED, verdict.state(), "seed " + seed + ": " + verdict.sentence());
            }
        }
    }

    @Test
    void pack_isNeverWorseThanItsGreedyStart() {
        for (long seed = 1; seed <= SHOPS / 10; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Packer.Result result = PATTERNS_ALONE.pack(shop, Effort.of(Duration.ofMillis(300)));
            PlanPrice price = new PlanPrice(shop);
            var greedy = new GreedyPacker(shop).best();
            Undone undone = price.undone(result.packing());
            assertTrue(!price.undone(greedy).isLessThan(undone), "seed " + seed);
            if (undone.equals(price.undone(greedy))) {
                assertTrue(result.cost().compareTo(price.of(greedy)) <= 0, "seed " + seed);
            }
            assertEquals(price.of(result.packing()), result.cost());
        }
    }

    private static Cost bound(Packer.Result result) {
        return result.bounds().stream().map(Bound::best).reduce(Cost.ZERO, Cost::plus);
    }
}
