package bitterend.quoting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.FullStrategy;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.quoting.PlanShares.OrderShare;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** What each order of a day caused. */
final class PlanSharesTest {
    private static final int SHOPS = Integer.getInteger("shops", 200) / 10;

    /** Of ropes packed together every coin of the reels drawn is somebody's, and every planned piece counts once. */
    @Test
    void shares_addUpToTheCostOfTheReelsDrawn() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem problem = RandomShop.of(seed, ShopSize.TINY);
            Packer packer = seed % 2 == 0 ? FullStrategy.patternsAlone() : new GreedyStrategy();
            CutPlan plan = new DayPlanner(packer).plan(problem, Effort.of(Duration.ofSeconds(1)));
            List<OrderShare> shares = PlanShares.of(problem, plan);
            Map<List<String>, Money> paid = new TreeMap<>((a, b) -> a.toString().compareTo(b.toString()));
            shares.forEach(share -> paid.merge(share.ropes(), share.share(), Money::plus));
            paid.forEach((ropes, money) -> {
                Cost cost = plan.draws().stream()
                        .filter(draw -> ropes.contains(problem.reel(draw.reel()).rope()))
                        .map(ReelDraw::cost)
                        .reduce(Cost.ZERO, Cost::plus);
                assertEquals(cost.rounded(), money, "ropes " + ropes);
            });
            int cuts =
                    plan.draws().stream().mapToInt(draw -> draw.cuts().size()).sum();
            assertEquals(cuts, shares.stream().mapToInt(OrderShare::pieces).sum(), "seed " + seed);
            if (seed % 2 == 1) {
                shares.forEach(share -> assertFalse(share.proven()));
            }
        }
    }
}
