package bitterend.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Reel;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class DrawPriceTest {
    @Test
    void growth_isWhatTheWholeDrawCostsMore() {
        for (int seed = 0; seed < 60; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Random random = new Random(seed);
            for (Reel reel : shop.reels()) {
                DrawPrice draw = new DrawPrice(shop, reel);
                RunLoad[] loads = new RunLoad[draw.runs().size()];
                Arrays.fill(loads, RunLoad.NONE);
                int deepest = -1;
                for (int i = 0; i < 6 && loads.length > 0; i++) {
                    int run = random.nextInt(loads.length);
                    RunLoad[] then = loads.clone();
                    then[run] = then[run].plus(new Length(1 + random.nextInt(3_000)));
                    assertEquals(
                            draw.of(then).minus(draw.of(loads)),
                            draw.growth(loads, deepest, run, then[run]),
                            "seed " + seed + " " + reel.id());
                    loads = then;
                    deepest = Math.max(deepest, run);
                }
            }
        }
    }
}
