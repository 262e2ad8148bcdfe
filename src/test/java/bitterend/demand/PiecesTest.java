package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.demand.Piece.Bond;
import bitterend.demand.Piece.Matching;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.Written;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** How order lines become pieces: names, sets, substitutes, extras. */
final class PiecesTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final Rope BRAID = named("B12", Kinds.DOUBLE_BRAID, mm(12));
    private static final Rope THICKER = named("B14", Kinds.DOUBLE_BRAID, mm(14));
    private static final Rope LAID = named("L12", Kinds.THREE_STRAND, mm(12));
    private static final Make EYED = make(Length.ofMetres(10), EndSpec.of("double-braid-eye", flat(300)), PLAIN);

    @Test
    void pieces_areNumberedByAssemblyAndLeg() {
        assertEquals(List.of("100/1.1", "100/1.2"), ids(order(2, 1, EYED, Terms.USUAL, "B12")));
        assertEquals(
                List.of("100/1.1-1", "100/1.1-2", "100/1.2-1", "100/1.2-2"),
                ids(order(2, 2, EYED, Terms.USUAL, "B12")));
    }

    @Test
    void legs_matchOnlyWhenTheOrderSaysSo() {
        assertEquals(List.of(Matching.NONE), matchings(order(2, 2, EYED, Terms.USUAL, "B12")));
        Terms eachAlone = new Terms(new Matching("", Bond.ONE_REEL), "", false, Use.GENERAL);
        assertEquals(
                List.of(new Matching("100/1.1", Bond.ONE_REEL), new Matching("100/1.2", Bond.ONE_REEL)),
                matchings(order(2, 2, EYED, eachAlone, "B12")));
        Terms together = new Terms(new Matching("shrouds", Bond.ONE_LOT), "", false, Use.GENERAL);
        assertEquals(List.of(new Matching("shrouds", Bond.ONE_LOT)), matchings(order(2, 2, EYED, together, "B12")));
    }

    @Test
    void substitute_hasItsOwnCutLength() {
        Piece piece =
                demanded(order(1, 1, EYED, Terms.USUAL, "B12", "B14")).pieces().get(0);
        assertEquals("B12", piece.orderedRope());
        assertEquals(10_784, piece.lengthOn("B12").orElseThrow().mm());
        // C grows by pi mm and a little, tail and take-up by 1.7 x 21 x 2 mm, the margin by 3 x 2 mm
        assertEquals(10_864, piece.lengthOn("B14").orElseThrow().mm());
    }

    @Test
    void substitute_thatCannotBeMadeIsLeftOutWithAWarning() {
        Demanded demanded = demanded(order(1, 1, EYED, Terms.USUAL, "B12", "L12"));
        assertEquals(1, demanded.pieces().get(0).choices().size());
        Finding warning = demanded.findings().get(0);
        assertTrue(!warning.isError() && warning.expected().contains("substitute L12 is left out"), warning::toString);
        assertTrue(
                demanded(order(1, 1, EYED, Terms.USUAL, "L12", "B12")).pieces().isEmpty());
    }

    @Test
    void spare_isOnEveryPieceAndTheSampleOnTheFirst() {
        Extras extras = new Extras(Written.worked(new Length(50)), Written.worked(new Length(2_000)));
        Make make = new Make(EYED.finished(), EYED.measuring(), EYED.endA(), EYED.endB(), extras);
        Demanded demanded = demanded(order(3, 1, make, Terms.USUAL, "B12"));
        assertEquals(
                List.of(12_834L, 10_834L, 10_834L),
                demanded.pieces().stream().map(piece -> piece.cut().mm()).toList());
        assertEquals(
                List.of("100/1.2", "100/1.3"), demanded.derivations().get(1).pieces());
    }

    @Test
    void piece_knowsItsLineAndTheRopesItMayBeCutFrom() {
        Piece piece =
                demanded(order(1, 1, EYED, Terms.USUAL, "B12", "B14")).pieces().get(0);
        assertEquals("100", piece.order());
        assertEquals("100/1", piece.source().lineId());
        assertTrue(piece.isAllowedOn("B14"));
        assertFalse(piece.isAllowedOn("L12"));
        assertEquals(Optional.empty(), piece.lengthOn("L12"));
        assertFalse(piece.isMatched());
        Terms together = new Terms(new Matching("shrouds", Bond.ONE_LOT), "", false, Use.GENERAL);
        assertTrue(demanded(order(1, 1, EYED, together, "B12")).pieces().get(0).isMatched());
    }

    @Test
    void pieces_haveLikeEndsHoweverTheirLengthsAreWritten() {
        Make plain = make(Length.ofMetres(10), PLAIN, PLAIN);
        Piece eyed = demanded(order(1, 1, EYED, Terms.USUAL, "B12")).pieces().get(0);
        assertTrue(eyed.hasEndsOf(
                demanded(order(2, 1, EYED, Terms.USUAL, "B14")).pieces().get(1)));
        assertFalse(eyed.hasEndsOf(
                demanded(order(1, 1, plain, Terms.USUAL, "B12")).pieces().get(0)));
    }

    @Test
    void ends_areInTheWordsOfTheOrder() {
        assertEquals(
                "double-braid-eye length 300 mm / plain",
                demanded(order(1, 1, EYED, Terms.USUAL, "B12")).pieces().get(0).ends());
    }

    @Test
    void work_countsWhatAnEndUsesUp() {
        Rope wire = Bench.rope(Kinds.WIRE, Kinds.STEEL, Diameter.ofMillimetres(19));
        Make clipped = make(Length.ofMetres(10), EndSpec.of("clip-eye", flat(300)), PLAIN);
        List<EndWork> work =
                model(BOOK, wire).pieces(order(1, 1, clipped, Terms.USUAL, "R")).work();
        assertEquals(
                List.of(new EndWork.Picked("wire rope clip", Diameter.ofMillimetres(19), 4)),
                work.get(0).parts());
        assertEquals("end B", work.get(1).end());
    }

    @Test
    void rope_thatIsNotInTheCatalogueIsRefused() {
        Demanded demanded = demanded(order(1, 1, EYED, Terms.USUAL, "B99"));
        assertEquals("rope", demanded.findings().get(0).field());
        assertEquals(List.of(), demanded.pieces());
    }

    private static Demanded demanded(Assembly assembly) {
        return model(BOOK, BRAID, THICKER, LAID).pieces(assembly);
    }

    private static List<String> ids(Assembly assembly) {
        return demanded(assembly).pieces().stream().map(Piece::id).toList();
    }

    private static List<Matching> matchings(Assembly assembly) {
        return demanded(assembly).pieces().stream()
                .map(Piece::matching)
                .distinct()
                .toList();
    }

    private static Rope named(String id, Construction construction, Diameter diameter) {
        Rope rope = Bench.rope(construction, Kinds.POLYESTER, diameter);
        return new Rope(
                id, id, rope.identity(), rope.mass(), rope.price(), rope.cutting(), rope.worth(), rope.usualReel());
    }

    /** Clips, sleeves and twine come in sizes: three of 6 mm and six of 28 mm are no nine of anything. */
    @Test
    void pickList_keepsSizesApart() {
        PickList picks = new PickList();
        for (int mm : new int[] {6, 28}) {
            Rope wire = Bench.rope(Kinds.WIRE, Kinds.STEEL, Diameter.ofMillimetres(mm));
            Make clipped = make(Length.ofMetres(10), EndSpec.of("clip-eye", flat(600)), PLAIN);
            Assembly order = order(1, 1, clipped, Terms.USUAL, "R");
            picks.add(order, model(BOOK, wire).pieces(order));
        }
        assertEquals(
                List.of(
                        new EndWork.Picked("wire rope clip", Diameter.ofMillimetres(6), 3),
                        new EndWork.Picked("wire rope clip", Diameter.ofMillimetres(28), 6)),
                picks.items());
        assertEquals(
                "wire rope clip, for 28 mm rope", picks.items().get(1).words().exact());
    }
}
