package bitterend.demand;

import static bitterend.demand.Bench.amount;
import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.BenchTools;
import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Kind;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Term;
import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Yardstick;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a second source in print corrects or contradicts a first one: each with its source. */
final class CorrectionsTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final Rope WIRE = Bench.rope(Kinds.WIRE, Kinds.STEEL, mm(12));
    private static final Rope BRAID = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
    private static final Rope HMPE = Bench.rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));

    /** Five full sets of tucks on each side: published handbooks [9], p. 97, and [8], p. 40; four at least: 29 CFR 1926.251(d). */
    @ParameterizedTest
    @CsvSource({
        "THREE_STRAND, short-splice, 8, 1, 1",
        "THREE_STRAND, short-splice, 10, 1, 0",
        "THREE_STRAND, short-splice, 6, 0, 0",
        "TWELVE_STRAND, twelve-strand-join, 8, 1, 1",
        "TWELVE_STRAND, twelve-strand-join, 10, 1, 0"
    })
    void joins_ofSyntheticsAskFiveTucksOnEachSide(
            @Kind Construction construction, String id, int tucks, int pieces, int remarks) {
        Rope rope = Bench.rope(construction, Kinds.POLYESTER, mm(12));
        Demanded demanded = demanded(BOOK, rope, end(id, EyeSpec.NONE, tucks), Terms.USUAL);
        assertEquals(pieces, demanded.pieces().size(), demanded.findings()::toString);
        assertEquals(remarks, demanded.remarks().size());
    }

    /** TB 55-1900-232-10 p. 2-52: swaging is not for fibre-core rope; a pressed sleeve is swaged too. */
    @ParameterizedTest
    @CsvSource({"fibre core, 0", "IWRC, 1"})
    void sleeve_isNotForFibreCoreWire(String core, int pieces) {
        SpliceBook book = Bench.change(BOOK, "wire-sleeve-eye", row -> Bench.withLength(row, What.TAIL, 60));
        Demanded demanded =
                demanded(book, wire(core, FineLength.ZERO), EndSpec.of("wire-sleeve-eye", flat(300)), Terms.USUAL);
        assertEquals(pieces, demanded.pieces().size());
        assertEquals(pieces == 0, said(demanded, true).contains("TB 55-1900-232-10 p. 2-52"));
        assertEquals(pieces == 0, said(demanded, true).contains("a hand-tucked or a poured end"));
    }

    /** EN 13414-1 as quoted: four lays; 12 mm wire with a lay of 6.5 D: 312 mm round, 156 mm laid flat. */
    @Test
    void softPressedEye_goesByTheLayOfItsRope() {
        SpliceBook book = Bench.change(BOOK, "wire-sleeve-eye", row -> Bench.withLength(row, What.TAIL, 60));
        Rope typed = wire("IWRC", fine(78));
        assertEquals(
                0,
                lifted(book, typed, EndSpec.of("wire-sleeve-eye", flat(155)))
                        .pieces()
                        .size());
        assertEquals(
                1,
                lifted(book, typed, EndSpec.of("wire-sleeve-eye", flat(156)))
                        .pieces()
                        .size());
    }

    /** Tail of a double braid: a fid of 21 D, 252 mm, or 24 D, 288 mm (published handbook [9], p. 101); the margin covers the difference. */
    @Test
    void doubleBraid_hasALongerForm() {
        EndSpec fid = EndSpec.of("double-braid-eye", flat(300));
        EndSpec longer = withTail("double-braid-eye", diameters(24));
        Demanded usual = demanded(BOOK, BRAID, fid, Terms.USUAL);
        Demanded chosen = demanded(BOOK, BRAID, longer, Terms.USUAL);
        assertEquals(fine(252), amount(usual.derivations().get(0), "end A: tail"));
        assertEquals(fine(36), amount(usual.derivations().get(0), "end A: margin of the take-up"));
        assertEquals(fine(288), amount(chosen.derivations().get(0), "end A: tail"));
        assertTrue(chosen.derivations().get(0).lines().stream()
                .noneMatch(line -> line.label().contains("margin")));
        assertEquals(usual.pieces().get(0).cut(), chosen.pieces().get(0).cut());
        SpliceLayout layout = chosen.layouts().get(0);
        assertEquals(fine(288), layout.marks().get(0).distance());
        // the cover comes out a tail and two short sections of 94.5 mm below the throat
        assertEquals(
                fine(288 + 94).plus(new FineLength(5_000)),
                layout.marks().get(layout.marks().size() - 1).distance());
    }

    /** 1/2 in: 11 in by the tool of the inch bench, 12 in by 24 diameters. */
    @Test
    void doubleBraid_ofHalfAnInchTakesElevenOrTwelve() {
        SpliceBook inch = BOOK.on(BenchTools.INCH);
        Rope rope = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, new Diameter(127_000));
        Demanded fid = demanded(inch, rope, EndSpec.of("double-braid-eye", flat(300)), Terms.USUAL);
        assertEquals(new FineLength(11 * 254_000), amount(fid.derivations().get(0), "end A: tail"));
        Demanded longer = demanded(inch, rope, withTail("double-braid-eye", diameters(24)), Terms.USUAL);
        assertEquals(new FineLength(12 * 254_000), amount(longer.derivations().get(0), "end A: tail"));
    }

    /** 72 D is the least (published handbook [9], p. 105), 100 D is printed too (a fibre maker's general data). */
    @Test
    void hmpe_welcomesALongerTail() {
        Demanded longer = demanded(BOOK, HMPE, withTail("bury-eye-hmpe", diameters(100)), Terms.USUAL);
        assertEquals(fine(1_200), amount(longer.derivations().get(0), "end A: tail"));
        SpliceLayout layout = longer.layouts().get(0);
        assertEquals(fine(1_200), mark(layout, "tail mark").distance());
        assertEquals(fine(400), mark(layout, "start of the taper").distance());
        assertEquals(fine(1_800), mark(layout, "tool comes out").distance());
        assertTrue(layout.counts()
                .contains(Sentence.of("taper a quarter to a third of the tail: common practice, no source")));
        assertEquals(
                "bury-eye-hmpe length 300 mm tail 100 diameters / plain",
                longer.pieces().get(0).ends());
    }

    @Test
    void tail_ofAnOrderIsNeverShorterThanTheRows() {
        Demanded shorter = demanded(BOOK, HMPE, withTail("bury-eye-hmpe", diameters(71)), Terms.USUAL);
        assertEquals(List.of(), shorter.pieces());
        assertTrue(said(shorter, true).contains("at least 864 mm, its usual tail"), said(shorter, true));
    }

    /** A shop's own row below 72 D: refused for lifting, warned of otherwise. */
    @Test
    void hmpe_belowTheLeastOfPrintIsTold() {
        SpliceBook own = Bench.change(BOOK, "bury-eye-hmpe", row -> Bench.withLength(row, What.TAIL, 863));
        EndSpec eye = EndSpec.of("bury-eye-hmpe", flat(300));
        assertTrue(said(demanded(own, HMPE, eye, Terms.USUAL), false)
                .contains("at least 864 mm: 72 diameters is the least"));
        assertEquals(List.of(), lifted(own, HMPE, eye).pieces());
        assertTrue(!said(demanded(BOOK, HMPE, eye, Terms.USUAL), false).contains("72 diameters"));
        assertEquals(1, lifted(BOOK, HMPE, eye).pieces().size());
    }

    @Test
    void endWithoutATailOfItsOwn_takesNone() {
        Demanded demanded = demanded(
                BOOK,
                BRAID,
                new EndSpec("end-for-end-join", EyeSpec.NONE, EndSpec.FittingSpec.NONE, tail(diameters(90))),
                Terms.USUAL);
        assertTrue(said(demanded, true).contains("no tail: double-braid end-for-end join takes its own"));
    }

    /** The 15 in of one handbook lie inside of the 12 to 24 in per inch of circumference of others: bibliography [1], [3], [7]. */
    @Test
    void fibreLongSplice_showsThePrintedRange() {
        Rope laid = Bench.rope(Kinds.THREE_STRAND, Kinds.MANILA, mm(24));
        List<Sentence> counts = demanded(BOOK, laid, EndSpec.of("long-splice"), Terms.USUAL)
                .layouts()
                .get(0)
                .counts();
        assertTrue(counts.stream()
                .anyMatch(count -> count.exact().contains("from 12 to 24 in per inch of circumference")));
    }

    /** One strand 22 times the ring's diameter, six rings; three strands 9 times, one ring: published handbooks [1], no. 2866, [2], p. 94. */
    @ParameterizedTest
    @CsvSource({
        "wire-grommet, 'wire grommet, one strand laid six times round', 6",
        "wire-grommet-three-strand, 'wire grommet, three adjacent strands laid round with the heart', 1"
    })
    void wireGrommet_namesItsMethod(String id, String name, int rings) {
        Demanded demanded = model(BOOK, WIRE)
                .pieces(order(12, 1, make(Length.ofMetres(2), EndSpec.of(id), PLAIN), Terms.USUAL, "R"));
        assertEquals(12 / rings, demanded.pieces().size());
        assertEquals(name, demanded.work().get(0).name());
    }

    @Test
    void ropeToChain_namesItsForm() {
        Rope laid = Bench.rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(14));
        assertEquals(
                "rope to chain, long-splice form",
                demanded(BOOK, laid, EndSpec.of("rope-to-chain"), Terms.USUAL)
                        .layouts()
                        .get(0)
                        .name());
    }

    private static Allowance diameters(long count) {
        return new Allowance(List.of(new Term.Multiple(Ratio.of(count), Yardstick.DIAMETER)), Provenance.ORDER);
    }

    private static EndSpec.Options tail(Allowance tail) {
        return new EndSpec.Options(0, false, "", "", tail);
    }

    private static EndSpec withTail(String id, Allowance tail) {
        return new EndSpec(id, flat(300), EndSpec.FittingSpec.NONE, tail(tail));
    }

    private static EndSpec end(String id, EyeSpec eye, int tucks) {
        return new EndSpec(id, eye, EndSpec.FittingSpec.NONE, new EndSpec.Options(tucks, false, "", ""));
    }

    private static Rope wire(String core, FineLength lay) {
        RopeIdentity identity = new RopeIdentity(
                Kinds.WIRE, Kinds.STEEL, core, "", mm(12), WIRE.identity().lay(), "", "", "");
        return new Rope(
                "R", "wire", identity, WIRE.mass(), WIRE.price(), WIRE.cutting(), WIRE.worth(), WIRE.usualReel(), lay);
    }

    private static SpliceLayout.Mark mark(SpliceLayout layout, String name) {
        return layout.marks().stream()
                .filter(mark -> mark.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Demanded demanded(SpliceBook book, Rope rope, EndSpec end, Terms terms) {
        return model(book, rope).pieces(order(1, 1, make(Length.ofMetres(20), end, PLAIN), terms, "R"));
    }

    private static Demanded lifted(SpliceBook book, Rope rope, EndSpec end) {
        return demanded(book, rope, end, new Terms(Piece.Matching.NONE, "", false, Use.LIFTING, "en"));
    }

    private static String said(Demanded demanded, boolean errors) {
        return demanded.findings().stream()
                .filter(finding -> finding.isError() == errors)
                .map(Finding::expected)
                .reduce("", (a, b) -> a + b + "\n");
    }
}
