package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.Undone;
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
    void plan_thatBreaksARuleGivesWayToTheQuickStarts() {
        PackingProblem shop = shop();
        Packing tooMuch = new Packing(Map.of("1/1.1", new RunId("A", 1), "1/1.2", new RunId("A", 1)));
        Packer careless = (problem, effort) -> new Packer.Result(tooMuch, Cost.ZERO, List.of());
        DayPlanner.Checked checked = new DayPlanner(careless).checked(shop, Effort.of(Duration.ofSeconds(1)));
        assertEquals(List.of(), PlanChecker.check(shop, checked.plan()));
        assertEquals(1, checked.plan().unplanned().size());
        assertFalse(checked.unsound().isEmpty());
    }

    @Test
    void boundThatDoesNotHold_isLeftOutAndTold() {
        PackingProblem shop = shop();
        Packer boasting = (problem, effort) -> {
            Packer.Result sound = new GreedyStrategy().pack(problem, effort);
            Undone undone = new PlanPrice(problem).undone(sound.packing());
            List<String> ropes = List.copyOf(problem.ropes().keySet());
            Bound bound = new Bound(ropes, sound.cost(), sound.cost(), 1, undone, Bound.noPrices(), List.of());
            return new Packer.Result(sound.packing(), sound.cost(), List.of(bound));
        };
        DayPlanner.Checked checked = new DayPlanner(boasting).checked(shop, Effort.of(Duration.ofSeconds(1)));
        assertEquals(List.of(), checked.plan().bounds());
        assertTrue(
                checked.unsound().get(0).contains("duals prove"),
                checked.unsound().toString());
    }

    @Test
    void unsoundCandidate_isThrownAwayAndTheLastSoundOneKept() {
        PackingProblem shop = shop();
        Packing tooMuch = new Packing(Map.of("1/1.1", new RunId("A", 1), "1/1.2", new RunId("A", 1)));
        FullStrategy careless = new FullStrategy((problem, start, effort, bound) -> tooMuch);
        PackingProblem twelve = PlainShop.of(10, 1_000)
                .reel("A", 9_000)
                .reel("B", 9_500)
                .pieces("1", 5_000, 2)
                .pieces("2", 2_900, 6)
                .pieces("3", 1_700, 5)
                .problem();
        for (PackingProblem day : List.of(shop, twelve)) {
            DayPlanner.Checked checked = new DayPlanner(careless).checked(day, Effort.of(Duration.ofMillis(200)));
            assertEquals(List.of(), PlanChecker.check(day, checked.plan()));
            assertFalse(checked.plan().draws().isEmpty());
        }
    }

    private static PackingProblem shop() {
        return PlainShop.of(10, 1_000).reel("A", 9_000).pieces("1", 5_000, 2).problem();
    }
}
