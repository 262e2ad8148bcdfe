package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.order;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.catalogue.BenchRules;
import bitterend.catalogue.CounterRule;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Handling;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.PartCount;
import bitterend.catalogue.Preparation;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Suits;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.Membership;
import bitterend.demand.Assembly.Terms;
import bitterend.exchange.SplicesJson;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import bitterend.measure.Units;
import bitterend.measure.Written;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The notes below a derivation: the counter, tolerances, what to do before the cut, what a product brought along. */
final class LegNotesTest {
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final EndSpec EYE = EndSpec.of("double-braid-eye", flat(300));
    private static final Length TEN_METRES = Length.ofMetres(10);
    private static final Make BARE = Bench.make(TEN_METRES, PLAIN, PLAIN);
    private static final Rope BRAID = rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
    private static final Suits ANY = Suits.ANY;

    private static final String NO_ANGLE = ": throat angle not checked, no pin or thimble stated";

    @Test
    void plainLeg_hasNoNote() {
        assertEquals(List.of(), notes(book(Ratio.ONE, List.of()), one(BARE)));
    }

    /** 10 m on a counter that shows 1 for 1.002 are reached at 9,980.04 mm, told rounded up. */
    @Test
    void counter_thatReadsTrueIsNotSpokenOf() {
        assertEquals(
                List.of("the counter reads 9981 mm at 10000 mm: true length is 1.002 x its reading"),
                notes(book(new Ratio(1_002, 1_000), List.of()), one(BARE)));
        assertEquals(List.of(), notes(book(Ratio.ONE, List.of()), one(BARE)));
    }

    @Test
    void preparation_isToldWithItsSourceOrHowItIsKnown() {
        Preparation printed = taped(new Provenance("a handbook, p. 1", Grade.HANDBOOK, false));
        assertEquals(
                List.of("before the cut: tape on both sides of the cut: 2 (a handbook, p. 1)"),
                notes(book(Ratio.ONE, List.of(printed)), one(BARE)));
        Preparation practice = taped(new Provenance("", Grade.PRACTICE, false));
        assertEquals(
                List.of("before the cut: tape on both sides of the cut: 2 (common practice, no source)"),
                notes(book(Ratio.ONE, List.of(practice)), one(BARE)));
    }

    @Test
    void tolerances_thatAreStatedAreTold() {
        Asked all = new Asked(millimetres(200), millimetres(10), millimetres(300), List.of());
        Make make = new Make(Written.worked(TEN_METRES), Measuring.USUAL, EYE, PLAIN, Extras.NONE, all);
        assertEquals(
                List.of(
                        "end A" + NO_ANGLE,
                        "finished length: within 200 mm",
                        "end A: eye: within 10 mm",
                        "longest to shortest of the set: within 300 mm"),
                notes(book(Ratio.ONE, List.of()), one(make)));
        Make none = new Make(Written.worked(TEN_METRES), Measuring.USUAL, EYE, PLAIN, Extras.NONE);
        assertEquals(List.of("end A" + NO_ANGLE), notes(book(Ratio.ONE, List.of()), one(none)));
    }

    @Test
    void setTolerance_ofASlingIsOfEachLegAgainstItsOwnLength() {
        Hang hang = new Hang(fine(8_000), fine(6_000), new LegAngle(36_870), "height 8 m spread 12 m", false);
        Asked asked = new Asked(Tolerance.NONE, Tolerance.NONE, millimetres(300), List.of());
        Make make = new Make(Written.worked(TEN_METRES), Measuring.USUAL, EYE, PLAIN, Extras.NONE, asked, hang);
        assertEquals(
                "legs of the sling, each less its ordered length: within 300 mm",
                notes(book(Ratio.ONE, List.of()), one(make)).get(1));
    }

    @Test
    void product_isNamedWithWhatALineTookOver() {
        assertEquals(
                List.of("from product lifeline: rope B12, end a"),
                notes(book(Ratio.ONE, List.of()), ofProduct(List.of("rope B12", "end a"))));
        assertEquals(List.of(), notes(book(Ratio.ONE, List.of()), ofProduct(List.of())));
    }

    /** One piece with a sample for the break test is one length, and no second one of no pieces. */
    @Test
    void sample_ofASinglePieceLeavesNoOtherLength() {
        Extras extras = new Extras(Written.NOTHING, Written.worked(new Length(2_000)));
        Make make = new Make(Written.worked(TEN_METRES), Measuring.USUAL, PLAIN, PLAIN, extras);
        List<Derivation> single = model(book(Ratio.ONE, List.of()), BRAID)
                .pieces(order(1, 1, make, Terms.USUAL, "R"))
                .derivations();
        assertEquals(
                List.of(List.of("100/1.1")),
                single.stream().map(Derivation::pieces).toList());
        assertEquals(12_000, single.get(0).cut().mm());
        assertEquals(
                2,
                model(book(Ratio.ONE, List.of()), BRAID)
                        .pieces(order(2, 1, make, Terms.USUAL, "R"))
                        .derivations()
                        .size());
    }

    /** Half an inch is told in inches where inches are read; ten millimetres stay millimetres, for no sixteenth says them. */
    @Test
    void roundingStep_isToldInTheSystemThatSaysItExactly() {
        assertEquals("to the next 1/2 in", step(new FineLength(127_000), Units.IMPERIAL));
        assertEquals("to the next 12.7 mm", step(new FineLength(127_000), Units.METRIC));
        assertEquals("to the next 10 mm", step(fine(10), Units.IMPERIAL));
        assertEquals("to the next 10 mm", step(fine(10), Units.METRIC));
    }

    private static String step(FineLength toNearest, Units units) {
        Rope stepped = new Rope(
                BRAID.id(),
                BRAID.name(),
                BRAID.identity(),
                BRAID.mass(),
                BRAID.price(),
                new Rope.Cutting(new Length(10), toNearest),
                BRAID.worth(),
                BRAID.usualReel());
        List<Derivation.Line> lines = model(book(Ratio.ONE, List.of()), stepped)
                .pieces(one(BARE))
                .derivations()
                .get(0)
                .lines();
        return lines.get(lines.size() - 1).formula().print(units);
    }

    private static Assembly ofProduct(List<String> inherited) {
        Assembly line = one(BARE);
        return new Assembly(
                line.origin(),
                new Assembly.Ordered(line.ordered().source(), "", "lifeline", 1, 1),
                line.ropes(),
                line.make(),
                line.terms(),
                new Membership("", List.of(), inherited));
    }

    private static Tolerance millimetres(long mm) {
        return new Tolerance(Written.worked(new Length(mm)), Ratio.ZERO);
    }

    private static Preparation taped(Provenance provenance) {
        return new Preparation(
                ANY,
                "tape",
                "tape on both sides of the cut",
                PartCount.of(2),
                Ratio.ZERO,
                Ratio.ZERO,
                Ratio.ZERO,
                provenance);
    }

    private static SpliceBook book(Ratio factor, List<Preparation> preparations) {
        SpliceBook book = SplicesJson.builtIn();
        CounterRule counter =
                new CounterRule(ANY, List.of(), Ratio.ZERO, Length.ofMetres(20), factor, Provenance.ARITHMETIC);
        return new SpliceBook(
                book.fids(),
                book.layTurns(),
                book.terminations(),
                preparations,
                book.clearRope(),
                new BenchRules(List.of(counter), Handling.UNLIMITED),
                book.codes(),
                List.of(),
                List.of());
    }

    private static List<String> notes(SpliceBook book, Assembly assembly) {
        return model(book, BRAID).pieces(assembly).derivations().get(0).notes().stream()
                .map(Sentence::exact)
                .toList();
    }
}
