package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.order;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.ClearRope;
import bitterend.catalogue.Codes;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Suits;
import bitterend.catalogue.Term;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.demand.Assembly.WantedMark;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import bitterend.measure.Written;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How much rope lies clear between the ends, who asks for it, and what can be marked on it. */
final class ClearRopeTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Rope WIRE = rope(Kinds.WIRE, Kinds.STEEL, mm(12));
    private static final EndSpec TUCKED = EndSpec.of("wire-tucked-eye", flat(200));
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final Terms LIFTING = new Terms(Piece.Matching.NONE, "", false, Use.LIFTING);
    private static final String CLEAR = "clear rope between splices and fittings of at least ";

    /** The built-in codes ask at most 15 diameters of hand-tucked wire, 180 mm. A shop's row counts where it asks more. */
    @ParameterizedTest
    @CsvSource({"179, 180, code", "180, 180, code", "181, 181, the shop's own row"})
    void shopsRow_countsWhereItAsksMoreThanTheCode(long ofShop, long least, String who) {
        String note = note(with(clear(ofShop, true, Suits.ANY)), LIFTING);
        assertTrue(note.startsWith(CLEAR + least + " mm: " + who), note);
    }

    @Test
    void shopsRow_aloneIsNamed() {
        assertEquals(
                CLEAR + "90 mm: the shop's own row",
                note(with(clear(90, true, Suits.ANY)).with(Codes.NONE), LIFTING));
        assertEquals("", note(with().with(Codes.NONE), LIFTING));
    }

    /** Two eyes of 200 mm and tails of 36 diameters, 864 mm: no more is asked where nothing is lifted. */
    @Test
    void rowForLifting_asksNothingOfOtherUse() {
        assertTrue(refusal(with(clear(500, true, Suits.ANY)), Terms.USUAL).endsWith("at least 1.264 m"));
        assertTrue(refusal(with(clear(500, false, Suits.ANY)), Terms.USUAL)
                .endsWith("(" + CLEAR + "500 mm: the shop's own row): a finished length of at least 1.764 m"));
    }

    @Test
    void rowForOtherRope_asksNothingOfThisOne() {
        Suits fibre = new Suits(Set.of(Kinds.THREE_STRAND), Set.of(), Map.of());
        assertTrue(refusal(with(clear(500, false, fibre)), Terms.USUAL).endsWith("at least 1.264 m"));
        assertTrue(refusal(with(clear(500, false, fibre), clear(300, false, Suits.ANY)), Terms.USUAL)
                .endsWith("at least 1.564 m"));
    }

    /** Clear rope is asked between two that are held: a plain end has none. */
    @Test
    void plainEnd_needsNoClearRope() {
        SpliceBook book = with(clear(500, false, Suits.ANY));
        Demanded demanded = model(book, WIRE).pieces(one(make(new Length(1_264), TUCKED, PLAIN)));
        assertEquals(1, demanded.pieces().size(), demanded.findings()::toString);
    }

    /** Who accepts a throat angle has not accepted less than the working room for the tools. */
    @Test
    void acceptance_isOfWhatItNames() {
        Asked asked = accepting(new Accepted(Accepted.THROAT_ANGLE, "Jansen"), new Accepted(Accepted.CODE, "Okafor"));
        assertEquals("Jansen", asked.acceptedBy(Accepted.THROAT_ANGLE));
        assertEquals("Okafor", asked.acceptedBy(Accepted.CODE));
        assertEquals("", asked.acceptedBy(Accepted.WORKING_ROOM));
    }

    /** 10 m between eyes of 300 mm: clear rope runs from 300 to 9,700 mm, both throats included. */
    @ParameterizedTest
    @CsvSource({"2999999, 0", "3000000, 1", "97000000, 1", "97000001, 0"})
    void mark_liesOnClearRopeUpToTheThroatsThemselves(long units, int pieces) {
        Asked asked = new Asked(
                Tolerance.NONE,
                Tolerance.NONE,
                Tolerance.NONE,
                List.of(new WantedMark("stripe", Ratio.ZERO, new FineLength(units))));
        EndSpec eye = EndSpec.of("double-braid-eye", flat(300));
        Make make = new Make(Written.worked(Length.ofMetres(10)), Measuring.USUAL, eye, eye, Extras.NONE, asked);
        Demanded demanded =
                model(BOOK, rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12))).pieces(one(make));
        assertEquals(pieces, demanded.pieces().size(), demanded.findings()::toString);
        if (pieces == 0) {
            assertEquals(
                    "a place on clear rope, outside the eyes",
                    demanded.findings().get(0).expected());
        }
    }

    private static Asked accepting(Accepted... accepted) {
        return new Asked(Tolerance.NONE, Tolerance.NONE, Tolerance.NONE, List.of(), List.of(accepted));
    }

    private static String refusal(SpliceBook book, Terms terms) {
        List<Finding> findings = model(book, WIRE)
                .pieces(order(1, 1, make(new Length(1_000), TUCKED, TUCKED), terms, "R"))
                .findings();
        return findings.stream()
                .filter(Finding::isError)
                .map(Finding::expected)
                .findFirst()
                .orElseThrow();
    }

    private static String note(SpliceBook book, Terms terms) {
        Demanded demanded = model(book, WIRE).pieces(order(1, 1, make(Length.ofMetres(9), TUCKED, TUCKED), terms, "R"));
        return demanded.derivations().get(0).notes().stream()
                .map(Sentence::exact)
                .filter(note -> note.startsWith(CLEAR))
                .findFirst()
                .orElse("");
    }

    private static ClearRope clear(long mm, boolean lifting, Suits suits) {
        Provenance shop = new Provenance("", Grade.SHOP, true);
        return new ClearRope(suits, lifting, new Allowance(List.of(new Term.Fixed(fine(mm))), shop));
    }

    private static SpliceBook with(ClearRope... rows) {
        return new SpliceBook(
                BOOK.fids(),
                BOOK.layTurns(),
                BOOK.terminations(),
                BOOK.preparations(),
                List.of(rows),
                BOOK.bench(),
                BOOK.codes(),
                BOOK.thimbles(),
                BOOK.fittings());
    }
}
