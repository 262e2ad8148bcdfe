package bitterend.packing.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.Undone;
import bitterend.packing.check.BoundVerdict.State;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.FullStrategy;
import bitterend.shops.BruteForce;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The bounds that the pattern engine claims, computed again; and below the optimum where that is known. */
final class ProvenPlansTest {
    private static final long SHOPS = Math.max(10, Long.getLong("shops", 200) / 5);

    @Test
    void claimedBounds_areConfirmed() {
        Map<State, Integer> states = new EnumMap<>(State.class);
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            CutPlan plan = plan(shop);
            PlanChecker.Verdict verdict = PlanChecker.verdict(shop, plan);
            assertEquals(List.of(), verdict.faults(), "shop " + seed);
            verdict.bounds().forEach(bound -> states.merge(bound.state(), 1, Integer::sum));
        }
        assertTrue(states.getOrDefault(State.CONFIRMED, 0) > SHOPS / 2, states.toString());
        assertEquals(0, states.getOrDefault(State.NOT_CHECKED, 0), states.toString());
    }

    @Test
    void claimedBounds_areNotAboveTheOptimum() {
        int compared = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            CutPlan plan = plan(shop);
            BruteForce.Best best = BruteForce.best(shop);
            Undone undone = plan.bounds().stream().map(Bound::undone).reduce(Undone.NONE, Undone::plus);
            if (!plan.bounds().isEmpty() && undone.equals(best.undone())) {
                long claimed = plan.bounds().stream()
                        .mapToLong(bound -> bound.best().millis())
                        .sum();
                assertTrue(claimed <= best.cost().millis(), "shop " + seed + ": " + claimed + " claimed, " + best);
                compared++;
            }
        }
        assertTrue(compared > SHOPS / 3, "hardly any bound was compared: " + compared);
    }

    private static CutPlan plan(PackingProblem shop) {
        return new DayPlanner(FullStrategy.patternsAlone()).plan(shop, Effort.of(Duration.ofMillis(200)));
    }
}
