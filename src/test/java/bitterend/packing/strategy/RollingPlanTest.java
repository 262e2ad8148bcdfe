package bitterend.packing.strategy;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.Sketch;
import bitterend.packing.Unplanned;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import bitterend.stock.Reel;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A plan that begins with the promises of an earlier one. */
final class RollingPlanTest {
    private static final int SHOPS = Integer.getInteger("shops", 60);
    private static final Prices MOVING =
            new Prices(Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO, new Cost(50), Cost.ZERO);

    private static Packing packing(PackingProblem problem) {
        long work = 100L * problem.pieces().size();
        Effort effort = new Effort(Duration.ofDays(1), work, 1, 1, () -> false, progress -> {});
        return FullStrategy.patternsAlone().pack(problem, effort).packing();
    }

    private static Map<String, String> reels(PackingProblem problem, Packing packing) {
        Map<String, String> reels = new TreeMap<>();
        CutPlan plan = new CuttingOrder(problem).numbered(packing);
        plan.draws().forEach(draw -> draw.cuts().forEach(cut -> reels.put(cut.piece(), draw.reel())));
        return reels;
    }

    private static Map<String, String> reels(PackingProblem problem) {
        return reels(problem, packing(problem));
    }

    private static long moved(Map<String, String> was, Map<String, String> is) {
        return was.entrySet().stream()
                .filter(each ->
                        is.containsKey(each.getKey()) && !is.get(each.getKey()).equals(each.getValue()))
                .count();
    }

    private static PackingProblem shop(long seed, ShopSize size) {
        return RandomShop.of(seed, size).withEarlier(Map.of());
    }

    @Test
    void nothingChanged_changesNothing() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = shop(seed, ShopSize.TINY);
            Map<String, String> was = reels(shop);
            assertEquals(was, reels(shop.withEarlier(was)), "seed " + seed);
        }
    }

    /** Where a move has a price; a shop that states none does not mind which of two plans of equal cost it gets. */
    @Test
    void everyChange_pays() {
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = shop(seed, ShopSize.SMALL);
            if (shop.prices().movedPiece().millis() == 0) {
                continue;
            }
            Packing first = packing(shop);
            Map<String, String> was = reels(shop, first);
            PackingProblem again = shop.withEarlier(was);
            Packing second = packing(again);
            PlanPrice prices = new PlanPrice(again);
            assertTrue(!new PlanPrice(shop).isBetter(first, second), "seed " + seed);
            boolean pays = prices.undone(second).isLessThan(prices.undone(first))
                    || prices.of(second).compareTo(new PlanPrice(shop).of(first)) < 0;
            assertTrue(pays || moved(was, reels(again, second)) == 0, "seed " + seed);
        }
    }

    /** A reel came short and a rush order came in: far fewer pieces change reel than if all were planned anew. */
    @Test
    void smallEventOfTheMorning_movesFewPieces() {
        long kept = 0;
        long anew = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem evening = dear(shop(seed, ShopSize.SMALL));
            Piece rush = evening.pieces().get(0);
            List<Piece> known = evening.pieces().stream()
                    .filter(piece -> !piece.equals(rush))
                    .toList();
            PackingProblem closing = evening.about(known);
            Map<String, String> was = reels(closing);
            PackingProblem morning = shortened(evening);
            kept += moved(was, reels(morning.withEarlier(was)));
            anew += moved(was, reels(morning));
        }
        assertTrue(kept * 2 < anew, kept + " pieces changed reel, " + anew + " where all is planned anew");
    }

    private static PackingProblem dear(PackingProblem shop) {
        return new PackingProblem(
                shop.day(),
                shop.ropes(),
                shop.pieces(),
                shop.reels(),
                shop.values(),
                new Prices(Cost.ZERO, new Cost(100_000), Cost.ZERO, Cost.ZERO, new Cost(150_000), Cost.ZERO),
                List.of(),
                Map.of());
    }

    /** The first reel that is longer than a metre is one metre shorter. */
    private static PackingProblem shortened(PackingProblem shop) {
        List<Reel> reels = new ArrayList<>(shop.reels());
        for (int i = 0; i < reels.size(); i++) {
            Reel reel = reels.get(i);
            if (reel.length().mm() > 2_000 && reel.flaws().isEmpty()) {
                Reel.Contents now = new Reel.Contents(
                        reel.length().minus(Length.ofMetres(1)),
                        reel.contents().uncertainty(),
                        reel.contents().leadTrim(),
                        reel.contents().innerWraps(),
                        reel.contents().known());
                reels.set(
                        i,
                        new Reel(
                                reel.id(),
                                reel.rope(),
                                reel.lot(),
                                now,
                                reel.flaws(),
                                reel.papers(),
                                reel.custody(),
                                reel.full(),
                                reel.where()));
                break;
            }
        }
        return shop.withRack(shop.ropes(), shop.values(), reels);
    }

    /** Three equal reels, of which any two would do. */
    @Test
    void equalReels_keepTheirNames() {
        PackingProblem problem = new Sketch()
                .prices(MOVING)
                .with(reel("R1", 10_000).lot("L"))
                .with(reel("R2", 10_000).lot("L"))
                .with(reel("R3", 10_000).lot("L"))
                .with(piece("A/1.1", 7_000))
                .with(piece("B/1.1", 8_000))
                .problem();
        Map<String, String> was = Map.of("A/1.1", "R3", "B/1.1", "R2");
        assertEquals(was, reels(problem.withEarlier(was)));
    }

    /** Pieces of two orders that are as long as one another keep their reels. */
    @Test
    void equalPiecesOfTwoOrders_areNotSwapped() {
        PackingProblem problem = new Sketch()
                .prices(MOVING)
                .with(reel("R1", 5_000))
                .with(reel("R2", 9_000))
                .with(piece("A/1.1", 4_000).order("A"))
                .with(piece("B/1.1", 4_000).order("B"))
                .with(piece("C/1.1", 4_000).order("C"))
                .problem();
        Map<String, String> was = Map.of("A/1.1", "R2", "B/1.1", "R1", "C/1.1", "R2");
        assertEquals(was, reels(problem.withEarlier(was)));
    }

    /** Where rope is short no piece is undone for the sake of another that is undone. */
    @Test
    void reasons_nameNoPieceThatIsUndoneItself() {
        int told = 0;
        for (long seed = 0; seed < SHOPS; seed++) {
            PackingProblem shop = shop(seed, ShopSize.SMALL);
            CutPlan plan = new CuttingOrder(shop).numbered(packing(shop));
            for (Unplanned each : plan.unplanned()) {
                String[] why = each.reason().sentence().exact().split(" went to ");
                for (Unplanned other : plan.unplanned()) {
                    boolean named =
                            why.length > 1 && List.of(why[1].split("[ ,;]+")).contains(other.piece());
                    assertTrue(!named, each.piece() + ": " + why[why.length - 1]);
                }
                told++;
            }
        }
        assertTrue(told > SHOPS / 2, told + " reasons");
    }
}
