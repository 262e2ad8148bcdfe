package bitterend.packing.greedy;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.packing.DrawPrice;
import bitterend.packing.Eligibility;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.RunLoad;
import bitterend.packing.Sketch;
import bitterend.shops.BruteForce;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Reel;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

final class GreedyPackerTest {
    private static final int SHOPS = Integer.getInteger("shops", 200);

    @Test
    void starts_honourEveryHardRuleOfRandomShops() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            GreedyPacker greedy = new GreedyPacker(shop);
            assertSound(seed, shop, greedy.best());
            assertSound(seed, shop, greedy.bestFit());
            assertSound(seed, shop, greedy.firstFit());
        }
    }

    @Test
    void best_isNeverWorseThanAnyStartAndNeverBetterThanTheOptimum() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            PlanPrice price = new PlanPrice(shop);
            GreedyPacker greedy = new GreedyPacker(shop);
            Packing best = greedy.best();
            BruteForce.Best optimum = BruteForce.best(shop);
            assertTrue(compare(price, best, greedy.bestFit()) <= 0, "seed " + seed);
            assertTrue(!price.undone(best).isLessThan(optimum.undone()), "seed " + seed);
            if (price.undone(best).equals(optimum.undone())) {
                assertTrue(price.of(best).compareTo(optimum.cost()) >= 0, "seed " + seed);
            }
        }
    }

    @Test
    void planPrice_ofTheOptimumIsTheOneThatTryingEverythingFinds() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.TINY);
            BruteForce.Best optimum = BruteForce.best(shop);
            PlanPrice price = new PlanPrice(shop);
            assertEquals(optimum.cost(), price.of(optimum.packing()), "seed " + seed);
            assertEquals(optimum.undone(), price.undone(optimum.packing()), "seed " + seed);
        }
    }

    @Test
    void best_keepsCertifiedRopeForThePiecesThatNeedIt() {
        PackingProblem shop = new Sketch()
                .with(reel("K1", 4_900).certificate("2.2"))
                .with(reel("K2", 5_000))
                .with(piece("A/1.1", 4_900))
                .with(piece("B/1.1", 4_800).order("B").certificate("2.2"))
                .problem();
        assertEquals(2, new GreedyPacker(shop).best().places().size());
    }

    private static int compare(PlanPrice price, Packing a, Packing b) {
        int work = price.undone(a).compareTo(price.undone(b));
        return work != 0 ? work : price.of(a).compareTo(price.of(b));
    }

    private static void assertSound(long seed, PackingProblem shop, Packing packing) {
        Eligibility rules = new Eligibility(shop);
        PlanPrice prices = new PlanPrice(shop);
        for (Piece piece : shop.pieces()) {
            packing.placeOf(piece.id())
                    .ifPresent(run -> assertTrue(
                            rules.against(piece, shop.reel(run.reel())).isEmpty(), "seed " + seed + " " + piece.id()));
        }
        prices.loads(packing).forEach((reel, loads) -> {
            DrawPrice draw = prices.draw(reel);
            for (int run = 0; run < loads.length; run++) {
                RunLoad load = loads[run];
                assertTrue(load.fits(draw.runs().get(run).length(), draw.loss()), "seed " + seed + " " + reel);
            }
        });
        shop.pieces().stream()
                .filter(Piece::isMatched)
                .collect(Collectors.groupingBy(piece -> piece.matching().set()))
                .forEach((set, pieces) -> assertOneHome(seed, packing, shop, pieces));
    }

    private static void assertOneHome(long seed, Packing packing, PackingProblem shop, java.util.List<Piece> pieces) {
        Set<String> homes = pieces.stream()
                .map(piece -> packing.placeOf(piece.id())
                        .map(run -> home(piece, run, shop))
                        .orElse("none"))
                .collect(Collectors.toSet());
        assertEquals(1, homes.size(), "seed " + seed + " " + homes);
    }

    private static String home(Piece piece, RunId run, PackingProblem shop) {
        Reel reel = shop.reel(run.reel());
        return piece.matching().bond() == Piece.Bond.ONE_REEL ? reel.id() : reel.rope() + PlanPrice.lotOf(reel);
    }
}
