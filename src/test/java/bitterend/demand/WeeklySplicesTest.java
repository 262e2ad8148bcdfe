package bitterend.demand;

import static bitterend.demand.Bench.amount;
import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.order;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Grade;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Assembly.Terms;
import bitterend.exchange.SplicesJson;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Written;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Splices that lofts make weekly and that no handbook gives lengths for: hand computations from the figures of their rows. */
final class WeeklySplicesTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Rope HMPE = Bench.rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(8));
    private static final EndSpec PLAIN = EndSpec.of("plain");

    /**
     * 8 mm, an eye of 120 mm laid flat: tail 75 x 8 = 600, take-up 0.18 x 600 + 3 x 8 = 132; round the eye as in
     * the eye without a lock.
     */
    @Test
    void lockedEye_buriesSeventyTwoDiametersAndPassesThrough() {
        Derivation derivation = only(HMPE, Bench.make(new Length(3_000), EndSpec.of("locked-eye", flat(120)), PLAIN));
        assertEquals(fine(600), amount(derivation, "end A: tail"));
        assertEquals(fine(132), amount(derivation, "end A: take-up"));
        Derivation bury = only(HMPE, Bench.make(new Length(3_000), EndSpec.of("bury-eye-hmpe", flat(120)), PLAIN));
        assertEquals(amount(bury, "end A: round the eye"), amount(derivation, "end A: round the eye"));
    }

    /** 8 mm: each rope gives a tail of 576 and 0.18 of it, 103.68. */
    @Test
    void endToEndBury_takesRopeFromBoth() {
        Derivation derivation = only(HMPE, Bench.make(new Length(9_000), EndSpec.of("bury-join"), PLAIN));
        assertEquals(fine(576), amount(derivation, "end A: tail"));
        assertEquals(new FineLength(1_036_800), amount(derivation, "end A: take-up"));
    }

    /** 8 mm, 2 m round: 2,000 + 144 x 8 = 1,152 + 0.18 x 1,152 = 207.36: 3,359.36. Two buries want 1,152 of the ring. */
    @Test
    void endlessLoop_isItsRoundAndTwoBuries() {
        assertEquals(new Length(3_360), only(HMPE, ring(2_000, "endless-loop")).cut());
        assertTrue(pieces(HMPE, ring(1_152, "endless-loop")).pieces().size() == 1);
        // a ring has no other end, and twelve strands no core to hold
        assertTrue(
                pieces(HMPE, ring(1_152, "endless-loop")).findings().stream()
                        .noneMatch(finding -> finding.toString().contains("slip knot")),
                "a slip knot in a ring");
        Demanded short1 = pieces(HMPE, ring(1_151, "endless-loop"));
        assertEquals(List.of(), short1.pieces());
        assertTrue(short1.findings().get(0).isError());
    }

    /** 6 mm, 470 mm round: twice 470 and 160 x 6 = 960: 1,900 mm. */
    @Test
    void softShackle_isTwiceItsRoundAndItsButton() {
        Rope six = Bench.rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(6));
        assertEquals(new Length(1_900), only(six, ring(470, "soft-shackle")).cut());
    }

    /** 7 mm, 1.2 m round: 1,200 + 40 x 7 + 20 x 7 = 1,620 mm. */
    @Test
    void prusikLoop_isItsRoundItsKnotAndTwoTails() {
        Rope cord = Bench.rope(Kinds.KERNMANTLE, Kinds.NYLON, mm(7));
        assertEquals(new Length(1_620), only(cord, ring(1_200, "prusik-loop")).cut());
    }

    /** 10 mm, 12 m to the knot: 15 x 10 + 8 x 10 = 230 mm more. */
    @Test
    void stopperKnot_standsBeyondTheFinishedLength() {
        Rope braid = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(10));
        assertEquals(
                new Length(12_230),
                only(braid, Bench.make(Length.ofMetres(12), EndSpec.of("stopper-knot"), PLAIN))
                        .cut());
    }

    /** 16 mm on 6x36 with a steel core: 18 x 16 = 288 mm under the sleeve and 24 of take-up. */
    @Test
    void laidBackEye_leavesItsStrandsUnderTheSleeve() {
        Rope wire = Bench.rope(Kinds.WIRE, Kinds.STEEL, mm(16));
        Derivation derivation =
                only(wire, Bench.make(new Length(4_000), EndSpec.of("wire-laid-back-eye", flat(300)), PLAIN));
        assertEquals(fine(288), amount(derivation, "end A: tail"));
        assertEquals(fine(24), amount(derivation, "end A: take-up"));
    }

    /** 10 mm hollow polypropylene: 36 x 10 = 360 and 0.23 of it, 82.8; 4-strand hemp of 24 mm, three tucks: 4.5 x 24 x 3 = 324. */
    @Test
    void newConstructions_haveEyesOfTheirOwn() {
        Rope hollow = Bench.rope(Kinds.HOLLOW_BRAID, Kinds.POLYPROPYLENE, mm(10));
        Derivation buried = only(hollow, Bench.make(new Length(3_000), EndSpec.of("bury-eye", flat(150)), PLAIN));
        assertEquals(fine(360), amount(buried, "end A: tail"));
        assertEquals(new FineLength(828_000), amount(buried, "end A: take-up"));
        assertEquals(
                "4.5 diameters a tuck",
                BOOK.findTermination("four-strand-eye", Bench.rope(Kinds.FOUR_STRAND, Kinds.HEMP, mm(24)))
                        .orElseThrow()
                        .allowance(What.TAIL)
                        .text());
    }

    /** 6 mm, a ladder of 4 m with twelve overhand knots of 8 x 6: 4,000 + 576. */
    @Test
    void knotsAlong_addWhatEachTakes() {
        Rope cord = Bench.rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(6));
        assertEquals(
                new Length(4_576),
                only(cord, along(12, EndSpec.of("overhand-knot"))).cut());
    }

    /** 10 mm, three butterfly loops: 25 x 10 each into the knots, and each loop as long round as a bowline's. */
    @Test
    void loopsAlong_addTheWayRoundThemToo() {
        Rope braid = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(10));
        FineLength round = amount(
                only(braid, Bench.make(new Length(4_000), EndSpec.of("bowline", flat(120)), PLAIN)),
                "end A: round the eye");
        Derivation derivation = only(braid, along(3, EndSpec.of("butterfly-loop", flat(120))));
        assertEquals(
                round.times(3), amount(derivation, "along the piece: butterfly loop along the piece, round the loops"));
        assertEquals(fine(750), amount(derivation, "along the piece: butterfly loop along the piece, into the knots"));
    }

    /** Every row that is made along a piece, its lines from memory marked as unverified. */
    @Test
    void rowsAlong_markWhatIsFromMemory() {
        Rope braid = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(10));
        List<Termination> along =
                BOOK.terminations().stream().filter(row -> row.kind().isAlong()).toList();
        assertTrue(along.size() >= 4, along::toString);
        for (Termination row : along) {
            EndSpec knot =
                    row.kind() == Termination.Kind.LOOP_ALONG ? EndSpec.of(row.id(), flat(120)) : EndSpec.of(row.id());
            List<Derivation.Line> lines = only(braid, along(2, knot)).lines().stream()
                    .filter(line -> line.label().endsWith("into the knots"))
                    .toList();
            assertEquals(1, lines.size(), row.id());
            assertEquals(Grade.MEMORY, lines.get(0).provenance().grade(), row.id());
            assertTrue(!lines.get(0).provenance().verified(), row.id());
        }
    }

    @Test
    void knotsAlong_areNoEndsAndEndsAreNotAlong() {
        Rope braid = Bench.rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(10));
        Demanded end = pieces(braid, Bench.make(new Length(4_000), EndSpec.of("overhand-knot"), PLAIN));
        assertTrue(end.findings().get(0).expected().contains("in the column along"));
        assertTrue(pieces(braid, along(2, EndSpec.of("whipped")))
                .findings()
                .get(0)
                .expected()
                .contains("knot along"));
        assertTrue(pieces(braid, along(2, EndSpec.of("butterfly-loop")))
                .findings()
                .get(0)
                .isError());
    }

    private static Assembly.Make along(int count, EndSpec spec) {
        return new Assembly.Make(
                Written.worked(new Length(4_000)),
                Measuring.USUAL,
                PLAIN,
                PLAIN,
                new Assembly.Extras(Written.NOTHING, Written.NOTHING, List.of(new Assembly.Along(count, spec))));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "locked-eye-hmpe",
                "bury-join-hmpe",
                "endless-loop-hmpe",
                "soft-shackle",
                "prusik-loop",
                "stopper-knot",
                "webbing-sewn-loop",
                "wire-laid-back-eye",
                "four-strand-eye",
                "hollow-braid-eye"
            })
    void weeklyRows_areFromMemoryAndUnverified(String id) {
        Termination row = BOOK.terminations().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        assertEquals(Grade.MEMORY, row.provenance().grade());
        assertFalse(row.isVerified());
    }

    private static Assembly.Make ring(long round, String id) {
        return new Assembly.Make(
                Written.worked(new Length(round)), Measuring.USUAL, EndSpec.of(id), PLAIN, Assembly.Extras.NONE);
    }

    private static Derivation only(Rope rope, Assembly.Make make) {
        Demanded demanded = pieces(rope, make);
        assertEquals(1, demanded.pieces().size(), demanded.findings().toString());
        return demanded.derivations().get(0);
    }

    private static Demanded pieces(Rope rope, Assembly.Make make) {
        return model(BOOK, rope).pieces(order(1, 1, make, Terms.USUAL, "R"));
    }
}
