package bitterend.packing.strategy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.time.Duration;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** The whole chain by work instead of the clock. */
final class ReproducibleTest {
    private static final ShopSize MORNING = new ShopSize(4, 16, 50, 2, 80_000);

    @Test
    void plan_isTheSameOnOneThreadAndTwo_twice() {
        for (long seed = 0; seed < 4; seed++) {
            PackingProblem shop = RandomShop.of(seed, MORNING);
            String once = answer(shop, seed, 1);
            assertEquals(once, answer(shop, seed, 1), "one thread again, seed " + seed);
            assertEquals(once, answer(shop, seed, 2), "two threads, seed " + seed);
            assertEquals(once, answer(shop, seed, 2), "two threads again, seed " + seed);
        }
    }

    /** Places, cost and everything that is proven, in words. */
    private static String answer(PackingProblem shop, long seed, int threads) {
        Effort effort =
                new Effort(Duration.ofDays(1), 200L * shop.pieces().size(), seed, threads, () -> false, progress -> {});
        Packer.Result result = FullStrategy.at(EffortLevel.REPRODUCIBLE).pack(shop, effort);
        return new TreeMap<String, RunId>(result.packing().places()) + " " + result.cost() + " " + result.bounds();
    }
}
