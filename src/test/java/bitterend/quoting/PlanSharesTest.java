package bitterend.quoting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.packing.Cut;
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
import bitterend.stock.Reel;
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

    /** A customer pays for none of the rope that is his own, and for all of ours. */
    @Test
    void ropeInThePieces_isOursAlone() {
        int own = 0;
        for (long seed = 0; seed < 40; seed++) {
            PackingProblem problem = RandomShop.of(seed, ShopSize.DAY);
            CutPlan plan = new DayPlanner(new GreedyStrategy()).plan(problem, Effort.of(Duration.ofSeconds(1)));
            Map<String, String> orders = new TreeMap<>();
            problem.pieces().forEach(piece -> orders.put(piece.id(), piece.order()));
            Map<String, Cost> worth = new TreeMap<>();
            for (ReelDraw draw : plan.draws()) {
                Reel reel = problem.reel(draw.reel());
                for (Cut cut : draw.cuts()) {
                    Cost ours = problem.rope(reel.rope()).price().of(cut.length());
                    own += reel.custody().isCustomersOwn() ? 1 : 0;
                    worth.merge(
                            reel.rope() + " " + orders.get(cut.piece()),
                            reel.custody().isCustomersOwn() ? Cost.ZERO : ours,
                            Cost::plus);
                }
            }
            Map<String, Money> wanted = new TreeMap<>();
            worth.forEach((key, cost) -> wanted.put(key, cost.rounded()));
            Map<String, Money> told = new TreeMap<>();
            PlanShares.of(problem, plan).stream()
                    .filter(share -> share.ropes().size() == 1)
                    .forEach(share -> told.put(share.ropes().get(0) + " " + share.order(), share.worth()));
            wanted.keySet().retainAll(told.keySet());
            assertEquals(wanted, told, "seed " + seed);
        }
        assertTrue(own > 0, "no customer's rope was cut");
    }
}
