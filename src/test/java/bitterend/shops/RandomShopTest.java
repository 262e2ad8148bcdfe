package bitterend.shops;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.demand.Piece.Bond;
import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.RunDraw.Rest;
import bitterend.packing.Undone;
import bitterend.stock.Reel;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

final class RandomShopTest {
    private static final List<PackingProblem> SHOPS = LongStream.range(0, 300)
            .mapToObj(seed -> RandomShop.of(seed, ShopSize.SMALL))
            .toList();

    @Test
    void shops_areTheSameForTheSameSeed() {
        PackingProblem once = RandomShop.of(7, ShopSize.DAY);
        PackingProblem again = RandomShop.of(7, ShopSize.DAY);
        assertEquals(once.reels(), again.reels());
        assertEquals(once.pieces(), again.pieces());
        assertEquals(once.pins(), again.pins());
    }

    @Test
    void shops_showEveryFeatureOfReels() {
        assertSome(shop -> reels(shop, reel -> reel.custody().isCustomersOwn()));
        assertSome(shop -> reels(shop, reel -> reel.custody().state() == Reel.State.ON_HOLD));
        assertSome(shop -> reels(shop, reel -> reel.custody().state() == Reel.State.RESERVED));
        assertSome(shop -> reels(shop, reel -> reel.papers().useBy().isBefore(shop.day())));
        assertSome(shop -> reels(shop, reel -> reel.runs().size() > 2));
        assertSome(shop -> reels(shop, reel -> reel.runs().isEmpty()));
        assertSome(shop -> reels(shop, reel -> reel.contents().uncertainty().isPositive()));
        assertSome(shop -> reels(shop, reel -> reel.contents().innerWraps().isPositive()));
        assertSome(shop -> reels(
                shop,
                reel -> !reel.runs().isEmpty()
                        && reel.runs()
                                .get(0)
                                .from()
                                .isLongerThan(reel.contents().leadTrim())));
        assertSome(shop -> reels(shop, reel -> reel.lot().isEmpty()));
        assertSome(shop -> reels(shop, reel -> shop.isComing(reel.id())));
    }

    @Test
    void shops_showEveryFeatureOfPieces() {
        for (Bond bond : Bond.values()) {
            assertSome(shop -> pieces(shop, piece -> piece.matching().bond() == bond));
        }
        assertSome(shop -> pieces(shop, Piece::ownRope));
        assertSome(shop -> pieces(shop, piece -> !piece.certificate().isEmpty()));
        assertSome(shop -> pieces(shop, piece -> piece.choices().size() > 1));
        assertSome(shop -> !shop.pins().isEmpty());
        assertSome(shop -> !shop.earlier().isEmpty());
        assertSome(shop -> shop.prices().equals(Prices.NONE));
        assertSome(shop -> shop.ropes().values().stream()
                .anyMatch(rope -> rope.cutting().loss().equals(Length.ZERO)));
    }

    @Test
    void firstFit_reachesEveryFateOfARun() {
        List<CutPlan> plans = SHOPS.stream()
                .map(shop -> PlanWriter.write(shop, FirstFit.of(shop)))
                .toList();
        for (Rest rest : Rest.values()) {
            assertTrue(
                    plans.stream().flatMap(plan -> plan.draws().stream()).anyMatch(draw -> draw.runs().stream()
                            .anyMatch(run -> run.rest() == rest && !run.cuts().isEmpty())),
                    rest.toString());
        }
        assertTrue(plans.stream().anyMatch(plan -> !plan.unplanned().isEmpty()));
        assertTrue(plans.stream().flatMap(plan -> plan.draws().stream()).anyMatch(draw -> draw.runs().stream()
                .anyMatch(run -> run.cuts().isEmpty())));
    }

    @Test
    void bruteForce_isNeverWorseThanFirstFit() {
        for (long seed = 0; seed < 200; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            Packing fit = FirstFit.of(shop);
            BruteForce.Best best = BruteForce.best(shop);
            Undone undone = new PlanPrice(shop).undone(fit);
            assertTrue(!undone.isLessThan(best.undone()), "seed " + seed);
            if (best.undone().equals(undone)) {
                assertTrue(best.cost().compareTo(PlanWriter.cost(shop, fit)) <= 0, "seed " + seed);
            }
        }
    }

    @Test
    void shrinker_leavesOnlyWhatShowsTheFault() {
        PackingProblem shop = SHOPS.get(3);
        PackingProblem small = ShopShrinker.smallest(shop, any -> !any.pieces().isEmpty());
        assertEquals(1, small.pieces().size());
        assertEquals(0, small.reels().size());
    }

    private static void assertSome(Predicate<PackingProblem> feature) {
        assertTrue(SHOPS.stream().anyMatch(feature));
        assertTrue(!SHOPS.stream().allMatch(feature), "every shop shows it");
    }

    private static boolean reels(PackingProblem shop, Predicate<Reel> feature) {
        return shop.reels().stream().anyMatch(feature);
    }

    private static boolean pieces(PackingProblem shop, Predicate<Piece> feature) {
        return shop.pieces().stream().anyMatch(feature);
    }
}
