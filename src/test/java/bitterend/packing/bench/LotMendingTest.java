package bitterend.packing.bench;

import static bitterend.packing.PieceSketch.piece;
import static bitterend.packing.ReelSketch.reel;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Cost;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Prices;
import bitterend.packing.Sketch;
import bitterend.packing.check.Fault;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.List;
import org.junit.jupiter.api.Test;

final class LotMendingTest {
    @Test
    void packing_isSoundAndNoDearerAndPlansTheSame() {
        int cheaper = 0;
        for (long seed = 0; seed < 100; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.DAY);
            PlanPrice prices = new PlanPrice(shop);
            Packing start = new GreedyPacker(shop).firstFit();
            Workbench bench = new Workbench(shop);
            Packing mended = LotMending.mended(bench, start);
            assertEquals(List.of(), faults(shop, LeastUndone.filled(bench, mended)), "seed " + seed);
            assertEquals(start.places().keySet(), mended.places().keySet(), "seed " + seed);
            int order = prices.of(mended).compareTo(prices.of(start));
            assertTrue(order <= 0, "seed " + seed);
            cheaper += order < 0 ? 1 : 0;
        }
        assertTrue(cheaper > 20, "shops whose lots could be mended: " + cheaper);
    }

    @Test
    void equalPieces_changePlacesUntilEveryOrderIsOnOneLot() {
        Sketch sketch = twoLots()
                .with(piece("A/1.1", 2_000).order("A"), "K1", 1)
                .with(piece("B/1.1", 2_000).order("B"), "K1", 1)
                .with(piece("A/1.2", 2_000).order("A"), "K2", 1)
                .with(piece("B/1.2", 2_000).order("B"), "K2", 1);
        assertEquals(Cost.ZERO, acrossReels(sketch));
    }

    /** No piece is alone on its lot, and no two are equal: nothing but the runs as they are can change places. */
    @Test
    void wholeRuns_changeTheirContents() {
        Sketch sketch = twoLots()
                .with(reel("K3", 9_000).lot("L1"))
                .with(reel("K4", 9_000).lot("L2"))
                .with(piece("A/1.1", 2_000).order("A"), "K1", 1)
                .with(piece("A/2.1", 3_000).order("A"), "K1", 1)
                .with(piece("A/3.1", 4_200).order("A"), "K4", 1)
                .with(piece("A/4.1", 4_300).order("A"), "K4", 1)
                .with(piece("B/1.1", 2_500).order("B"), "K2", 1)
                .with(piece("B/2.1", 3_500).order("B"), "K2", 1)
                .with(piece("B/3.1", 4_000).order("B"), "K3", 1)
                .with(piece("B/4.1", 4_600).order("B"), "K3", 1);
        assertEquals(Cost.ZERO, acrossReels(sketch));
    }

    @Test
    void strayPiece_comesToTheLotOfItsOrder() {
        Sketch sketch = twoLots()
                .with(piece("A/1.1", 2_000).order("A"), "K1", 1)
                .with(piece("A/1.2", 2_000).order("A"), "K1", 1)
                .with(piece("A/1.3", 2_100).order("A"), "K2", 1)
                .with(piece("B/1.1", 2_050).order("B"), "K2", 1)
                .with(piece("C/1.1", 4_900).order("C"), "K1", 1);
        assertEquals(Cost.ZERO, acrossReels(sketch));
    }

    private static List<Fault> faults(PackingProblem shop, Packing packing) {
        return PlanChecker.check(shop, new CuttingOrder(shop).plan(packing));
    }

    private static Sketch twoLots() {
        Prices splitting = new Prices(Cost.ZERO, Cost.ZERO, Cost.ZERO, new Cost(1_000), Cost.ZERO, Cost.ZERO);
        return new Sketch()
                .prices(splitting)
                .with(reel("K1", 9_000).lot("L1"))
                .with(reel("K2", 9_000).lot("L2"));
    }

    private static Cost acrossReels(Sketch sketch) {
        PlanPrice prices = new PlanPrice(sketch.problem());
        assertTrue(prices.acrossReels(sketch.packing()).compareTo(Cost.ZERO) > 0);
        return prices.acrossReels(LotMending.mended(new Workbench(sketch.problem()), sketch.packing()));
    }
}
