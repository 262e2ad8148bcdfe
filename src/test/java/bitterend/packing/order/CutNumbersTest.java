package bitterend.packing.order;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.Sketch;
import bitterend.packing.Unplanned;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.shops.PlainShop;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Equal pieces are numbered in the order in which they are cut. */
final class CutNumbersTest {
    private static final Piece.Bond LOT = Piece.Bond.ONE_LOT;

    /** Reel B holds what is due today, so it is cut first, though the engine put the first numbers on A. */
    @Test
    void equalPieces_areNumberedAsTheReelsAreCut() {
        PackingProblem shop = PlainShop.of(10, 1_000)
                .reel("A", 20_000)
                .reel("B", 20_000)
                .pieces("1", 5_000, 4)
                .piece("2/1.1", "2", 3_000, PlainShop.DAY, Piece.Matching.NONE)
                .problem();
        CutPlan plan = numbered(shop, Map.of("1/1.1", "A", "1/1.3", "A", "1/1.2", "B", "1/1.4", "B", "2/1.1", "B"));
        assertEquals(List.of("2/1.1", "1/1.1", "1/1.2"), cutsOn("B", plan));
        assertEquals(List.of("1/1.3", "1/1.4"), cutsOn("A", plan));
    }

    @Test
    void pieceWithoutAReel_isTheLastOfItsEquals() {
        PackingProblem shop =
                PlainShop.of(10, 1_000).reel("A", 11_000).pieces("1", 5_000, 3).problem();
        CutPlan plan = numbered(shop, Map.of("1/1.2", "A", "1/1.3", "A"));
        assertEquals(List.of("1/1.1", "1/1.2"), cutsOn("A", plan));
        assertEquals(
                List.of("1/1.3"),
                plan.unplanned().stream().map(Unplanned::piece).toList());
    }

    @Test
    void pinnedPiece_keepsItsNumber() {
        PackingProblem shop = new Sketch()
                .with(reel("A", 20_000))
                .with(reel("B", 20_000))
                .with(piece("1/1.1", 5_000).order("1"))
                .with(piece("1/1.2", 5_000).order("1"))
                .with(piece("1/1.3", 5_000).order("1"))
                .pin("1/1.1", "B")
                .problem();
        CutPlan plan = numbered(shop, Map.of("1/1.1", "B", "1/1.2", "B", "1/1.3", "A"));
        assertEquals(List.of("1/1.2"), cutsOn("A", plan));
        assertEquals(List.of("1/1.1", "1/1.3"), cutsOn("B", plan));
    }

    /** The engine exchanged two that an earlier plan had: exchanging them back costs nothing. */
    @Test
    void pieceOfAnEarlierPlan_staysOnItsReelWhereAnEqualOneIsThere() {
        PackingProblem shop = PlainShop.of(10, 1_000)
                .reel("A", 20_000)
                .reel("B", 20_000)
                .pieces("1", 5_000, 3)
                .problem()
                .withEarlier(Map.of("1/1.1", "B", "1/1.2", "A", "1/1.3", "A"));
        CutPlan plan = numbered(shop, Map.of("1/1.1", "A", "1/1.2", "B", "1/1.3", "A"));
        assertEquals(List.of("1/1.2", "1/1.3"), cutsOn("A", plan));
        assertEquals(List.of("1/1.1"), cutsOn("B", plan));
    }

    @Test
    void piecesOfOtherLengthOrLine_keepTheirPlaces() {
        PackingProblem shop = PlainShop.of(10, 1_000)
                .reel("A", 20_000)
                .reel("B", 20_000)
                .piece("1/1.1", "1", 5_000, PlainShop.DAY, Piece.Matching.NONE)
                .piece("1/1.2", "1", 4_000, PlainShop.DAY, Piece.Matching.NONE)
                .piece("2/1.1", "2", 5_000, PlainShop.DAY, Piece.Matching.NONE)
                .problem();
        CutPlan plan = numbered(shop, Map.of("1/1.1", "B", "1/1.2", "A", "2/1.1", "A"));
        assertEquals(List.of("1/1.1"), cutsOn("B", plan));
    }

    /** Set 1/1.2 lies on the reel that is cut first. */
    @Test
    void assembliesThatAreSetsOfTheirOwn_areNumberedWhole() {
        PackingProblem shop = PlainShop.of(10, 1_000)
                .reel("A", 20_000)
                .reel("B", 20_000)
                .piece("1/1.1", "1", 5_000, PlainShop.DAY, new Piece.Matching("1/1.1", LOT))
                .piece("1/1.2", "1", 5_000, PlainShop.DAY, new Piece.Matching("1/1.2", LOT))
                .problem();
        CutPlan plan = numbered(shop, Map.of("1/1.1", "B", "1/1.2", "A"));
        assertEquals(List.of("1/1.1"), cutsOn("A", plan));
        assertEquals(List.of("1/1.2"), cutsOn("B", plan));
    }

    /** What a plan costs, leaves undone and cuts off each reel is the same; and a second numbering finds nothing to do. */
    @Test
    void numbers_changeNothingElseInRandomShops() {
        for (long seed = 1; seed <= 60; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Packing packing = new GreedyPacker(shop).best();
            CuttingOrder order = new CuttingOrder(shop);
            CutPlan before = order.plan(packing);
            CutPlan plan = order.numbered(packing);
            assertEquals(List.of(), PlanChecker.check(shop, plan), "seed " + seed);
            assertTrue(plan.cost().compareTo(before.cost()) <= 0, "seed " + seed);
            assertEquals(before.unplanned().size(), plan.unplanned().size(), "seed " + seed);
            assertEquals(before.book(), plan.book(), "seed " + seed);
            Packing named = new CutNumbers(shop).inOrder(packing, before);
            assertEquals(named, new CutNumbers(shop).inOrder(named, plan), "seed " + seed);
            assertEquals(new PlanPrice(shop).of(named), plan.cost(), "seed " + seed);
            inOrder(shop, plan, seed);
        }
    }

    /** Among equal sets an exchange of numbers may move pieces off the reel of an earlier plan: then they keep their numbers. */
    @Test
    void numbers_neverMakeAPlanDearerThatHoldsToAnEarlierOne() {
        for (long seed = 1; seed <= 200; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Packing packing = new GreedyPacker(shop).best();
            Map<String, String> places = new HashMap<>();
            packing.places().forEach((piece, run) -> places.put(piece, run.reel()));
            PackingProblem again = shop.withEarlier(places);
            CuttingOrder order = new CuttingOrder(again);
            CutPlan plan = order.numbered(packing);
            assertTrue(plan.cost().compareTo(order.plan(packing).cost()) <= 0, "seed " + seed);
            assertEquals(List.of(), PlanChecker.check(again, plan), "seed " + seed);
        }
    }

    private static void inOrder(PackingProblem shop, CutPlan plan, long seed) {
        List<String> turns = new OrderOfWork(shop)
                .of(plan.draws()).stream()
                        .flatMap(draw -> draw.cuts().stream())
                        .map(Cut::piece)
                        .toList();
        for (List<Piece> equals : new EqualPieces(shop).groups()) {
            List<String> cut = equals.stream()
                    .map(Piece::id)
                    .filter(id -> shop.earlier().isEmpty())
                    .filter(turns::contains)
                    .toList();
            List<String> asCut = turns.stream().filter(cut::contains).toList();
            assertEquals(cut.stream().sorted(NaturalOrder.IDS).toList(), asCut, "seed " + seed);
        }
    }

    private static CutPlan numbered(PackingProblem shop, Map<String, String> reels) {
        Map<String, RunId> places = new HashMap<>();
        reels.forEach((piece, reel) -> places.put(piece, new RunId(reel, 1)));
        return new CuttingOrder(shop).numbered(new Packing(places));
    }

    private static List<String> cutsOn(String reel, CutPlan plan) {
        return plan.draws().stream()
                .filter(draw -> draw.reel().equals(reel))
                .flatMap(draw -> draw.cuts().stream())
                .map(Cut::piece)
                .toList();
    }
}
