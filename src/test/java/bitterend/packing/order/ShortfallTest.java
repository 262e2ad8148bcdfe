package bitterend.packing.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece.Bond;
import bitterend.demand.Piece.Matching;
import bitterend.measure.Length;
import bitterend.packing.CutPlan;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceSketch;
import bitterend.packing.ReelSketch;
import bitterend.packing.RunId;
import bitterend.packing.Sketch;
import bitterend.packing.Unplanned;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.shops.PlainShop;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import bitterend.stock.Reel.Custody;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What would help is what helps: followed to the letter it frees the work that it is said of. A cut loses a centimetre. */
final class ShortfallTest {
    private static final String WHOLE_PAIR = "receive at least 8.010 m of R in one length, for set S (2 pieces)";

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
                "receive at least 12.020 m of R in one length, for set S (3 pieces)",
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

    /** What is pinned to an issued reel stays there whether its sheet is posted or not. */
    @Test
    void sheet_isToBePostedOnlyWhereThatLeavesRoom() {
        Sketch sketch = new Sketch()
                .with(ReelSketch.reel("K1", 9_000))
                .with(PieceSketch.piece("P1", 3_000).order("1"), "K1", 1)
                .issue("P1", "K1", 1);
        assertEquals("receive at least 7.000 m of white in one length", helpFor(sketch, "P2", 7_000));
        assertEquals(
                "post the sheet of K1, or call it back with plan --withdraw, or receive at least 5.000 m of white in"
                        + " one length",
                helpFor(sketch, "P3", 5_000));
    }

    private static String helpFor(Sketch sketch, String piece, long mm) {
        PackingProblem asked =
                sketch.with(PieceSketch.piece(piece, mm).order(piece)).problem();
        return new CuttingOrder(asked)
                .plan(sketch.packing()).unplanned().stream()
                        .filter(each -> each.piece().equals(piece))
                        .findFirst()
                        .orElseThrow()
                        .help()
                        .exact();
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

    /** To put off work of today for work of Friday is a decision: it is said which piece is the more urgent one. */
    @Test
    void moreUrgentWork_isPutOffKnowingly() {
        PlainShop shop = PlainShop.of(10, 1_000)
                .reel("A", 9_000)
                .piece("1/1.1", "1", 8_000, PlainShop.DAY.plusDays(4), Matching.NONE)
                .piece("2/1.1", "2", 2_000, PlainShop.DAY, Matching.NONE)
                .piece("3/1.1", "3", 4_000, PlainShop.DAY.plusDays(4), Matching.NONE);
        RunId a = new RunId("A", 1);
        assertEquals(
                List.of("receive at least 8.000 m of R in one length, or put off 2/1.1 (more urgent), 3/1.1"),
                helps(shop, Map.of("2/1.1", a, "3/1.1", a)));
    }

    /** Rope in the house is named that a word of the office would free, and that is what would help. */
    @Test
    void ropeOnHoldOrKeptForOthers_isNamed() {
        PlainShop shop = PlainShop.of(10, 1_000)
                .reel("A", 9_000)
                .reel(kept("B", 7_000, Custody.FREE.onHold()))
                .reel(kept("C", 7_000, Custody.FREE.reservedFor("9")))
                .pieces("1", 6_000, 2);
        Unplanned left = unplanned(shop, Map.of("1/1.1", new RunId("A", 1)));
        assertEquals(
                "1/1.2: what the other work leaves is too short for it: it takes 6.000 m and at most 2.990 m is left in one"
                        + " run; 6.000 m of that rope went to 1/1.1; B is on hold; C is kept for order 9",
                left.reason().sentence().exact());
        assertEquals(
                "release one of B, C, or receive at least 6.000 m of R in one length",
                left.help().exact());
    }

    /** Too short, on hold and kept for another, or full of the work that it is kept for: to free such rope helps nobody. */
    @Test
    void ropeThatWouldNotHelp_isNotNamed() {
        PlainShop shop = PlainShop.of(10, 1_000)
                .reel("A", 9_000)
                .reel(kept("B", 5_000, Custody.FREE.onHold()))
                .reel(kept("C", 7_000, Custody.FREE.reservedFor("9").onHold()))
                .reel(kept("D", 7_000, Custody.FREE.reservedFor("8")))
                .pieces("1", 6_000, 2)
                .pieces("8", 3_000, 1);
        Unplanned left = unplanned(shop, Map.of("1/1.1", new RunId("A", 1), "8/1.1", new RunId("D", 1)));
        assertTrue(left.reason().sentence().exact().endsWith("went to 1/1.1"), left.toString());
        assertEquals("receive at least 6.000 m of R in one length", left.help().exact());
    }

    /** A reel on hold helps a set only where it holds all of it. */
    @Test
    void ropeOnHold_isNamedForASetThatItHoldsWhole() {
        Matching set = new Matching("S", Bond.ONE_REEL);
        PlainShop shop = PlainShop.of(10, 1_000)
                .reel("A", 6_000)
                .reel(kept("B", 7_000, Custody.FREE.onHold()))
                .piece("1/1.1-1", "1", 4_000, PlainShop.DAY, set)
                .piece("1/1.1-2", "1", 4_000, PlainShop.DAY, set);
        assertEquals(
                "receive at least 8.010 m of R in one length, for set S (2 pieces)",
                unplanned(shop, Map.of()).help().exact());
        assertEquals(
                "release C, or receive at least 8.010 m of R in one length, for set S (2 pieces)",
                unplanned(shop.reel(kept("C", 8_010, Custody.FREE.onHold())), Map.of())
                        .help()
                        .exact());
    }

    /** The same where no reel is open to it at all. */
    @Test
    void onlyReelOnHold_isNamedForASetThatItHoldsWhole() {
        Matching set = new Matching("S", Bond.ONE_REEL);
        for (int length : new int[] {5_000, 8_010}) {
            PlainShop shop = PlainShop.of(10, 1_000)
                    .reel(kept("B", length, Custody.FREE.onHold()))
                    .piece("1/1.1-1", "1", 4_000, PlainShop.DAY, set)
                    .piece("1/1.1-2", "1", 4_000, PlainShop.DAY, set);
            String help = unplanned(shop, Map.of()).help().exact();
            assertEquals(length == 8_010, help.startsWith("release B, or "), help);
            assertTrue(help.endsWith(WHOLE_PAIR), help);
        }
    }

    /** Nobody buys rope that may be there: the reel that needs least more than is certain of it is counted first. */
    @Test
    void ropeThatIsProbablyThere_isCountedBeforeAnyIsReceived() {
        PlainShop shop = PlainShop.of(10, 1_000)
                .reel(uncertain("A", 9_000, 1_000))
                .reel(uncertain("B", 6_500, 1_000))
                .pieces("1", 6_000, 1)
                .pieces("2", 2_490, 1);
        String receive = "receive at least 6.000 m of R in one length";
        Map<String, RunId> onA = Map.of("2/1.1", new RunId("A", 1));
        assertEquals(
                List.of("6.500 m is probably left on A beside the other work: count it first (stock count), or "
                        + receive + ", or put off 2/1.1"),
                helps(shop, onA));
        PlainShop tooShort = PlainShop.of(10, 1_000)
                .reel(uncertain("A", 8_499, 1_000))
                .reel(uncertain("B", 6_500, 1_000).withCustody(Custody.FREE.reservedFor("9")))
                .pieces("1", 6_000, 1)
                .pieces("2", 2_490, 1);
        assertEquals(List.of(receive + ", or put off 2/1.1"), helps(tooShort, onA));
    }

    /** All of a set, with its cuts, on rope beyond a flaw of which nothing is certain. */
    @ParameterizedTest
    @EnumSource(
            value = Bond.class,
            names = {"ONE_LOT", "ONE_REEL"})
    void ropeThatIsProbablyThere_isCountedForASetThatItHoldsWhole(Bond bond) {
        Matching set = new Matching("S", bond);
        for (long length : new long[] {12_009, 12_010}) {
            Reel reel = uncertain("A", length, 9_000)
                    .withFlaws(List.of(new Flaw(new Length(3_000), new Length(4_000), Length.ZERO, "join")));
            PlainShop shop = PlainShop.of(10, 1_000)
                    .reel(reel)
                    .piece("1/1.1-1", "1", 4_000, PlainShop.DAY, set)
                    .piece("1/1.1-2", "1", 4_000, PlainShop.DAY, set);
            String first = "8.010 m is probably left on A beside the other work: count it first (stock count), or ";
            assertEquals(
                    (length == 12_010 ? first : "") + WHOLE_PAIR,
                    unplanned(shop, Map.of()).help().exact());
        }
    }

    private static Reel uncertain(String id, long lengthMm, long lessMm) {
        return PlainShop.of(10, 1_000)
                .reel(id, lengthMm)
                .problem()
                .reel(id)
                .withContents(new Reel.Contents(
                        new Length(lengthMm), new Length(lessMm), Length.ZERO, Length.ZERO, Reel.Known.METERED));
    }

    /** Whatever stands in the way, what is received for one piece of a set alone would help nobody. */
    @ParameterizedTest
    @EnumSource(
            value = Bond.class,
            names = {"ONE_LOT", "ONE_REEL"})
    void set_isToldItsWholeLengthBeforeAnyRopeIsReceived(Bond bond) {
        Matching set = new Matching("S", bond);
        PlainShop shop = PlainShop.of(10, 1_000)
                .piece("1/1.1-1", "1", 4_000, PlainShop.DAY, set)
                .piece("1/1.1-2", "1", 4_000, PlainShop.DAY, set);
        assertEquals(WHOLE_PAIR, unplanned(shop, Map.of()).help().exact());
        assertEquals(
                WHOLE_PAIR, unplanned(shop.reel("A", 3_000), Map.of()).help().exact());
        assertEquals(
                WHOLE_PAIR, unplanned(shop.reel("B", 4_600), Map.of()).help().exact());
        assertEquals(2, planned(shop.reel("C", 8_010)));
    }

    private static Unplanned unplanned(PlainShop shop, Map<String, RunId> places) {
        return new CuttingOrder(shop.problem())
                .plan(new Packing(places))
                .unplanned()
                .get(0);
    }

    private static Reel kept(String id, long lengthMm, Custody custody) {
        return PlainShop.of(10, 1_000).reel(id, lengthMm).problem().reel(id).withCustody(custody);
    }

    private static List<String> helps(PlainShop shop, Map<String, RunId> places) {
        return new CuttingOrder(shop.problem())
                .plan(new Packing(places)).unplanned().stream()
                        .map(piece -> piece.help().exact())
                        .toList();
    }
}
