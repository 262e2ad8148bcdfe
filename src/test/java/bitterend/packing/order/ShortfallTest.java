package bitterend.packing.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.demand.Piece.Bond;
import bitterend.demand.Piece.Matching;
import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.RunId;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.shops.PlainShop;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What would help is what helps: followed to the letter it frees the work that it is said of. A cut loses a centimetre. */
final class ShortfallTest {
    private static PlainShop threeSlings(Bond bond) {
        Matching set = new Matching("S", bond);
        return PlainShop.of(10, 1_000)
                .reel("A", 9_000)
                .piece("1/1.1-1", "1", 4_000, PlainShop.DAY, set)
                .piece("1/1.1-2", "1", 4_000, PlainShop.DAY, set)
                .piece("1/1.1-3", "1", 4_000, PlainShop.DAY, set);
    }

    /** The last of the three is cut at the very end of the rope: two cuts lie between them. */
    @ParameterizedTest
    @EnumSource(
            value = Bond.class,
            names = {"ONE_LOT", "ONE_REEL"})
    void set_isToldTheLengthThatHoldsAllOfIt(Bond bond) {
        CutPlan plan = new CuttingOrder(threeSlings(bond).problem()).plan(Packing.EMPTY);
        assertEquals(3, plan.unplanned().size());
        assertEquals(
                "receive at least 12.020 m of R in one length",
                plan.unplanned().get(0).help().exact());
        assertEquals(3, planned(threeSlings(bond).reel("B", 12_020)));
        // in one lot the reel beside it takes one of them
        assertEquals(bond == Bond.ONE_LOT ? 3 : 0, planned(threeSlings(bond).reel("B", 12_019)));
    }

    private static int planned(PlainShop shop) {
        return new GreedyPacker(shop.problem()).best().places().size();
    }

    /** One of two alike has the rope: were it put off, the other would have it, and nothing were won. */
    @Test
    void pieceOfTheSameLine_isNotToBePutOff() {
        PlainShop shop = PlainShop.of(10, 1_000).reel("A", 9_000).pieces("1", 6_000, 2);
        assertEquals(
                List.of("receive at least 6.000 m of R in one length"),
                helps(shop, Map.of("1/1.1", new RunId("A", 1))));
        assertEquals(
                List.of("receive at least 6.000 m of R in one length, or put off 2/1.1"),
                helps(
                        shop.reel("B", 7_000).pieces("2", 5_000, 1),
                        Map.of("1/1.1", new RunId("A", 1), "2/1.1", new RunId("B", 1))));
    }

    /** Half a set helps nobody: both halves are named, and what both take is free then. */
    @Test
    void set_isPutOffWhole() {
        Matching pair = new Matching("P", Bond.ONE_REEL);
        PlainShop shop = PlainShop.of(10, 1_000)
                .reel("A", 9_000)
                .piece("1/1.1", "1", 6_000, PlainShop.DAY, Matching.NONE)
                .piece("2/1.1", "2", 4_000, PlainShop.DAY, pair)
                .piece("2/1.2", "2", 4_000, PlainShop.DAY, pair);
        RunId a = new RunId("A", 1);
        assertEquals(
                List.of("receive at least 6.000 m of R in one length, or put off 2/1.1, 2/1.2"),
                helps(shop, Map.of("2/1.1", a, "2/1.2", a)));
    }

    private static List<String> helps(PlainShop shop, Map<String, RunId> places) {
        return new CuttingOrder(shop.problem())
                .plan(new Packing(places)).unplanned().stream()
                        .map(piece -> piece.help().exact())
                        .toList();
    }
}
