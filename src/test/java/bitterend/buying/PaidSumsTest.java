package bitterend.buying;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.market.Offer;
import bitterend.measure.Cost;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A bound on what is paid rises to the next sum that whole reels come to, beside every number of each reel. */
final class PaidSumsTest {
    private static Tier tier(long millis, int from, int supply) {
        Offer offer = Stall.limited(Stall.offer("O" + millis, 100, 1), supply, from, 0);
        return new Tier(offer, from, new Cost(millis), Cost.ZERO);
    }

    private static long raised(long bound, long found, Tier... tiers) {
        return PaidSums.raised(new Cost(bound), new Cost(found), List.of(tiers)).millis();
    }

    @Test
    void bound_risesToTheNextSum() {
        assertEquals(700, raised(601, 10_000, tier(700, 1, 9)));
        assertEquals(700, raised(700, 10_000, tier(700, 1, 9)), "a sum itself stays");
        assertEquals(1_400, raised(701, 10_000, tier(700, 1, 9)));
        assertEquals(1_200, raised(1_001, 10_000, tier(700, 1, 9), tier(500, 1, 9)), "one of each");
        assertEquals(2_100, raised(701, 10_000, tier(700, 3, 9)), "no fewer than three");
        assertEquals(0, raised(0, 10_000, tier(700, 1, 9)));
    }

    /** Two at most are to be had, a reel for nothing adds nothing, and beyond what was found there is nothing to say. */
    @Test
    void bound_staysWhereNoSumIsLeft() {
        assertEquals(1_401, raised(1_401, 10_000, tier(700, 1, 2)));
        assertEquals(1_300, raised(1_300, 1_399, tier(700, 1, 9)));
        assertEquals(1_400, raised(1_300, 1_400, tier(700, 1, 9)));
        assertEquals(5, raised(5, 10_000, tier(0, 1, 9)));
    }

    @Test
    void bound_isTheLeastSumThatIsNotBelow() {
        SplittableRandom dice = new SplittableRandom(4);
        for (int i = 0; i < 300; i++) {
            List<Tier> tiers = new ArrayList<>();
            for (int t = 0; t < 3; t++) {
                tiers.add(tier(1 + dice.nextInt(40), 1 + dice.nextInt(2), 1 + dice.nextInt(4)));
            }
            long found = dice.nextInt(200);
            long bound = dice.nextInt(200);
            long least = Long.MAX_VALUE;
            for (long sum : sums(tiers)) {
                least = sum >= bound && sum <= found ? Math.min(least, sum) : least;
            }
            long expected = least == Long.MAX_VALUE ? bound : least;
            assertEquals(
                    expected,
                    PaidSums.raised(new Cost(bound), new Cost(found), tiers).millis());
        }
    }

    private static List<Long> sums(List<Tier> tiers) {
        List<Long> sums = new ArrayList<>(List.of(0L));
        for (Tier tier : tiers) {
            for (long before : List.copyOf(sums)) {
                for (int n = tier.from(); n <= tier.offer().terms().supply(); n++) {
                    sums.add(before + n * tier.each().millis());
                }
            }
        }
        return sums;
    }
}
