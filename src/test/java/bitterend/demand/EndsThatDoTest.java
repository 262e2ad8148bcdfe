package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kind;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.demand.EndSpec.FittingSpec;
import bitterend.demand.EndSpec.Options;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A refused end is told with the ends of the book that the rope could have. */
final class EndsThatDoTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();

    @ParameterizedTest
    @CsvSource({
        "three-strand-eye, TWELVE_STRAND, HMPE, bury-eye-hmpe",
        "double-braid-eye, THREE_STRAND, POLYESTER, three-strand-eye",
        "bury-eye, THREE_STRAND, POLYESTER, three-strand-eye",
        "double-braid-eye, CORE_DEPENDENT_DOUBLE_BRAID, HMPE, core-dependent-eye",
        "tuck-eye, TWELVE_STRAND, HMPE, bury-eye-hmpe"
    })
    void wrongEye_isRefusedWithOnesThatDo(String id, @Kind Construction construction, @Kind Fibre fibre, String does) {
        Rope rope = rope(construction, fibre, mm(10));
        Assembly lifting = Bench.order(
                1, 1, make(Length.ofMetres(30), EndSpec.of(id, flat(100)), EndSpec.of("plain")), lifting(), "R");
        Demanded refused = model(BOOK, rope).pieces(lifting);
        assertEquals(List.of(), refused.pieces());
        assertTrue(said(refused).contains(does), said(refused));
    }

    @Test
    void join_thatNothingReplacesSaysSo() {
        SpliceBook none = BOOK.withTerminations(BOOK.terminations().stream()
                .filter(row -> row.kind() != Termination.Kind.JOIN || row.id().equals("short-splice"))
                .toList());
        Rope eight = rope(Kinds.EIGHT_STRAND, Kinds.POLYESTER, mm(32));
        Demanded refused = model(none, eight)
                .pieces(one(make(Length.ofMetres(30), EndSpec.of("short-splice"), EndSpec.of("plain"))));
        assertTrue(said(refused).contains("no join of splices.json does on R"), said(refused));
    }

    @Test
    void thimble_isRefusedWithThoseWhoseRangeCoversTheRope() {
        Rope rope = rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(14));
        EndSpec small = EndSpec.of("three-strand-eye", new EyeSpec.OnThimble("light-8", Diameter.NONE));
        Demanded refused = model(BOOK, rope).pieces(one(make(Length.ofMetres(5), small, EndSpec.of("plain"))));
        assertTrue(said(refused).contains("thimbles that take it: "), said(refused));
        assertTrue(said(refused).contains("light-16"), said(refused));
    }

    /** A table that does not reach the rope says how far it does, and what else would do. */
    @Test
    void table_thatIsTooShortSaysItsReach() {
        Rope wire = rope(Kinds.WIRE, Kinds.STEEL, mm(90));
        Demanded refused = model(BOOK, wire)
                .pieces(one(make(Length.ofMetres(20), EndSpec.of("clip-eye", flat(900)), EndSpec.of("plain"))));
        assertTrue(said(refused).contains("(rope up to "), said(refused));
        assertTrue(said(refused).contains("on R does: wire-tucked-eye"), said(refused));
    }

    /** What is named is made: every id named for a rope gives a piece of it, in a size that suits. */
    @ParameterizedTest
    @MethodSource("bitterend.catalogue.Kinds#constructions")
    void namedEnds_canBeMade(Construction construction) {
        Fibre fibre = construction.equals(Kinds.WIRE) ? Kinds.STEEL : Kinds.POLYESTER;
        Rope rope = rope(construction, fibre, mm(12));
        EndsThatDo others = new EndsThatDo(BOOK, rope, Assembly.Terms.USUAL);
        Termination asked = BOOK.terminations().stream()
                .filter(row ->
                        row.kind() == Termination.Kind.EYE && !row.suits().admits(rope))
                .findFirst()
                .orElseThrow();
        List<String> refused = new ArrayList<>();
        for (String id : others.ids(asked)) {
            EndSpec end = new EndSpec(id, flat(400), FittingSpec.NONE, Options.NONE);
            Demanded made = model(BOOK, rope).pieces(one(make(Length.ofMetres(60), end, EndSpec.of("plain"))));
            if (made.pieces().isEmpty()) {
                refused.add(id + ": " + said(made));
            }
        }
        assertEquals(List.of(), refused);
        assertFalse(others.ids(asked).contains(asked.id()));
    }

    /** An end without an eye is replaced by its like: a fitting by fittings, a join by joins, never by itself. */
    @Test
    void endWithoutAnEye_isReplacedByItsLike() {
        Rope wire = rope(Kinds.WIRE, Kinds.STEEL, mm(12));
        EndsThatDo onWire = new EndsThatDo(BOOK, wire, Assembly.Terms.USUAL);
        assertEquals(
                List.of("socketed", "poured-terminal", "wedge-socket", "wedge-socket-rotation-resistant"),
                onWire.ids(row("swaged")));
        assertEquals(
                List.of("swaged", "socketed", "poured-terminal"),
                new EndsThatDo(BOOK, wire, lifting()).ids(row("wedge-socket")));
        Rope laid = rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(12));
        EndsThatDo onLaid = new EndsThatDo(BOOK, laid, Assembly.Terms.USUAL);
        assertEquals("on R does: long-splice", onLaid.words(row("short-splice")).replaceAll(", .*", ""));
        assertFalse(onLaid.ids(row("short-splice")).contains("short-splice"));
    }

    @Test
    void dangers_areThoseOfTheRope() {
        Rope slippery = rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));
        Rope laid = rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(12));
        Termination bowline = row("bowline");
        assertEquals(
                List.of(bowline.work().dangers().get(0).words()),
                new EndsThatDo(BOOK, slippery, Assembly.Terms.USUAL).dangers(bowline));
        assertEquals(List.of(), new EndsThatDo(BOOK, laid, Assembly.Terms.USUAL).dangers(bowline));
    }

    private static Termination row(String id) {
        return BOOK.terminations().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Assembly.Terms lifting() {
        return new Assembly.Terms(Piece.Matching.NONE, "", false, Assembly.Use.LIFTING);
    }

    private static String said(Demanded refused) {
        return refused.findings().stream()
                .filter(Finding::isError)
                .map(Finding::expected)
                .toList()
                .toString();
    }
}
