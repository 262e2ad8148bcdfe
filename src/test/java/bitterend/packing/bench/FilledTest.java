package bitterend.packing.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.check.Check;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.order.CuttingOrder;
import bitterend.shops.FirstFit;
import bitterend.shops.RandomShop;
import bitterend.shops.ShopSize;
import java.util.List;
import java.util.Map;
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
}
