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
import java.util.Arrays;
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

    /** No two equal pieces are left whose change of places pays, and no stray one that has a cheaper place at home. */
    @Test
    void mended_leavesNoTradeThatPays() {
        int[] looked = new int[2];
        for (long seed = 0; seed < 30; seed++) {
            PackingProblem shop = RandomShop.of(seed, ShopSize.DAY);
            Workbench bench = new Workbench(shop);
            RackState rack = RackState.of(bench, LotMending.mended(bench, new GreedyPacker(shop).firstFit()));
            long cost = bench.prices().of(rack.packing()).millis();
            if (bench.splitOrder == 0) {
                continue;
            }
            for (int one = 0; one < bench.pieces(); one++) {
                for (int other = 0; other < one; other++) {
                    if (mayChange(rack, one, other)) {
                        RackState then = changed(rack, one, other);
                        boolean closer = then.lots.splits() < rack.lots.splits();
                        assertTrue(!closer || cost <= then.millis(), "seed " + seed);
                        looked[0]++;
                    }
                }
                for (int run = 0; run < bench.runs(); run++) {
                    if (isStray(rack, one) && isHome(rack, one, run)) {
                        assertTrue(!rack.fits(one, run) || rack.changeMillis(one, run) >= 0, "seed " + seed);
                        looked[1]++;
                    }
                }
            }
        }
        assertTrue(looked[0] > 100 && looked[1] > 10, Arrays.toString(looked));
    }

    private static boolean isSingle(RackState rack, int piece) {
        return rack.isPlanned(piece) && !rack.bench.isSet(rack.bench.jobOf(piece));
    }

    /** Equal pieces, at least one of an order that is spread over lots. */
    private static boolean mayChange(RackState rack, int one, int other) {
        Workbench bench = rack.bench;
        return isSingle(rack, one)
                && isSingle(rack, other)
                && bench.pieceTable.sizeNumber(one) == bench.pieceTable.sizeNumber(other)
                && bench.isHome(one, rack.runOf(other))
                && bench.isHome(other, rack.runOf(one))
                && bench.ropeOf(rack.runOf(one)) == bench.ropeOf(rack.runOf(other))
                && (isSpread(rack, one) || isSpread(rack, other));
    }

    private static boolean isSpread(RackState rack, int piece) {
        int order = rack.bench.pieceTable.orderOf[piece];
        return order != Workbench.NONE && rack.lots.isSplit(order, lotOf(rack, rack.runOf(piece)));
    }

    private static int lotOf(RackState rack, int run) {
        return rack.bench.runTable.lotOf[run];
    }

    private static RackState changed(RackState rack, int one, int other) {
        int[] places = rack.places();
        int keep = places[one];
        places[one] = places[other];
        places[other] = keep;
        return RackState.of(rack.bench, RackState.packing(rack.bench, places));
    }

    /** A piece that is alone on its lot while its order is on others. */
    private static boolean isStray(RackState rack, int piece) {
        int order = rack.bench.pieceTable.orderOf[piece];
        return isSingle(rack, piece)
                && order != Workbench.NONE
                && rack.lots.isStray(order, lotOf(rack, rack.runOf(piece)));
    }

    /** A run of another lot that its order is on. */
    private static boolean isHome(RackState rack, int piece, int run) {
        return rack.lots.uses(rack.bench.pieceTable.orderOf[piece], lotOf(rack, run))
                && lotOf(rack, run) != lotOf(rack, rack.runOf(piece))
                && rack.bench.ropeOf(run) == rack.bench.ropeOf(rack.runOf(piece));
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
