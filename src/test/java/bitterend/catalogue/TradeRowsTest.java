package bitterend.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Termination.What;
import bitterend.catalogue.Yardsticks.Counted;
import bitterend.catalogue.Yardsticks.Eye;
import bitterend.exchange.SplicesJson;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import bitterend.measure.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The built-in rows give the numbers that their sources print. */
final class TradeRowsTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final FidTable INCH_BENCH = BOOK.fids().on(BenchTools.INCH);

    /** Full = short + long, inches: US Coast Guard Auxiliary training page. */
    @ParameterizedTest
    @CsvSource({"3/8, 3, 7.75", "1/2, 4, 11", "3/4, 4.75, 16", "7/8, 5, 19", "1, 5.25, 21"})
    void fid_inInchSizesIsTheToolOfTheTable(String rope, String shortSection, String full) {
        Fid fid = INCH_BENCH.fid(inch(rope));
        assertEquals(length(full + " in"), fid.length());
        assertEquals(length(shortSection + " in"), fid.shortSection());
        assertEquals(Grade.HANDBOOK, fid.provenance().grade());
    }

    /** 21 D: common practice, no source. Short sections: step table derived from the inch fids. */
    @ParameterizedTest
    @CsvSource({"12 mm, 252 mm, 94.5 mm", "16 mm, 336 mm, 100.8 mm", "24 mm, 504 mm, 126 mm", "22 mm, 462 mm, 138.6 mm"
    })
    void fid_elsewhereIs21Diameters(String rope, String full, String shortSection) {
        Fid fid = BOOK.fids().fid(diameter(rope));
        assertEquals(length(full), fid.length());
        assertEquals(length(shortSection), fid.shortSection());
        assertFalse(fid.provenance().verified());
    }

    /** 7 x C is 21.99 D with C = pi D: arithmetic. */
    @Test
    void circumference_isPiDiameters() {
        Yardsticks sticks = sticks(Diameter.ofMillimetres(100), 0, FineLength.ZERO);
        assertEquals(314.16, sticks.length(Yardstick.CIRCUMFERENCE).units() / 10_000.0, 0.001);
        assertTrue(sticks.length(Yardstick.CIRCUMFERENCE).units() >= Math.PI * 1_000_000);
    }

    @ParameterizedTest
    @CsvSource({
        // tail one fid, slip knot 6 fids: common practice; room 1 fid + 2 short sections of 94.5: geometry; margin 24 D
        // - 21 D:
        // published handbook [9], p. 101
        "double-braid-eye, TAIL, 12 mm, 252 mm",
        "double-braid-eye, TAKE_UP, 12 mm, 176.4 mm",
        "double-braid-eye, ROOM, 12 mm, 441 mm",
        "double-braid-eye, SLIP_KNOT, 12 mm, 1512 mm",
        "double-braid-eye, MARGIN, 12 mm, 36 mm",
        // published handbook [8], p. 70
        "double-braid-eye-two-fid, TAIL, 12 mm, 504 mm",
        "double-braid-eye-two-fid, SLIP_KNOT, 12 mm, 2016 mm",
        // published handbook [9], p. 103: 3/8 in, 9 in; pp. 104 and 106: room; p. 105: 1/4 in, 18 in
        "bury-eye, TAIL, 3/8 in, 9 in",
        "bury-eye, ROOM, 3/8 in, 12 in",
        "bury-eye-hmpe, TAIL, 1/4 in, 18 in",
        "bury-eye-hmpe, ROOM, 1/4 in, 27 in",
        // 12 mm, 72 D: 17.6 % of the tail was measured once, 18 % errs long
        "bury-eye-hmpe, TAKE_UP, 12 mm, 155.52 mm",
        // strand geometry gives 1 to 1.5 D for a tucked eye; an estimate
        "three-strand-eye, TAKE_UP, 12 mm, 18 mm",
        "wire-tucked-eye, TAKE_UP, 12 mm, 18 mm",
        // room 1 fid + 2 short sections at 3/4 in, 0.30 of a metric fid: 1.6 x 400.05 mm
        "double-braid-eye, ROOM, 3/4 in, 640.08 mm",
        // FM 55-501; published handbook [9], p. 190: 1/2 in, 18 in
        "wire-tucked-eye, TAIL, 1/2 in, 18 in",
        // 8 CCR 8497 Table 1, turn-back; between sizes the next row up
        "clip-eye, TAIL, 3/8 in, 11.5 in",
        "clip-eye, TAIL, 1/2 in, 11.5 in",
        "clip-eye, TAIL, 9/16 in, 12 in",
        "clip-eye, TAIL, 5/8 in, 12 in",
        "clip-eye, TAIL, 16 mm, 18 in",
        "clip-eye, TAIL, 3/4 in, 18 in",
        "clip-eye, TAIL, 7/8 in, 19 in",
        "clip-eye, TAIL, 1 in, 26 in",
        "clip-eye, TAIL, 1 1/8 in, 34 in",
        "clip-eye, TAIL, 1 1/4 in, 37 in",
        "clip-eye, TAIL, 1 1/2 in, 48 in",
        "clip-eye, TAIL, 2 in, 71 in",
        // published handbook [8], p. 56: fid and short section, 26 to 29 D
        "end-for-end-join, TAIL, 12 mm, 346.5 mm",
        "end-for-end-join, TAIL, 1 in, 26.25 in",
        // published handbook [9], p. 226: 20 ft from each end per inch of diameter; 1/4: 5 ft, 1/2: 10 ft, 1: 20 ft
        "wire-long-splice, TAIL, 1/4 in, 5 ft",
        "wire-long-splice, TAIL, 1/2 in, 10 ft",
        "wire-long-splice, TAIL, 1 in, 20 ft",
        // from memory: 40 D in both ropes
        "double-fishermans-knot, TAKE_UP, 10 mm, 200 mm",
        // from memory
        "bowline, TAKE_UP, 10 mm, 150 mm",
        "figure-eight-loop, TAKE_UP, 10 mm, 500 mm",
    })
    void allowance_isWhatItsSourcePrints(String id, What what, String rope, String expected) {
        assertEquals(length(expected), allowance(id, what, diameter(rope), 0));
    }

    /** published handbook [8], p. 126: circumference 4 in, 28 in at each end. */
    @ParameterizedTest
    @ValueSource(strings = {"tuck-eye", "eight-strand-eye"})
    void tuckEye_takesSevenCircumferences(String id) {
        FineLength tail = allowance(id, What.TAIL, diameter("4 in circ"), 0);
        assertEquals(28 * 25.4, tail.units() / 10_000.0, 0.002);
    }

    /** published handbook [1], no. 2692: 15 in from each rope per inch of circumference. */
    @Test
    void longSplice_takesFifteenCircumferences() {
        FineLength tail = allowance("long-splice", What.TAIL, diameter("2 in circ"), 0);
        assertEquals(30 * 25.4, tail.units() / 10_000.0, 0.005);
    }

    /**
     * published handbook [16], p. 39: legs of 4 to 5 ft whatever the size, the strand laid out half as far again, 6 to 7 1/2 ft.
     * Fifteen inches per inch of circumference are as long at 3.2 and at 4 in; beyond that ours are longer.
     */
    @ParameterizedTest
    @CsvSource({"3.2, 48, 72", "4, 60, 90"})
    void longSplice_reachesTheLegsOfAnotherHandbook(String circumference, double leg, double laidOut) {
        FineLength tail = allowance("long-splice", What.TAIL, diameter(circumference + " in circ"), 0);
        assertEquals(leg * 25.4, tail.units() / 10_000.0, 0.01);
        assertEquals(laidOut, 1.5 * leg);
    }

    /** published handbook [8], p. 39: 16 in from each rope, 3/4 in, 4 tucks on each side; 29 CFR 1926.251(d): 6 and 8 tucks. */
    @Test
    void shortSplice_takesSixteenInchesFromEachRope() {
        Tucking tucking = row("short-splice").tucking();
        assertEquals(6, tucking.least(Kinds.SISAL));
        assertEquals(8, tucking.least(Kinds.NYLON));
        Yardsticks sticks = sticks(diameter("3/4 in"), 8, FineLength.ZERO);
        assertEquals(
                length("16 in"),
                row("short-splice")
                        .allowance(What.TAIL)
                        .length(sticks)
                        .plus(tucking.projection().length(sticks)));
    }

    /** FM 55-501: a 200 mm eye takes 800 mm, of which 628 is the eye, rope thickness left out. */
    @Test
    void hastyEye_takesFourTimesItsDiameterTheEyeIncluded() {
        FineLength across = FineLength.ofMillimetres(200);
        FineLength round = EyeFormula.choked(new Diameter(across.units()), Diameter.NONE);
        assertEquals(628, round.units() / 10_000);
        Yardsticks sticks = new Yardsticks(
                diameter("12 mm"),
                BOOK.fids().fid(diameter("12 mm")),
                FineLength.ZERO,
                Counted.NOTHING,
                new Eye(round, across));
        assertEquals(
                FineLength.ofMillimetres(800),
                row("hasty-eye").allowance(What.TAIL).length(sticks).plus(round));
    }

    /** No stock length for a sleeve eye is published: the shop states its own. */
    @Test
    void sleeveEye_waitsForTheShopsOwnValue() {
        assertTrue(row("wire-sleeve-eye").allowance(What.TAIL).isUnknown());
    }

    /** 29 CFR 1926.251(d) and 3 x 3.83 D + 6 D: 17.5 D for 3 tucks, 21.3 D for 4, to a tenth of a diameter. */
    @ParameterizedTest
    @CsvSource({"3, 17.5", "4, 21.3"})
    void threeStrandEye_inDiameters(int tucks, double diameters) {
        assertEquals(diameters, strandTail(diameter("10 mm"), tucks).units() / 100_000.0, 0.05);
    }

    /** Take-up of a buried braid, 1 - sqrt(1 - 2 sin^2 a)/cos a: of the slack rope, k/(1 - k) of the tail; the default is above all. */
    @ParameterizedTest
    @CsvSource({"15, 3.7, 3.8", "20, 6.9, 7.4", "25, 11.5, 13.0", "30, 18.4, 22.5"})
    void buriedBraid_takesUpLessThanTheDefault(double degrees, double percent, double ofTheTail) {
        double a = Math.toRadians(degrees);
        double takeUp = 1 - Math.sqrt(1 - 2 * Math.sin(a) * Math.sin(a)) / Math.cos(a);
        assertEquals(percent, 100 * takeUp, 0.05);
        double partOfTail = takeUp / (1 - takeUp);
        assertEquals(ofTheTail, 100 * partOfTail, 0.05);
        FineLength tail = FineLength.ofMillimetres(1000);
        Yardsticks sticks = sticks(diameter("12 mm"), 0, tail);
        assertTrue(row("bury-eye").allowance(What.TAKE_UP).length(sticks).units() >= partOfTail * tail.units());
    }

    /** published handbook [8], p. 28: 16 in for 4 tucks in 3/4 in; 29 CFR 1926.251(d): 6 D left under 1 in, 6 in from 1 in up. */
    @ParameterizedTest
    @CsvSource({"3/4 in, 4, 16 in", "12 mm, 3, 210 mm", "12 mm, 4, 256 mm"})
    void threeStrandEye_takesTucksAndProjection(String rope, int tucks, String expected) {
        assertEquals(length(expected), strandTail(diameter(rope), tucks));
    }

    @ParameterizedTest
    @CsvSource({"24 mm, 144 mm", "1 in, 6 in", "2 in, 6 in"})
    void projection_isSixDiametersUnderOneInch(String rope, String expected) {
        Allowance projection = row("three-strand-eye").tucking().projection();
        assertEquals(length(expected), projection.length(sticks(diameter(rope), 4, FineLength.ZERO)));
    }

    /** 29 CFR 1926.251(d): natural fibre 3, synthetic 4. */
    @Test
    void tucks_atLeastByFibre() {
        assertEquals(3, row("three-strand-eye").tucking().least(Kinds.MANILA));
        assertEquals(4, row("three-strand-eye").tucking().least(Kinds.POLYESTER));
    }

    /** 8 CCR 8497 Table 1, and FM 55-501: 3 x D(in) + 1; at 1 in the table asks for more. */
    @ParameterizedTest
    @CsvSource({
        "1/2 in, 3",
        "9/16 in, 3",
        "5/8 in, 3",
        "3/4 in, 4",
        "7/8 in, 4",
        "1 in, 5",
        "1 1/8 in, 6",
        "1 1/4 in, 6",
        "1 1/2 in, 7",
        "2 in, 8"
    })
    void clips_areTheLargerOfTableAndFormula(String rope, int clips) {
        Clips row = row("clip-eye").layout().clips();
        assertEquals(clips, row.count().of(diameter(rope)));
    }

    /** NAVEDTRA 14081: 3 x D(in), width 1 to 1.5 D, 2 D apart; 3/4 in: 3 of 1 in. */
    @Test
    void seizings_beforeAWireCut() {
        Rope rope = WireRope.of(diameter("3/4 in"));
        Preparation preparation = BOOK.findPreparation(rope).orElseThrow();
        assertEquals(3, preparation.count().of(rope.diameter()));
        assertTrue(rope.diameter().times(preparation.widthFrom()).compareTo(length("1 in")) <= 0);
        assertTrue(rope.diameter().times(preparation.widthTo()).compareTo(length("1 in")) >= 0);
        assertEquals(
                "wire seizings on each side of the cut: 3, each 3/4 in to 1 1/8 in wide, 1 1/2 in apart",
                preparation.words(rope).print(Units.IMPERIAL));
    }

    /** FM 5-125 p. 2-2 and published handbook [1]: whippings 1 to 3 D long, 25 to 50 mm apart. */
    @Test
    void naturalFibre_isCutBetweenWhippings() {
        Rope wire = WireRope.of(diameter("24 mm"));
        Rope manila = new Rope(
                "M",
                "manila",
                new RopeIdentity(
                        Kinds.THREE_STRAND, Kinds.MANILA, "", "", diameter("24 mm"), Lay.RIGHT_ORDINARY, "", "", ""),
                wire.mass(),
                wire.price(),
                wire.cutting(),
                wire.worth(),
                wire.usualReel());
        assertEquals(
                "a whipping on each side, 25 to 50 mm (1 to 2 in) apart, and cut between them, each 24 mm to 72 mm wide",
                BOOK.findPreparation(manila).orElseThrow().words(manila).exact());
    }

    /** An inch bench without a tool of the size: 22.5 D, above every printed tool; 3/8 in 20.7 D, 1/2 in 22 D, 1 in 21 D. */
    @Test
    void fid_onAnInchBenchWithoutAToolErrsLong() {
        assertEquals(length("12.65625 in"), INCH_BENCH.fid(inch("9/16")).length());
        assertEquals(length("270 mm"), INCH_BENCH.fid(diameter("12 mm")).length());
        assertEquals(length("252 mm"), BOOK.fids().fid(diameter("12 mm")).length());
        assertEquals(length("11.8125 in"), BOOK.fids().fid(inch("9/16")).length());
    }

    /** Turn-back 8 CCR 8497; clips 6 D apart: FM 55-501, Mich. R 408.15226; saddles of 3 D until the clip maker's are typed. */
    @ParameterizedTest
    @CsvSource({
        "1/2 in, 11.5 in",
        "3/4 in, 18 in",
        "7/8 in, 21 in",
        "1 in, 30 in",
        "1 1/8 in, 40.5 in",
        "1 1/4 in, 45 in",
        "1 1/2 in, 63 in",
        "2 in, 96 in"
    })
    void clipEye_tailHoldsItsClips(String size, String expected) {
        Diameter rope = diameter(size);
        Clips clips = row("clip-eye").layout().clips();
        Counted counted = new Counted(0, clips.count().of(rope), rope.times(Ratio.of(3)));
        Yardsticks sticks = new Yardsticks(rope, BOOK.fids().fid(rope), FineLength.ZERO, counted, Eye.NONE);
        assertEquals(length(expected), row("clip-eye").allowance(What.TAIL).length(sticks));
        assertEquals(rope.times(Ratio.of(3)), clips.saddle().length(sticks));
        assertFalse(clips.saddle().provenance().verified());
    }

    /**
     * The largest of 6 D, 150 mm and one lay; rotation-resistant 20 D (two fitting makers; NAVEDTRA 14080 p. 3-9): 16 mm rope
     * with a lay of 6.5 D, 104 mm, 150 and 320 mm. 32 mm with a lay of 7.5 D: 240 mm.
     */
    @ParameterizedTest
    @CsvSource({
        "wedge-socket, 16 mm, 104 mm, 150 mm",
        "wedge-socket-rotation-resistant, 16 mm, 104 mm, 320 mm",
        "wedge-socket, 32 mm, 240 mm, 240 mm",
        "wedge-socket, 30 mm, 100 mm, 180 mm"
    })
    void wedgeSocket_leavesTheLargestOfThree(String id, String rope, String lay, String expected) {
        Yardsticks sticks =
                new Yardsticks(diameter(rope), BOOK.fids().fid(diameter(rope)), length(lay), Counted.NOTHING, Eye.NONE);
        assertEquals(length(expected), row(id).allowance(What.TAIL).length(sticks));
    }

    /** NAVEDTRA 14310 fig. 3-47: serving ends at the length of the terminal and 1 in. */
    @Test
    void pouredTerminal_isServedAnInchBeyondItsLength() {
        Yardsticks sticks = sticks(diameter("12 mm"), 0, FineLength.ZERO).withFitting(length("118 mm"));
        LayoutMark mark = row("poured-terminal").layout().marks().get(0);
        assertEquals(length("143.4 mm"), mark.distance().length(sticks));
    }

    /** Twice the clips and twice the turn-back in all, half of each for either rope: two makers' clip instructions. */
    @Test
    void clipJoint_isTwiceAClipEye() {
        assertEquals(length("18 in"), allowance("clip-joint", What.TAIL, diameter("3/4 in"), 0));
        assertEquals(4, row("clip-joint").layout().clips().count().of(diameter("3/4 in")));
    }

    /** published handbook [2], p. 68: one strand is unlaid 25 times the circumference; 12 mm rope 942 mm at C = pi D. */
    @Test
    void ropeToChain_namesItsForm() {
        assertEquals(
                942, allowance("rope-to-chain", What.TAIL, diameter("12 mm"), 0).units() / 10_000);
        assertTrue(row("rope-to-chain").name().contains("long-splice form"));
    }

    /** Published handbook [14], p. 187: tail 75 mm, a stitch every 15 mm, 3 m of twine. */
    @Test
    void stitchedEye_takesThreeMetresOfTwine() {
        assertEquals(length("75 mm"), allowance("stitched-eye", What.TAIL, diameter("8 mm"), 0));
        assertTrue(row("stitched-eye").work().parts().get(0).item().contains("3 m"));
    }

    /** A key lanyard: 26 in make 12 in finished, a ring splice of 6 in and an eye of 8 in; five tucks at 1/4 in: 6.29 in. */
    @Test
    void tuckRule_agreesWithAWorkedLanyard() {
        assertEquals(26, 12 + 6 + 8);
        assertEquals(6.29, strandTail(diameter("1/4 in"), 5).units() / 254_000.0, 0.005);
        assertEquals(4.72, strandTail(diameter("3/16 in"), 5).units() / 254_000.0, 0.005);
    }

    @Test
    void lay_ofTheRopeComesBeforeTheUsualOne() {
        Rope wire = WireRope.of(diameter("16 mm"));
        assertEquals(length("120 mm"), BOOK.layTurn(wire));
        Rope typed = new Rope(
                wire.id(),
                wire.name(),
                wire.identity(),
                wire.mass(),
                wire.price(),
                wire.cutting(),
                wire.worth(),
                wire.usualReel(),
                length("104 mm"));
        assertEquals(length("104 mm"), BOOK.layTurn(typed));
    }

    @Test
    void clipEye_knowsNoRopeAboveTwoInches() {
        assertFalse(row("clip-eye").allowance(What.TAIL).covers(diameter("2 1/16 in")));
    }

    /** What comes from memory or is estimated is never called verified. */
    @Test
    void rowsFromMemory_areNeverVerified() {
        for (Termination row : BOOK.terminations()) {
            row.allowances()
                    .values()
                    .forEach(allowance -> assertTrue(
                            allowance.provenance().grade() != Grade.MEMORY
                                    || !allowance.provenance().verified(),
                            row.id()));
            assertFalse(row.provenance().source().isEmpty(), row.id());
        }
    }

    private static FineLength strandTail(Diameter rope, int tucks) {
        Termination row = row("three-strand-eye");
        Yardsticks sticks = sticks(rope, tucks, FineLength.ZERO);
        return row.allowance(What.TAIL)
                .length(sticks)
                .plus(row.tucking().projection().length(sticks));
    }

    private static FineLength allowance(String id, What what, Diameter rope, int tucks) {
        Termination row = row(id);
        FineLength tail = row.allowance(What.TAIL).length(sticks(rope, tucks, FineLength.ZERO));
        return row.allowance(what).length(sticks(rope, tucks, tail));
    }

    private static Yardsticks sticks(Diameter rope, int tucks, FineLength tail) {
        return new Yardsticks(rope, BOOK.fids().fid(rope), FineLength.ZERO, Counted.tucks(tucks), Eye.NONE)
                .withTail(tail);
    }

    private static Termination row(String id) {
        return BOOK.terminations().stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Diameter inch(String inches) {
        return diameter(inches + " in");
    }

    private static Diameter diameter(String text) {
        return DiameterText.parse(text).value().orElseThrow();
    }

    private static FineLength length(String text) {
        return LengthText.parseFine(text).value().orElseThrow();
    }
}
