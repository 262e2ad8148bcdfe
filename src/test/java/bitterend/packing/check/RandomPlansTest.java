package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.GreedyStrategy;
import bitterend.shops.FirstFit;
import bitterend.shops.PlanWriter;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every plan of every random shop passes the checker and the knife. {@code -Dshops=N} sets how many shops. */
final class RandomPlansTest {
    private static final long SHOPS = Long.getLong("shops", 200);

    @Test
    void plannedDays_passTheCheckerAndTheKnife() {
        DayPlanner planner = new DayPlanner(new GreedyStrategy());
        long cuts = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = shop(seed);
            CutPlan plan = planner.plan(shop, Effort.of(Duration.ofSeconds(1)));
            assertSound(seed, shop, plan);
            cuts += plan.draws().stream().mapToLong(draw -> draw.cuts().size()).sum();
        }
        assertTrue(cuts > SHOPS, "hardly anything was cut");
    }

    @Test
    void plansWrittenByHand_passTheCheckerAndTheKnife() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = shop(seed);
            assertSound(seed, shop, PlanWriter.write(shop, FirstFit.of(shop)));
        }
    }

    @Test
    void customersRope_goesBackEvenWhenOnlyTheUncertainEndIsLeft() {
        PackingProblem day = PlantedDay.allOfTheCustomersRope();
        CutPlan plan = new DayPlanner(new GreedyStrategy()).plan(day, Effort.of(Duration.ofSeconds(1)));
        assertEquals(new Length(100), plan.draws().get(0).leftOnReel());
        assertSound(0, day, plan);
    }

    /** Mostly slow mornings, some tiny shops, a full day now and then. */
    private static PackingProblem shop(long seed) {
        return RandomShop.of(seed, seed % 50 == 0 ? ShopSize.DAY : seed % 4 == 1 ? ShopSize.TINY : ShopSize.SMALL);
    }

    private static void assertSound(long seed, PackingProblem shop, CutPlan plan) {
        assertEquals(List.of(), PlanChecker.check(shop, plan), "shop " + seed);
        for (ReelDraw draw : plan.draws()) {
            Knife.cut(shop, draw);
        }
    }
}
