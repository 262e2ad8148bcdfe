package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.flatOnPin;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kind;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.ThroatAngle;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.demand.EndSpec.FittingSpec;
import bitterend.demand.EndSpec.Options;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.finding.Severity;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What cannot be made is refused with the reason; what can be made but deserves care is told. */
final class FeasibilityTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Rope BRAID = rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
    private static final Rope LAID = rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(12));
    private static final Rope WIRE = rope(Kinds.WIRE, Kinds.STEEL, mm(12));
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final EndSpec EYE = EndSpec.of("double-braid-eye", flat(300));
    private static final Length TEN_METRES = Length.ofMetres(10);

    @Test
    void clearRope_tooShortTellsTheShortestLengthThatWorks() {
        // two eyes of 300 mm and two tails of 252 mm: 1,104 mm
        Finding refusal = onlyError(BRAID, make(new Length(1_000), EYE, EYE));
        assertEquals("length", refusal.field());
        assertEquals(new Length(1_104), shortest(refusal));
        assertMakes(BRAID, make(new Length(1_104), EYE, EYE));
        assertEquals(new Length(1_104), shortest(onlyError(BRAID, make(new Length(1_103), EYE, EYE))));
    }

    /** Two buried tails of 72 D never overlap: 8 mm, 1,152 mm clear; 12 mm, 1,728 mm. Eyes 100 mm. */
    @ParameterizedTest
    @CsvSource({"8, 1352", "12, 1928"})
    void shortStrops_areMadeDownToTwoTailsOfClearRope(long diameter, long shortest) {
        Rope hollow = rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(diameter));
        EndSpec eye = EndSpec.of("bury-eye", flat(100));
        assertMakes(hollow, make(new Length(shortest), eye, eye));
        assertEquals(new Length(shortest), shortest(onlyError(hollow, make(new Length(shortest - 1), eye, eye))));
    }

    /** Room 1 1/2 tails an eye on slack rope (published handbook [9], p. 106): 12 mm, 2,592 mm; take-up 0.18 tails an eye. */
    @Test
    void workingRoom_isWarnedOfOnSlackRopeAndAcceptedByName() {
        Rope hollow = rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));
        EndSpec eye = EndSpec.of("bury-eye", flat(100));
        // 2,592 less 2 x 155.52 of take-up, and two bearings of 100 mm
        assertFalse(warnings(hollow, make(new Length(2_481), eye, eye)).stream()
                .anyMatch(each -> each.expected().contains("working room")));
        Make shorter = make(new Length(2_480), eye, eye);
        assertTrue(warnings(hollow, shorter).stream()
                .anyMatch(each -> each.expected().equals("at least 2592 mm, the working room for the tools")));
        Asked accepted = new Asked(
                Tolerance.NONE,
                Tolerance.NONE,
                Tolerance.NONE,
                List.of(),
                List.of(new Accepted(Accepted.WORKING_ROOM, "Jansen")));
        Make byName = new Make(shorter.finished(), shorter.measuring(), eye, eye, shorter.extras(), accepted);
        assertTrue(warnings(hollow, byName).stream()
                .anyMatch(each -> each.expected().endsWith("; accepted by Jansen")));
    }

    /** No code stated: 15 diameters clear between the tails of wire slings (EN 13414-1 as quoted). 36 D each, eyes 200 mm. */
    @Test
    void clearRope_forLiftingKeepsRopeFreeBetweenSplices() {
        EndSpec tucked = EndSpec.of("wire-tucked-eye", flat(200));
        Make tooShort = make(new Length(1_200), tucked, tucked);
        assertEquals(new Length(400 + 864), shortest(onlyError(WIRE, tooShort)));
        assertEquals(new Length(400 + 864 + 180), shortest(onlyError(WIRE, tooShort, lifting())));
    }

    @Test
    void clearRope_betweenFittingsNeedsSomeRope() {
        EndSpec fork = new EndSpec("swaged", EyeSpec.NONE, new FittingSpec("", Bench.fine(45)), Options.NONE);
        assertEquals(new Length(91), shortest(onlyError(WIRE, make(new Length(90), fork, fork))));
    }

    @Test
    void clearRope_belowTheSlipKnotWarns() {
        // 1.6 m less 300 mm leaves 1,300 mm, 1,476.4 with its take-up; the knot sits at 6 fids, 1,512 mm
        assertTrue(warnings(BRAID, make(new Length(1_600), EYE, PLAIN)).stream()
                .anyMatch(each -> each.expected().contains("slip knot 1512 mm")));
        assertFalse(warnings(BRAID, make(new Length(1_900), EYE, PLAIN)).stream()
                .anyMatch(each -> each.expected().contains("slip knot")));
    }

    /** The second of two eyes has only what the first left free: clear rope and its own take-up less the first tail. */
    @Test
    void slipKnot_ofTheSecondEyeIsJudgedByTheRopeTheFirstLeaves() {
        // 2,088 less two bearings of 300: 1,488 + 176.4 - 252 leaves 1,412.4 mm, and 1,840.8 before the first eye
        List<String> fields = warnings(BRAID, make(new Length(2_088), EYE, EYE)).stream()
                .filter(each -> each.expected().contains("slip knot"))
                .map(Finding::field)
                .toList();
        assertEquals(List.of("end b"), fields);
    }

    @Test
    void doubleBraidEye_isRefusedOnCoreDependentRope() {
        Rope core = rope(Kinds.CORE_DEPENDENT_DOUBLE_BRAID, Kinds.HMPE, mm(12));
        for (String id : List.of("double-braid-eye", "double-braid-eye-two-fid")) {
            Finding refusal = onlyError(core, make(TEN_METRES, EndSpec.of(id, flat(300)), PLAIN));
            assertEquals("end a", refusal.field());
            assertTrue(refusal.expected().contains("core carries it alone"), refusal::toString);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "three-strand-eye, DOUBLE_BRAID, POLYESTER",
        "double-braid-eye, THREE_STRAND, NYLON",
        "bury-eye, EIGHT_STRAND, NYLON",
        "bury-eye-hmpe, TWELVE_STRAND, POLYESTER",
        "tuck-eye, THREE_STRAND, MANILA",
        "eight-strand-eye, TWELVE_STRAND, POLYESTER",
        "clip-eye, THREE_STRAND, NYLON",
        "wire-tucked-eye, KERNMANTLE, NYLON",
        "wedge-socket, THREE_STRAND, POLYESTER",
        "bowline, WIRE, STEEL",
    })
    void termination_thatDoesNotSuitTheRopeIsRefused(String id, @Kind Construction construction, @Kind Fibre fibre) {
        Finding refusal =
                onlyError(rope(construction, fibre, mm(12)), make(TEN_METRES, EndSpec.of(id, flat(300)), PLAIN));
        assertEquals("end a", refusal.field());
        assertTrue(refusal.expected().startsWith("rope "), refusal::toString);
    }

    /** Aramid and natural fibre cannot be cut hot, so they are not sealed. */
    @ParameterizedTest
    @CsvSource({"ARAMID", "MANILA", "SISAL"})
    void sealed_isRefusedWhereHeatDoesNotSeal(@Kind Fibre fibre) {
        Rope rope = rope(Kinds.THREE_STRAND, fibre, mm(12));
        assertEquals(
                "end b",
                onlyError(rope, make(TEN_METRES, PLAIN, EndSpec.of("sealed"))).field());
    }

    @Test
    void buryEye_meansTheRowThatSuitsTheFibre() {
        EndSpec bury = EndSpec.of("bury-eye", flat(300));
        Rope hmpe = rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));
        Rope nylon = rope(Kinds.TWELVE_STRAND, Kinds.NYLON, mm(12));
        assertEquals(Bench.fine(864), Bench.amount(derive(hmpe, make(TEN_METRES, bury, PLAIN)), "end A: tail"));
        assertEquals(Bench.fine(288), Bench.amount(derive(nylon, make(TEN_METRES, bury, PLAIN)), "end A: tail"));
    }

    /** 29 CFR 1926.251(d): at least 3 tucks in natural fibre, 4 in synthetic. */
    @Test
    void tucks_belowTheLeastForTheFibreAreRefused() {
        Rope manila = rope(Kinds.THREE_STRAND, Kinds.MANILA, mm(12));
        assertMakes(manila, make(TEN_METRES, tucked(3), PLAIN));
        assertTrue(
                onlyError(LAID, make(TEN_METRES, tucked(3), PLAIN)).expected().contains("at least 4 tucks"));
        assertTrue(
                onlyError(manila, make(TEN_METRES, tucked(2), PLAIN)).expected().contains("29 CFR 1926.251(d)"));
    }

    @Test
    void tucks_taperedAwayTakeTwoMoreAndNoProjection() {
        EndSpec tapered = new EndSpec("three-strand-eye", flat(300), FittingSpec.NONE, new Options(0, true, "", ""));
        // 6 tucks of 46 mm, against 4 tucks of 46 mm and 72 mm
        assertEquals(Bench.fine(276), Bench.amount(derive(LAID, make(TEN_METRES, tapered, PLAIN)), "end A: tail"));
        assertEquals(Bench.fine(256), Bench.amount(derive(LAID, make(TEN_METRES, tucked(4), PLAIN)), "end A: tail"));
    }

    @Test
    void eye_thatCannotCloseIsRefused() {
        assertTrue(onlyError(BRAID, make(TEN_METRES, EndSpec.of("double-braid-eye", flat(6)), PLAIN))
                .expected()
                .contains("6 mm"));
        assertTrue(onlyError(BRAID, make(TEN_METRES, EndSpec.of("double-braid-eye", flatOnPin(300, 200)), PLAIN))
                .expected()
                .contains("closes on its pin"));
        EyeSpec ratio = new EyeSpec.PinRatio(Ratio.of(1), mm(300));
        assertTrue(onlyError(BRAID, make(TEN_METRES, EndSpec.of("double-braid-eye", ratio), PLAIN))
                .expected()
                .contains("306 mm"));
    }

    /** 29 CFR 1926.251(d): at most 60 degrees. A 300 mm flat eye of 12 mm rope on a 150 mm pin has 60.2. */
    @Test
    void throatAngle_aboveSixtyIsRefusedForLiftingAndAcceptedByNameOtherwise() {
        Make wide = make(TEN_METRES, EndSpec.of("double-braid-eye", flatOnPin(300, 150)), PLAIN);
        assertTrue(onlyError(BRAID, wide, lifting()).found().contains("60.2 degrees"));
        assertTrue(warnings(BRAID, wide).get(0).expected().contains("the name of who accepts it"));
        EndSpec accepted = new EndSpec(
                "double-braid-eye", flatOnPin(300, 150), FittingSpec.NONE, new Options(0, false, "Jansen", ""));
        assertTrue(warnings(BRAID, make(TEN_METRES, accepted, PLAIN))
                .get(0)
                .expected()
                .contains("accepted by Jansen"));
    }

    @ParameterizedTest
    @CsvSource({"100, 1", "50, 0"})
    void throatAngle_aboveThirtyWarns(long pin, int warnings) {
        Make make = make(TEN_METRES, EndSpec.of("double-braid-eye", flatOnPin(300, pin)), PLAIN);
        assertEquals(warnings, warnings(BRAID, make).size());
        assertMakes(BRAID, make);
    }

    @Test
    void throatAngle_isNotCheckedOnThimblesAndKnots() {
        Thimble thimble = new Thimble(
                "T12",
                Bench.fine(130),
                Bench.fine(55),
                Bench.fine(6),
                ThroatAngle.ofDegrees(60),
                mm(11),
                mm(13),
                Provenance.ARITHMETIC);
        SpliceBook book = Bench.withThimbles(BOOK, thimble);
        EndSpec lined = EndSpec.of("double-braid-eye", new EyeSpec.OnThimble("T12", mm(30)));
        Demanded demanded = model(book, BRAID).pieces(order(1, 1, make(TEN_METRES, lined, PLAIN), Terms.USUAL, "R"));
        assertEquals(List.of(), demanded.findings());
        assertEquals(1, demanded.pieces().size());
        assertEquals(List.of(), warnings(BRAID, make(TEN_METRES, EndSpec.of("bowline", flatOnPin(300, 150)), PLAIN)));
    }

    @Test
    void throatAngle_withoutPinOrThimbleIsToldAsNotChecked() {
        Derivation derivation = derive(BRAID, make(TEN_METRES, EYE, PLAIN));
        assertTrue(
                derivation.notes().get(0).exact().contains("throat angle not checked"), derivation.notes()::toString);
    }

    @Test
    void notes_printBothRatiosOfAnEyeOnItsPin() {
        Derivation derivation =
                derive(BRAID, make(TEN_METRES, EndSpec.of("double-braid-eye", flatOnPin(300, 150)), PLAIN));
        String note = derivation.notes().get(0).exact();
        assertTrue(note.contains("1.57 x its pin") && note.contains("300 mm laid flat, 2.00 x"), note);
    }

    @Test
    void thimble_mustBeKnownAndFitTheRope() {
        EndSpec lined = EndSpec.of("double-braid-eye", new EyeSpec.OnThimble("T99", Diameter.NONE));
        assertEquals("T99", onlyError(BRAID, make(TEN_METRES, lined, PLAIN)).found());
        Thimble narrow = new Thimble(
                "T8",
                Bench.fine(90),
                Bench.fine(40),
                Bench.fine(4),
                ThroatAngle.ofDegrees(60),
                mm(7),
                mm(9),
                Provenance.ARITHMETIC);
        EndSpec tight = EndSpec.of("double-braid-eye", new EyeSpec.OnThimble("T8", Diameter.NONE));
        Demanded demanded = model(Bench.withThimbles(BOOK, narrow), BRAID)
                .pieces(order(1, 1, make(TEN_METRES, tight, PLAIN), Terms.USUAL, "R"));
        assertEquals(
                "rope from 7 mm to 9 mm; no thimbles of the book take it",
                demanded.findings().get(0).expected());
    }

    /** 29 CFR 1926.251(c)(4)(iii): eyes of slings never by clips or knots. */
    @Test
    void clipsAndKnots_areRefusedForLifting() {
        Make clips = make(TEN_METRES, EndSpec.of("clip-eye", flat(300)), PLAIN);
        assertTrue(onlyError(WIRE, clips, lifting()).expected().contains("29 CFR 1926.251(c)(4)(iii)"));
        assertMakes(WIRE, clips);
        Make knot = make(TEN_METRES, EndSpec.of("bowline", flat(300)), PLAIN);
        assertTrue(onlyError(BRAID, knot, lifting()).expected().contains("1926.251"));
    }

    @Test
    void diameter_beyondTheTableIsRefused() {
        Rope thick = rope(Kinds.WIRE, Kinds.STEEL, mm(52));
        assertTrue(onlyError(thick, make(TEN_METRES, EndSpec.of("clip-eye", flat(800)), PLAIN))
                .expected()
                .contains("within the table"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"double-braid-eye", "swaged", "no-such-end"})
    void end_withoutWhatItNeedsIsRefused(String id) {
        Rope rope = id.equals("swaged") ? WIRE : BRAID;
        assertEquals(
                "end a",
                onlyError(rope, make(TEN_METRES, EndSpec.of(id), PLAIN)).field());
    }

    @Test
    void batch_onAnUnverifiedTerminationWarns() {
        Make make = make(TEN_METRES, EYE, EYE);
        Demanded twenty = model(BOOK, BRAID).pieces(order(20, 1, make, Terms.USUAL, "R"));
        assertEquals(
                List.of("splice and measure one before cutting the other 19"),
                twenty.findings().stream().map(Finding::expected).toList());
        assertEquals(
                List.of(),
                model(BOOK, BRAID).pieces(order(1, 1, make, Terms.USUAL, "R")).findings());
        Make plain = make(TEN_METRES, PLAIN, PLAIN);
        assertEquals(
                List.of(),
                model(BOOK, BRAID).pieces(order(20, 1, plain, Terms.USUAL, "R")).findings());
    }

    /** Two are the least of which one can be made first; rings are made, not cut. */
    @Test
    void batch_isTwoOrMore() {
        Demanded two = model(BOOK, BRAID).pieces(order(2, 1, make(TEN_METRES, EYE, EYE), Terms.USUAL, "R"));
        assertEquals(
                List.of("2 pieces with double-braid-eye, an unverified termination"),
                two.findings().stream().map(Finding::found).toList());
        assertEquals(
                "splice and measure one before cutting the other 1",
                two.findings().get(0).expected());
        Make ring = make(Length.ofMetres(2), EndSpec.of("wire-grommet"), PLAIN);
        Finding rings = model(BOOK, WIRE)
                .pieces(order(2, 1, ring, Terms.USUAL, "R"))
                .findings()
                .get(0);
        assertEquals("2 rings of wire-grommet, an unverified termination", rings.found());
        assertEquals("splice and measure one before making the other 1", rings.expected());
    }

    private static EndSpec tucked(int tucks) {
        return new EndSpec("three-strand-eye", flat(300), FittingSpec.NONE, new Options(tucks, false, "", ""));
    }

    private static Terms lifting() {
        return new Terms(Piece.Matching.NONE, "", false, Use.LIFTING);
    }

    private static Demanded demanded(Rope rope, Make make, Terms terms) {
        return model(BOOK, rope).pieces(order(1, 1, make, terms, "R"));
    }

    private static Derivation derive(Rope rope, Make make) {
        return demanded(rope, make, Terms.USUAL).derivations().get(0);
    }

    private static void assertMakes(Rope rope, Make make) {
        Demanded demanded = demanded(rope, make, Terms.USUAL);
        assertEquals(1, demanded.pieces().size(), () -> demanded.findings().toString());
        assertTrue(demanded.findings().stream().noneMatch(Finding::isError));
    }

    private static Finding onlyError(Rope rope, Make make) {
        return onlyError(rope, make, Terms.USUAL);
    }

    private static Finding onlyError(Rope rope, Make make, Terms terms) {
        Demanded demanded = demanded(rope, make, terms);
        List<Finding> errors =
                demanded.findings().stream().filter(Finding::isError).toList();
        assertEquals(1, errors.size(), errors::toString);
        assertEquals(List.of(), demanded.pieces());
        assertEquals("orders.csv", errors.get(0).file());
        assertEquals("row 2", errors.get(0).place());
        return errors.get(0);
    }

    private static List<Finding> warnings(Rope rope, Make make) {
        return demanded(rope, make, Terms.USUAL).findings().stream()
                .filter(finding -> finding.severity() == Severity.WARNING)
                .toList();
    }

    private static Length shortest(Finding refusal) {
        Matcher metres = Pattern.compile("at least ([0-9]+)\\.([0-9]{3}) m$").matcher(refusal.expected());
        assertTrue(metres.find(), refusal::toString);
        return new Length(Long.parseLong(metres.group(1) + metres.group(2)));
    }
}
