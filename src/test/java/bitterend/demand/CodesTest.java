package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.flatOnPin;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.ClearRope;
import bitterend.catalogue.CodeRule;
import bitterend.catalogue.CodeRule.Rule;
import bitterend.catalogue.Codes;
import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kind;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Suits;
import bitterend.catalogue.Term;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.measure.Written;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the codes of the regions ask of slings, and which of them holds. */
final class CodesTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final Rope WIRE = Bench.rope(Kinds.WIRE, Kinds.STEEL, mm(12));
    private static final Rope LAID = Bench.rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(12));

    /** 8 CCR 5045(b): a wire ring is at least 96 D round, 1,152 mm of 12 mm wire; read under us, it holds as us in en. */
    @ParameterizedTest
    @CsvSource({"us, code us", "en, code en, as us", "'', code"})
    void ring_isAtLeast96DiametersRound(String code, String named) {
        EndSpec ring = EndSpec.of("wire-grommet");
        Demanded small = lifted(WIRE, 1_151, ring, PLAIN, code);
        assertEquals(List.of(), small.pieces());
        assertTrue(said(small, true).contains("1152 mm round its inside: " + named), said(small, true));
        assertTrue(said(small, true).contains("8 CCR 5045(b)"));
        assertEquals(1, lifted(WIRE, 1_152, ring, PLAIN, code).pieces().size());
        Demanded general = demanded(BOOK, WIRE, 1_151, ring, PLAIN, Use.GENERAL, code);
        assertEquals(1, general.pieces().size());
        assertTrue(said(general, false).contains("1152 mm round its inside"), said(general, false));
    }

    /** 8 CCR 5045(b): between splices and fittings: 12 mm, 120 mm; two bores of 45 mm. */
    @ParameterizedTest
    @CsvSource({"us, 210", "en, 270", "'', 270"})
    void clearRope_isAskedBetweenFittingsToo(String code, long shortest) {
        EndSpec fork =
                new EndSpec("swaged", EyeSpec.NONE, new EndSpec.FittingSpec("", Bench.fine(45)), EndSpec.Options.NONE);
        assertEquals(1, lifted(WIRE, shortest, fork, fork, code).pieces().size());
        Demanded refused = lifted(WIRE, shortest - 1, fork, fork, code);
        assertEquals(List.of(), refused.pieces());
        assertTrue(
                said(refused, true).contains("a finished length of at least 0." + shortest + " m"),
                said(refused, true));
    }

    /** A row of the shop's own asks more than the code and is named, never less: 5 and 12 diameters beside the 10 of us. */
    @ParameterizedTest
    @CsvSource({"60, 210, code us", "144, 234, the shop's own row"})
    void clearRope_ofTheShopsOwnIsNeverBelowTheCode(long own, long shortest, String who) {
        SpliceBook book = new SpliceBook(
                BOOK.fids(),
                BOOK.layTurns(),
                BOOK.terminations(),
                BOOK.preparations(),
                List.of(new ClearRope(Suits.ANY, false, least(own))),
                BOOK.bench(),
                BOOK.codes(),
                BOOK.thimbles(),
                BOOK.fittings());
        EndSpec fork =
                new EndSpec("swaged", EyeSpec.NONE, new EndSpec.FittingSpec("", Bench.fine(45)), EndSpec.Options.NONE);
        assertEquals(
                1,
                demanded(book, WIRE, shortest, fork, fork, Use.LIFTING, "us")
                        .pieces()
                        .size());
        Demanded refused = demanded(book, WIRE, shortest - 1, fork, fork, Use.LIFTING, "us");
        assertEquals(List.of(), refused.pieces());
        assertTrue(said(refused, true).contains(": " + who), said(refused, true));
    }

    private static Allowance least(long mm) {
        return new Allowance(List.of(new Term.Fixed(Bench.fine(mm))), List.of(), Provenance.ORDER);
    }

    /** 29 CFR 1926.251(d) and (c)(4)(i): full tucks at least natural 3, synthetic 4, wire 3. */
    @ParameterizedTest
    @CsvSource({"THREE_STRAND, MANILA, 3", "THREE_STRAND, POLYESTER, 4", "EIGHT_STRAND, NYLON, 4", "WIRE, STEEL, 3"})
    void tucks_areRowsOfTheCode(@Kind Construction construction, @Kind Fibre fibre, int least) {
        Rope rope = Bench.rope(construction, fibre, mm(12));
        List<CodeRule> rules = BOOK.codes().rules().stream()
                .filter(rule -> rule.rule() == Rule.TUCKS && rule.suits().admits(rope))
                .toList();
        assertEquals(2, rules.size());
        rules.forEach(rule -> {
            assertEquals(least, rule.least().count());
            assertTrue(rule.words().contains("29 CFR 1926.251"), rule::words);
        });
    }

    /** A code of the shop's own that asks five full tucks refuses four for lifting and warns otherwise. */
    @Test
    void tucks_ofTheShopsOwnCodeAreRefusedForLifting() {
        SpliceBook book = BOOK.with(with(tucks("harbour", 5)));
        EndSpec four = EndSpec.of("three-strand-eye", flat(300));
        Demanded lifted = demanded(book, LAID, 10_000, four, PLAIN, Use.LIFTING, "harbour");
        assertEquals(List.of(), lifted.pieces());
        assertTrue(said(lifted, true).contains("at least 5 full tucks in polyester: code harbour"), said(lifted, true));
        assertEquals(
                1,
                demanded(book, LAID, 10_000, tucked(5), PLAIN, Use.LIFTING, "harbour")
                        .pieces()
                        .size());
        assertEquals(
                1,
                demanded(book, LAID, 10_000, four, PLAIN, Use.LIFTING, "us")
                        .pieces()
                        .size());
        Demanded unstated = demanded(book, LAID, 10_000, four, PLAIN, Use.LIFTING, "");
        assertEquals(List.of(), unstated.pieces(), "no code is stated: the larger holds");
        Demanded general = demanded(book, LAID, 10_000, four, PLAIN, Use.GENERAL, "harbour");
        assertTrue(said(general, false).contains("at least 5 full tucks"), said(general, false));
    }

    /** A code that says nothing of a thing leaves it to the others: of them the larger holds, and is named. */
    @Test
    void code_withoutARowOfItsOwnTakesTheLargerOfTheOthers() {
        SpliceBook book = BOOK.with(with(tucks("harbour", 5)));
        EndSpec tucked = EndSpec.of("wire-tucked-eye", flat(200));
        Demanded sling = demanded(book, WIRE, 3_000, tucked, tucked, Use.LIFTING, "harbour");
        assertTrue(
                asks(sling)
                        .contains(
                                "clear rope between splices and fittings of at least 180 mm: code en (EN 13414-1 as quoted: between the tails of splices)"),
                asks(sling)::toString);
    }

    /** The order's own code comes before the shop's. */
    @Test
    void order_overridesTheCodeOfTheShop() {
        SpliceBook shop = BOOK.with(BOOK.codes().stating("en"));
        EndSpec soft = EndSpec.of("wire-tucked-eye", flatOnPin(300, 60));
        Demanded byShop = demanded(shop, WIRE, 10_000, soft, PLAIN, Use.LIFTING, "");
        assertTrue(said(byShop, true).contains("a thimble in every eye that goes on a fitting: code en"));
        Demanded byOrder = demanded(shop, WIRE, 10_000, soft, PLAIN, Use.LIFTING, "us");
        assertEquals(1, byOrder.pieces().size());
        assertTrue(said(byOrder, false).contains("code us, as en"), said(byOrder, false));
        assertEquals("us", inForce(byOrder).code());
    }

    @Test
    void code_whichOnlyWarnsIsAcceptedByName() {
        EndSpec soft = EndSpec.of("wire-tucked-eye", flatOnPin(300, 60));
        Assembly.Asked accepted = new Assembly.Asked(
                Tolerance.NONE,
                Tolerance.NONE,
                Tolerance.NONE,
                List.of(),
                List.of(new Accepted(Accepted.CODE, "Jansen")));
        Assembly.Make made = new Assembly.Make(
                Written.worked(Length.ofMetres(10)), Measuring.USUAL, soft, PLAIN, Assembly.Extras.NONE, accepted);
        Demanded demanded = model(BOOK, WIRE).pieces(order(1, 1, made, terms(Use.LIFTING, "us"), "R"));
        assertTrue(said(demanded, false).contains("accepted by Jansen"), said(demanded, false));
    }

    /** 29 CFR 1926.251(c)(4)(i): fewer than three full tucks refused for lifting, otherwise a caution. */
    @Test
    void wire_withTwoFullTucksIsCautionedWhereNothingIsLifted() {
        EndSpec two = new EndSpec(
                "wire-tucked-eye", flat(300), EndSpec.FittingSpec.NONE, new EndSpec.Options(2, false, "", ""));
        assertEquals(List.of(), lifted(WIRE, 10_000, two, PLAIN, "us").pieces());
        Demanded general = demanded(BOOK, WIRE, 10_000, two, PLAIN, Use.GENERAL, "us");
        assertEquals(1, general.pieces().size());
        assertTrue(said(general, false).contains("at least 3 full tucks in steel"), said(general, false));
    }

    /** Hand-tucked wire not where the load can turn: common practice; a sling user's guide. Otherwise a caution on the page. */
    @ParameterizedTest
    @CsvSource({"wire-tucked-eye", "wire-tucked-eye-four-one"})
    void handTuckedWire_isRefusedWhereTheLoadCanTurn(String id) {
        EndSpec eye = EndSpec.of(id, flat(300));
        Demanded turning = demanded(BOOK, WIRE, 10_000, eye, PLAIN, Use.TURNING, "us");
        assertEquals(List.of(), turning.pieces());
        assertTrue(said(turning, true).contains("a load that can turn unlays hand tucks"), said(turning, true));
        Demanded lifting = lifted(WIRE, 10_000, eye, PLAIN, "us");
        assertEquals(1, lifting.pieces().size());
        assertTrue(lifting.layouts().get(0).caution().contains("Not where the load can turn"));
    }

    /** The card names the code, what it asks, and where a row was read. */
    @Test
    void card_namesTheCodeAndWhatItAsks() {
        EndSpec tucked = EndSpec.of("wire-tucked-eye", flat(200));
        CodeInForce code = inForce(lifted(WIRE, 3_000, tucked, tucked, "en"));
        assertEquals("en", code.words());
        assertEquals(
                List.of(
                        "clear rope between splices and fittings of at least 180 mm: code en (EN 13414-1 as quoted: between the tails of splices)",
                        "at least 3 full tucks in steel: code en, as us (29 CFR 1926.251(c)(4)(i))"),
                code.asks().stream().map(Sentence::exact).toList());
        assertEquals(
                "none stated: of all codes the larger figure holds",
                inForce(lifted(WIRE, 3_000, tucked, tucked, "")).words());
        assertTrue(demanded(BOOK, WIRE, 3_000, tucked, tucked, Use.GENERAL, "en")
                .findCard()
                .flatMap(SpliceCard::findCode)
                .isEmpty());
    }

    private static EndSpec tucked(int tucks) {
        return new EndSpec(
                "three-strand-eye", flat(300), EndSpec.FittingSpec.NONE, new EndSpec.Options(tucks, false, "", ""));
    }

    private static CodeRule tucks(String code, int count) {
        return new CodeRule(
                code,
                Rule.TUCKS,
                new Suits(Set.of(), Set.of(Kinds.POLYESTER), Map.of()),
                List.of(),
                false,
                "",
                new CodeRule.Least(count, Allowance.NOTHING));
    }

    private static Codes with(CodeRule own) {
        Codes builtIn = BOOK.codes();
        List<String> ids = new ArrayList<>(builtIn.ids());
        ids.add(own.code());
        List<CodeRule> rules = new ArrayList<>(List.of(own));
        rules.addAll(builtIn.rules());
        return new Codes(ids, rules, "");
    }

    private static List<String> asks(Demanded demanded) {
        return inForce(demanded).asks().stream().map(Sentence::exact).toList();
    }

    private static CodeInForce inForce(Demanded demanded) {
        return demanded.findCard().flatMap(SpliceCard::findCode).orElseThrow();
    }

    private static Terms terms(Use use, String code) {
        return new Terms(Piece.Matching.NONE, "", false, use, code);
    }

    private static Demanded lifted(Rope rope, long mm, EndSpec endA, EndSpec endB, String code) {
        return demanded(BOOK, rope, mm, endA, endB, Use.LIFTING, code);
    }

    private static Demanded demanded(
            SpliceBook book, Rope rope, long mm, EndSpec endA, EndSpec endB, Use use, String code) {
        return model(book, rope).pieces(order(1, 1, make(new Length(mm), endA, endB), terms(use, code), "R"));
    }

    private static String said(Demanded demanded, boolean errors) {
        return demanded.findings().stream()
                .filter(finding -> finding.isError() == errors)
                .map(Finding::expected)
                .reduce("", (a, b) -> a + b + "\n");
    }
}
