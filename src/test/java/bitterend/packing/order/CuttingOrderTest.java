package bitterend.packing.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.CutPlan;
import bitterend.packing.LengthBook;
import bitterend.packing.LengthBook.Account;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PieceSketch;
import bitterend.packing.ReelDraw;
import bitterend.packing.ReelSketch;
import bitterend.packing.Rule;
import bitterend.packing.RunDraw;
import bitterend.packing.RunId;
import bitterend.packing.Sketch;
import bitterend.shops.PlainShop;
import bitterend.stock.Flaw;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

final class CuttingOrderTest {
    private static final LocalDate LATER = PlainShop.DAY.plusDays(30);

    @Test
    void sequence_cutsLastWhatIsEasiestToPlaceElsewhere() {
        PackingProblem shop = PlainShop.of(10, 1_000)
                .reel("A", 20_000)
                .reel("B", 6_000)
                .pieces("1", 5_000, 1)
                .pieces("2", 8_000, 1)
                .problem();
        assertEquals(List.of("2/1.1", "1/1.1"), cutsOn("A", shop, allOn("A", 1, shop)));
    }

    @Test
    void sequence_keepsASetTogetherAndCutsWhatIsDueFirst() {
        Piece.Matching pair = new Piece.Matching("pair", Piece.Bond.ONE_LOT);
        PackingProblem shop = PlainShop.of(10, 1_000)
                .reel("A", 20_000)
                .piece("1/1.1", "1", 3_000, LATER, pair)
                .piece("2/1.1", "2", 3_500, LATER.minusDays(9), Piece.Matching.NONE)
                .piece("3/1.1", "3", 4_000, LATER, pair)
                .problem();
        assertEquals(List.of("2/1.1", "3/1.1", "1/1.1"), cutsOn("A", shop, allOn("A", 1, shop)));
    }

    /** Two pieces alike in all else: the pin leaves one of them no other home. */
    @Test
    void sequence_cutsWhatIsPinnedFirst() {
        PackingProblem shop = new Sketch()
                .with(ReelSketch.reel("A", 20_000))
                .with(ReelSketch.reel("B", 6_000))
                .with(PieceSketch.piece("1/1.1", 5_000).order("1"))
                .with(PieceSketch.piece("1/1.2", 5_000).order("1"))
                .pin("1/1.2", "A")
                .problem();
        assertEquals(List.of("1/1.2", "1/1.1"), cutsOn("A", shop, allOn("A", 1, shop)));
    }

    @Test
    void marks_countTheCutLossOfEveryCut() {
        PackingProblem shop =
                PlainShop.of(10, 1_000).reel("A", 9_000).pieces("1", 3_000, 2).problem();
        ReelDraw draw = plan(shop, allOn("A", 1, shop)).draws().get(0);
        assertEquals(
                List.of(
                        new Cut("1/1.1", new Length(0), new Length(3_000)),
                        new Cut("1/1.2", new Length(3_010), new Length(6_010))),
                draw.cuts());
        assertEquals(new Length(2_980), draw.leftOnReel());
        assertEquals(new Length(20), draw.book().cutLoss());
    }

    @Test
    void lastCut_losesOnlyTheRopeThatIsThere() {
        PackingProblem shop =
                PlainShop.of(10, 1_000).reel("A", 6_014).pieces("1", 3_000, 2).problem();
        LengthBook book = plan(shop, allOn("A", 1, shop)).book();
        assertEquals(new Length(14), book.cutLoss());
        assertEquals(Length.ZERO, book.left());
    }

    @Test
    void runBeforeTheOneThatIsCut_comesOffWholeAsRemnantOrScrap() {
        Flaw join = new Flaw(new Length(1_500), new Length(1_600), new Length(50), "join");
        PackingProblem shop = PlainShop.of(10, 1_000)
                .reel("A", 9_000, join)
                .pieces("1", 3_000, 1)
                .problem();
        ReelDraw draw = plan(shop, allOn("A", 2, shop)).draws().get(0);
        RunDraw first = draw.runs().get(0);
        assertEquals(RunDraw.Rest.REMNANT, first.rest());
        assertEquals(new Length(1_450), first.left());
        assertEquals(new Length(1_650), draw.cuts().get(0).from());
        assertEquals(
                LengthBook.EMPTY
                        .with(Account.BEFORE, new Length(9_000))
                        .with(Account.PIECES, new Length(3_000))
                        .with(Account.CUT_LOSS, new Length(10))
                        .with(Account.FLAWS, new Length(200))
                        .with(Account.KEPT, new Length(1_450))
                        .with(Account.LEFT, new Length(4_340)),
                draw.book());
    }

    @Test
    void finishedReel_isScrapDownToItsInnerWraps() {
        Reel reel = new Reel(
                "A",
                "R",
                "L1",
                new Reel.Contents(
                        new Length(5_000), new Length(200), new Length(300), new Length(100), Reel.Known.NOMINAL),
                List.of(),
                Reel.Papers.NONE,
                Reel.Custody.FREE,
                false,
                Reel.Where.UNKNOWN);
        PackingProblem shop =
                PlainShop.of(10, 1_000).reel(reel).pieces("1", 4_000, 1).problem();
        ReelDraw draw = plan(shop, allOn("A", 1, shop)).draws().get(0);
        assertEquals(
                LengthBook.EMPTY
                        .with(Account.BEFORE, new Length(5_000))
                        .with(Account.PIECES, new Length(4_000))
                        .with(Account.CUT_LOSS, new Length(10))
                        .with(Account.LEAD_TRIM, new Length(300))
                        .with(Account.SCRAP, new Length(590))
                        .with(Account.INNER_WRAPS, new Length(100)),
                draw.book());
        assertEquals(RunDraw.Rest.SCRAP, draw.runs().get(0).rest());
    }

    @Test
    void unplannedPiece_isToldTheLongestRunAndWhatWouldHelp() {
        PackingProblem shop =
                PlainShop.of(10, 1_000).reel("A", 9_000).pieces("1", 9_500, 1).problem();
        CutPlan plan = plan(shop, Packing.EMPTY);
        assertEquals(Rule.FITS_THE_RUN, plan.unplanned().get(0).reason().rule());
        assertEquals(
                "1/1.1: it takes 9.500 m and the longest sound run it may use is 9.000 m",
                plan.unplanned().get(0).reason().sentence().exact());
        assertEquals(
                "receive at least 9.500 m of R in one length",
                plan.unplanned().get(0).help().exact());
    }

    @Test
    void unplannedPiece_isToldWhatIsLeftWhenOtherWorkTookTheRope() {
        PackingProblem shop =
                PlainShop.of(10, 1_000).reel("A", 9_000).pieces("1", 6_000, 2).problem();
        CutPlan plan = plan(shop, new Packing(Map.of("1/1.1", new RunId("A", 1))));
        assertEquals(Rule.PLANNED, plan.unplanned().get(0).reason().rule());
        assertTrue(plan.unplanned().get(0).reason().sentence().exact().contains("at most 2.990 m is left"));
    }

    private static CutPlan plan(PackingProblem shop, Packing packing) {
        return new CuttingOrder(shop).plan(packing);
    }

    private static List<String> cutsOn(String reel, PackingProblem shop, Packing packing) {
        return plan(shop, packing).draws().stream()
                .filter(draw -> draw.reel().equals(reel))
                .flatMap(draw -> draw.cuts().stream())
                .map(Cut::piece)
                .toList();
    }

    private static Packing allOn(String reel, int run, PackingProblem shop) {
        Map<String, RunId> places = new HashMap<>();
        shop.pieces().forEach(piece -> places.put(piece.id(), new RunId(reel, run)));
        return new Packing(places);
    }
}
