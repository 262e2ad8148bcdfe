package bitterend.packing.patterns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Duals made whole: rounded so that nothing is claimed, and small enough to be summed. */
final class ScalingTest {
    /** Reels of 100 for 1000, pieces at weights of 9 and 5. */
    private static Instance instance() {
        return new Normaliser(new PatternProblem(
                        List.of(new Item(2, 9), new Item(3, 5)),
                        List.of(ReelKind.whole(100, 1000, ReelKind.UNLIMITED, List.of(30L, 20L)))))
                .instance();
    }

    @Test
    void costs_areStatedInTheDearestReel_orInTheHeaviestPiece() {
        Scaling never = new Scaling(instance(), Rejection.NEVER);
        assertEquals(1000, never.cost);
        assertEquals(9, never.weight);
        assertEquals(1L << 26, never.scale);
        Scaling priced = new Scaling(instance(), Rejection.PRICED);
        assertEquals(9, priced.cost);
        assertEquals(9, priced.weight);
        assertEquals(1L << 32, priced.scale);
        assertEquals(1000, new Scaling(instance(), Rejection.limited(9)).cost);
    }

    @Test
    void price_isRoundedDown_neverNegative_andEnds() {
        Scaling scaling = new Scaling(instance(), Rejection.NEVER);
        assertEquals(500L << 26, scaling.price(0.5));
        assertEquals(0, scaling.price(-0.5));
        assertEquals(0, scaling.price(0.9 / (1000L << 26)));
        assertEquals(1, scaling.price(1.9 / (1000L << 26)));
        assertEquals(100_000_000_000_000_000L, scaling.price(1e30));
    }

    @Test
    void need_isRoundedDown_belowNothingToo() {
        Scaling scaling = new Scaling(instance(), Rejection.NEVER);
        assertEquals(500L << 26, scaling.need(0.5));
        assertEquals(-(500L << 26), scaling.need(-0.5));
        assertEquals(-1, scaling.need(-0.1 / (1000L << 26)));
    }

    @Test
    void priceOfWeight_isRoundedUp_forOneUnitOfIt() {
        Scaling scaling = new Scaling(instance(), Rejection.limited(3));
        assertEquals(500L << 26, scaling.ofWeight(4.5));
        assertEquals(1, scaling.ofWeight(0.1 / (1000L << 26)));
        assertEquals(0, scaling.ofWeight(0));
        assertEquals(0, scaling.ofWeight(-1));
    }

    @Test
    void pricesOfAllPieces_canBeSummed_howeverManyAndDear() {
        Random random = new Random(4);
        for (int n = 0; n < 500; n++) {
            int demand = 1 + random.nextInt(1 << random.nextInt(1, 28));
            long dear = 1 + random.nextLong(1L << random.nextInt(1, 46));
            Instance instance = new Normaliser(new PatternProblem(
                            List.of(Item.must(demand)),
                            List.of(ReelKind.whole(100, dear, ReelKind.UNLIMITED, List.of(30L)))))
                    .instance();
            Scaling scaling = new Scaling(instance, Rejection.NEVER);
            assertTrue(scaling.scale >= 1);
            if (scaling.scale > 1) {
                BigInteger all = BigInteger.valueOf(scaling.price(1)).multiply(BigInteger.valueOf(demand));
                assertTrue(all.bitLength() <= 60, demand + " pieces from reels at " + dear);
            }
            assertEquals(1, Long.bitCount(scaling.scale));
        }
    }
}
