package bitterend.packing.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.check.Check;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.FirstFit;
import bitterend.shops.PlainShop;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

final class FilledTest {

    @Test
    void piecesTakenOutOfAPlan_areFoundRoomAgain() {
        int placed = 0;
        for (long seed = 0; seed < 200; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Map<String, RunId> places = new TreeMap<>(FirstFit.of(shop).places());
            shop.pieces().stream()
                    .filter(piece -> !piece.isMatched() && piece.id().hashCode() % 3 == 0)
                    .forEach(piece -> places.remove(piece.id()));
            Packing filled = LeastUndone.filled(new Workbench(shop), new Packing(places));
            assertTrue(filled.places().entrySet().containsAll(places.entrySet()), "seed " + seed);
            assertEquals(
                    List.of(),
                    PlanChecker.check(shop, new CuttingOrder(shop).plan(filled)).stream()
                            .filter(fault -> fault.check() != Check.SET_WHOLE)
                            .toList(),
                    "seed " + seed);
            placed += filled.places().size() - places.size();
        }
        assertTrue(placed > 100, "hardly anything was placed: " + placed);
    }

    /** A set that finds no room together says nothing about its pieces' kind: a single piece may still find some. */
    @Test
    void singlePiecesLeft_haveNoRoomAnywhere() {
        int sets = 0;
        for (long seed = 0; seed < 300; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.SMALL);
            Workbench bench = new Workbench(shop);
            RackState rack = RackState.of(bench, LeastUndone.filled(bench, new Packing(Map.of())));
            for (int piece = 0; piece < bench.pieces; piece++) {
                sets += !rack.isPlanned(piece) && bench.piece(piece).isMatched() ? 1 : 0;
                for (int run = 0; run < bench.runs; run++) {
                    boolean room = !rack.isPlanned(piece) && !bench.piece(piece).isMatched() && rack.fits(piece, run);
                    assertFalse(room, "seed " + seed + ": " + bench.piece(piece).id());
                }
            }
        }
        assertTrue(sets > 20, "hardly a set was left: " + sets);
    }

    /** Neither reel holds both of a pair off one reel, though either holds the single piece that is as long as they are. */
    @Test
    void pairWithoutRoom_leavesThePieceOfItsKindItsRoom() {
        Piece.Matching pair = new Piece.Matching("P", Piece.Bond.ONE_REEL);
        PackingProblem shop = PlainShop.of(0, 1_000)
                .reel("A", 10_000)
                .reel("B", 7_000)
                .piece("PAIR/1.1", "PAIR", 6_000, PlainShop.DAY, pair)
                .piece("PAIR/1.2", "PAIR", 6_000, PlainShop.DAY, pair)
                .piece("ONE/1.1", "ONE", 6_000, PlainShop.DAY.plusDays(30), Piece.Matching.NONE)
                .problem();
        Packing filled = LeastUndone.filled(new Workbench(shop), new Packing(Map.of()));
        assertEquals(Set.of("ONE/1.1"), filled.places().keySet());
    }
}
