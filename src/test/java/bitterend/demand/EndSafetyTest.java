package bitterend.demand;

import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.flatOnPin;
import static bitterend.demand.Bench.make;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.Kind;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.RopeIdentity;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Assembly.Terms;
import bitterend.demand.Assembly.Use;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dangerous ends are refused for lifting, with the reason and what would do; in other use they are warned of. */
final class EndSafetyTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final Rope WIRE = Bench.rope(Kinds.WIRE, Kinds.STEEL, mm(12));
    private static final Length TEN_METRES = Length.ofMetres(10);

    /** Slippery fibre: common practice; glued ends: published handbook [5], no. 2006. */
    @ParameterizedTest
    @CsvSource({
        "tuck-eye, TWELVE_STRAND, HMPE, bury-eye-hmpe",
        "tuck-eye, TWELVE_STRAND, ARAMID, none of these ends",
        "bowline, TWELVE_STRAND, HMPE, losses of up to 70 to 75 %",
        "figure-eight-loop, KERNMANTLE, HMPE, bury-eye-hmpe",
        "twelve-strand-join, TWELVE_STRAND, ARAMID, none of these joins",
        "three-strand-eye, THREE_STRAND, HMPE, none of these eyes",
        "eight-strand-eye, EIGHT_STRAND, ARAMID, none of these eyes",
    })
    void slipperyFibre_isRefusedForLiftingAndWarnedOfOtherwise(
            String id, @Kind Construction construction, @Kind Fibre fibre, String words) {
        Rope rope = Bench.rope(construction, fibre, mm(12));
        EndSpec end = id.endsWith("join") ? EndSpec.of(id) : EndSpec.of(id, flat(300));
        Demanded general = demanded(rope, end, Terms.USUAL);
        assertEquals(1, general.pieces().size());
        assertTrue(said(general, false).contains(words), said(general, false));
        Demanded lifting = demanded(rope, end, lifting(""));
        assertEquals(List.of(), lifting.pieces());
        assertTrue(said(lifting, true).contains(words), said(lifting, true));
    }

    @Test
    void pouredSocket_onFibreIsForItsMakerToState() {
        Rope nylon = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.NYLON, mm(12));
        EndSpec socket = new EndSpec(
                "socketed", EyeSpec.NONE, new EndSpec.FittingSpec("", Bench.fine(60)), EndSpec.Options.NONE);
        assertTrue(said(demanded(nylon, socket, lifting("")), true).contains("a spliced eye on a thimble"));
        assertEquals(1, demanded(nylon, socket, Terms.USUAL).pieces().size());
        assertEquals(1, demanded(WIRE, socket, lifting("")).pieces().size());
    }

    @Test
    void sewnEye_isNoEndForLifting() {
        Rope kernmantle = Bench.rope(Kinds.KERNMANTLE, Kinds.NYLON, mm(11));
        EndSpec sewn = EndSpec.of("kernmantle-sewn-eye", flat(100));
        assertTrue(said(demanded(kernmantle, sewn, lifting("")), true).contains("sews under its own approval"));
        assertEquals(1, demanded(kernmantle, sewn, Terms.USUAL).pieces().size());
    }

    /** The longer form is thought to be for used rope. */
    @Test
    void usedDoubleBraid_asksForTheTwoFidForm() {
        Rope braid = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
        Terms own = new Terms(Piece.Matching.NONE, "", true, Use.GENERAL);
        EndSpec oneFid = EndSpec.of("double-braid-eye", flat(300));
        assertTrue(said(demanded(braid, oneFid, own), false).contains("double-braid-eye-two-fid"));
        assertEquals("", said(demanded(braid, oneFid, Terms.USUAL), false));
        Terms ownLifting = new Terms(Piece.Matching.NONE, "", true, Use.LIFTING);
        assertEquals(List.of(), demanded(braid, oneFid, ownLifting).pieces());
    }

    /** TB 55-1900-232-10 p. 2-52: swaging only on wire with an independent wire-rope core. */
    @ParameterizedTest
    @CsvSource({
        "fibre, 0",
        "IWRC, 1",
        "fibre core, 0",
        "strand, 1",
        "FC, 0",
        "NFC, 0",
        "SFC, 0",
        "polypropylene, 0",
        "wire rope, 1"
    })
    void swagedEnd_isNotForFibreCoreWire(String core, int pieces) {
        Demanded demanded = swagedOn(core, Terms.USUAL);
        assertEquals(pieces, demanded.pieces().size());
        assertEquals(pieces == 0, said(demanded, true).contains("TB 55-1900-232-10"));
        assertFalse(said(demanded, false).contains("TB 55-1900-232-10"));
    }

    /** Whoever does not say what the core is of may not lift by a swaged end, and is told otherwise. */
    @ParameterizedTest
    @ValueSource(strings = {"", "type 3"})
    void swagedEnd_asksForTheCore(String core) {
        Demanded general = swagedOn(core, Terms.USUAL);
        assertEquals(1, general.pieces().size());
        assertTrue(said(general, false).contains("a core named in ropes.json"), said(general, false));
        Demanded lifting = swagedOn(core, lifting(""));
        assertEquals(List.of(), lifting.pieces());
        assertTrue(said(lifting, true).contains("a core named in ropes.json"), said(lifting, true));
    }

    private static Demanded swagedOn(String core, Terms terms) {
        RopeIdentity identity = new RopeIdentity(
                Kinds.WIRE, Kinds.STEEL, core, "", mm(12), WIRE.identity().lay(), "", "", "");
        Rope rope = new Rope(
                "R", "wire", identity, WIRE.mass(), WIRE.price(), WIRE.cutting(), WIRE.worth(), WIRE.usualReel());
        EndSpec swaged =
                new EndSpec("swaged", EyeSpec.NONE, new EndSpec.FittingSpec("", Bench.fine(45)), EndSpec.Options.NONE);
        return demanded(rope, swaged, terms);
    }

    /** Inside length laid flat: soft fibre eye 3 D, hand-spliced wire 10 D; common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "three-strand-eye, THREE_STRAND, POLYESTER, 36",
        "double-braid-eye, DOUBLE_BRAID, POLYESTER, 36",
        "bury-eye, TWELVE_STRAND, HMPE, 36",
        "wire-tucked-eye, WIRE, STEEL, 120",
        "clip-eye, WIRE, STEEL, 120",
    })
    void softEye_tooSmallForItsRopeIsTold(String id, @Kind Construction construction, @Kind Fibre fibre, long least) {
        Rope rope = Bench.rope(construction, fibre, mm(12));
        String tooSmall = "at least " + least + " mm laid flat";
        assertTrue(said(demanded(rope, EndSpec.of(id, flat(least - 1)), Terms.USUAL), false)
                .contains(tooSmall));
        assertTrue(!said(demanded(rope, EndSpec.of(id, flat(least)), Terms.USUAL), false)
                .contains(tooSmall));
        Demanded lifting = demanded(rope, EndSpec.of(id, flat(least - 1)), lifting(""));
        assertEquals(List.of(), lifting.pieces());
    }

    /** EN 13414-1 as quoted: circumference at least four lay lengths, 7.5 D each where the lay is not typed: 15 D flat. */
    @Test
    void softPressedEye_hasFourLaysRoundIt() {
        SpliceBook withSleeve = Bench.change(BOOK, "wire-sleeve-eye", row -> Bench.withLength(row, What.TAIL, 60));
        EndSpec small = EndSpec.of("wire-sleeve-eye", flat(179));
        EndSpec large = EndSpec.of("wire-sleeve-eye", flat(180));
        assertTrue(said(demanded(withSleeve, WIRE, small, lifting("en")), true).contains("at least 180 mm laid flat"));
        assertEquals(
                1, demanded(withSleeve, WIRE, large, lifting("en")).pieces().size());
        List<Sentence> asked = demanded(withSleeve, WIRE, large, lifting("en"))
                .findCard()
                .flatMap(SpliceCard::findCode)
                .map(CodeInForce::asks)
                .orElseThrow();
        assertTrue(
                asked.stream().anyMatch(line -> line.exact().contains("lay of the rope from memory")), asked::toString);
    }

    /** Five in all synthetics: published handbook [4], p. 210, published handbook [9], p. 97, published handbook [8], p. 40; fewer than four refused: 29 CFR 1926.251(d). */
    @ParameterizedTest
    @CsvSource({
        "POLYESTER, 4, 1, 1",
        "NYLON, 4, 1, 1",
        "POLYPROPYLENE, 4, 1, 1",
        "NYLON, 5, 1, 0",
        "MANILA, 3, 1, 0",
        "NYLON, 3, 0, 0"
    })
    void tucks_inSyntheticsAreFive(@Kind Fibre fibre, int tucks, int pieces, int remarks) {
        Rope laid = Bench.rope(Kinds.THREE_STRAND, fibre, mm(12));
        EndSpec.Options options = new EndSpec.Options(tucks, false, "", "");
        EndSpec eye = new EndSpec("three-strand-eye", flat(300), EndSpec.FittingSpec.NONE, options);
        Demanded demanded = demanded(laid, eye, Terms.USUAL);
        assertEquals(pieces, demanded.pieces().size());
        assertEquals(remarks, demanded.remarks().size());
    }

    /** 29 CFR 1926.251(c)(4)(i): at least three full tucks in wire. */
    @Test
    void tucks_inWireAreThreeFullOnes() {
        EndSpec.Options two = new EndSpec.Options(2, false, "", "");
        EndSpec eye = new EndSpec("wire-tucked-eye", flat(300), EndSpec.FittingSpec.NONE, two);
        assertTrue(said(demanded(WIRE, eye, lifting("")), true).contains("1926.251(c)(4)(i)"));
    }

    /** EN 13414-1 as quoted: an eye on a fitting always has a thimble; under us it is only warned of. */
    @ParameterizedTest
    @CsvSource({"'', 0", "en, 0", "us, 1"})
    void wireEyeOnAPin_hasAThimble(String code, int pieces) {
        EndSpec soft = EndSpec.of("wire-tucked-eye", flatOnPin(300, 60));
        Demanded demanded = demanded(WIRE, soft, lifting(code));
        assertEquals(pieces, demanded.pieces().size());
        assertTrue(said(demanded, pieces == 0).contains("a thimble in every eye"), demanded.findings()::toString);
    }

    /** 29 CFR 1926.251(d) is a fibre rule; for wire 60 degrees are printed too, and warned of. */
    @Test
    void wideThroat_ofWireIsWarnedOfNeverRefused() {
        EndSpec wide = EndSpec.of("wire-tucked-eye", flatOnPin(300, 150));
        Demanded demanded = demanded(WIRE, wide, lifting("us"));
        assertEquals(1, demanded.pieces().size(), demanded.findings()::toString);
        assertTrue(said(demanded, false).contains("Crane Ordinance"));
    }

    /** At 60 degrees an eye in use is 1 1/2 pins and a rope long: 150 mm pin, 12 mm rope, 237 in use. */
    @Test
    void wideThroat_tellsTheLeastEyeThatWorks() {
        Rope braid = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
        String refusal = said(demanded(braid, EndSpec.of("double-braid-eye", flatOnPin(290, 150)), lifting("")), true);
        assertTrue(refusal.contains("an eye of at least 301 mm laid flat"), refusal);
        assertEquals(
                1,
                demanded(braid, EndSpec.of("double-braid-eye", flatOnPin(301, 150)), lifting(""))
                        .pieces()
                        .size());
    }

    /**
     * Clear rope of wire slings: 10 D (8 CCR 5045(b)), 15 D between tails and 20 D between ferrules (EN 13414-1 as quoted);
     * where no code is stated the larger. 12 mm: 120, 180, 240 mm; room 2 x 36 D, eyes 200 mm.
     */
    @ParameterizedTest
    @CsvSource({"us, 120", "en, 180", "'', 180"})
    void clearRope_ofWireSlingsIsWhatTheCodeAsks(String code, long free) {
        EndSpec tucked = EndSpec.of("wire-tucked-eye", flat(200));
        long shortest = 400 + 864 + free;
        assertEquals(1, sling(shortest, tucked, code).pieces().size());
        Demanded refused = sling(shortest - 1, tucked, code);
        assertEquals(List.of(), refused.pieces());
        assertTrue(said(refused, true).contains("code " + (code.isEmpty() ? "en" : code)), said(refused, true));
    }

    @Test
    void clearRope_betweenFerrulesIsTwentyDiametersUnderEn() {
        SpliceBook withSleeve = Bench.change(BOOK, "wire-sleeve-eye", row -> Bench.withLength(row, What.TAIL, 60));
        EndSpec sleeve = EndSpec.of("wire-sleeve-eye", flat(200));
        Terms en = lifting("en");
        assertEquals(
                1,
                model(withSleeve, WIRE)
                        .pieces(order(1, 1, make(new Length(400 + 120 + 240), sleeve, sleeve), en, "R"))
                        .pieces()
                        .size());
        assertEquals(
                0,
                model(withSleeve, WIRE)
                        .pieces(order(1, 1, make(new Length(400 + 120 + 239), sleeve, sleeve), en, "R"))
                        .pieces()
                        .size());
    }

    @Test
    void code_isNamedWithTheLength() {
        Demanded sling = sling(3_000, EndSpec.of("wire-tucked-eye", flat(200)), "us");
        assertTrue(
                sling.derivations().get(0).notes().stream()
                        .map(Sentence::exact)
                        .toList()
                        .contains(
                                "clear rope between splices and fittings of at least 120 mm: code us (8 CCR 5045(b))"),
                sling.derivations().get(0).notes()::toString);
    }

    @Test
    void code_thatIsNotKnownIsRefused() {
        Finding refusal = demanded(WIRE, EndSpec.of("wire-tucked-eye", flat(200)), lifting("mars"))
                .findings()
                .get(0);
        assertEquals("code", refusal.field());
        assertEquals("the id of a code: us, en", refusal.expected());
    }

    private static Demanded sling(long mm, EndSpec end, String code) {
        return model(BOOK, WIRE).pieces(order(1, 1, make(new Length(mm), end, end), lifting(code), "R"));
    }

    private static Terms lifting(String code) {
        return new Terms(Piece.Matching.NONE, "", false, Use.LIFTING, code);
    }

    private static Demanded demanded(Rope rope, EndSpec end, Terms terms) {
        return demanded(BOOK, rope, end, terms);
    }

    private static Demanded demanded(SpliceBook book, Rope rope, EndSpec end, Terms terms) {
        return model(book, rope).pieces(order(1, 1, make(TEN_METRES, end, PLAIN), terms, "R"));
    }

    /** What is expected instead, by the errors or by the warnings. */
    private static String said(Demanded demanded, boolean errors) {
        return demanded.findings().stream()
                .filter(finding -> finding.isError() == errors)
                .map(Finding::expected)
                .reduce("", (a, b) -> a + b + "\n");
    }
}
