package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What packing the rest around the sets is for, on shops where the plan was dearer without it. */
final class AroundSetsTest {
    private static final ShopSize SIZE = new ShopSize(1, 10, 30, 2, 60_000);
    private static final long WORK = 300_000;

    @Test
    void restPackedAroundTheSets_isCheaperThanSetsHandedOutFromPatterns() {
        // 8,047,285 without
        assertNoDearer(58, Undone.of(List.of(6L, 0L, 0L, 0L, 4L)), new Cost(7_994_999));
    }

    private static void assertNoDearer(long seed, Undone undone, Cost cost) {
        PackingProblem shop = RandomShop.of(seed, SIZE);
        Effort effort = new Effort(Duration.ofMinutes(10), WORK, 1, 1, () -> false, progress -> {});
        Packing packing =
                new PartPacker(shop, new Share(effort, effort.time(), effort.work()), false).startedByPatterns();
        PlanPrice prices = new PlanPrice(shop);
        int work = prices.undone(packing).compareTo(undone);
        assertTrue(
                work < 0 || (work == 0 && prices.of(packing).compareTo(cost) <= 0),
                "shop " + seed + ": " + prices.undone(packing) + ", " + prices.of(packing));
    }
}
