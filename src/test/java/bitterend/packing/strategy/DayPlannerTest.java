package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import bitterend.measure.Cost;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.check.PlanChecker;
import bitterend.shops.PlainShop;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class DayPlannerTest {
    private static final int SHOPS = Integer.getInteger("shops", 200);

    @Test
    void plan_ofRandomShopsPassesTheChecker() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            CutPlan plan = new DayPlanner(new GreedyStrategy()).plan(shop, Effort.of(Duration.ofSeconds(1)));
            assertEquals(List.of(), PlanChecker.check(shop, plan), "seed " + seed);
        }
    }

    @Test
    void plan_thatBreaksARuleIsNeverHandedOut() {
        PackingProblem shop =
                PlainShop.of(10, 1_000).reel("A", 9_000).pieces("1", 5_000, 2).problem();
        Packing tooMuch = new Packing(Map.of("1/1.1", new RunId("A", 1), "1/1.2", new RunId("A", 1)));
        Packer careless = (problem, effort) -> new Packer.Result(tooMuch, Cost.ZERO, List.of());
        assertThrows(UnsoundPlanException.class, () -> new DayPlanner(careless)
                .plan(shop, Effort.of(Duration.ofSeconds(1))));
    }
}
