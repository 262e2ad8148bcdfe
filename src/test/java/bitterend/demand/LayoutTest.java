package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
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
import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Termination;
import bitterend.catalogue.Termination.What;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.WantedMark;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.exchange.SplicesJson;
import bitterend.measure.Diameter;
import bitterend.measure.DiameterText;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.LengthText;
import bitterend.measure.Ratio;
import bitterend.measure.Sentence;
import bitterend.measure.Written;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the marks of a splice lie. */
final class LayoutTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Rope BRAID = rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
    private static final Rope HOLLOW = rope(Kinds.TWELVE_STRAND, Kinds.HMPE, mm(12));
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final EndSpec EYE = EndSpec.of("double-braid-eye", flat(300));

    /** 12 mm, eye of 600 mm perimeter: throat mark at 870.970 mm from the cut end; core marks by common practice. */
    @Test
    void doubleBraidEye_isMarkedFromTheCutEnd() {
        SpliceLayout layout = layouts(BRAID, EYE, PLAIN).get(0);
        assertEquals(fine(252), fromCutEnd(layout, "tail mark"));
        assertEquals(new FineLength(8_709_696), fromCutEnd(layout, "throat mark"));
        assertEquals(new FineLength(8_709_696 + 15_120_000), fromCutEnd(layout, "slip knot"));
        // a short section of 94.5 mm, then a fid and a short section: 441 mm below the throat
        assertEquals(new FineLength(945_000), mark(layout, "cover goes in").distance());
        assertEquals(new FineLength(3_465_000), mark(layout, "cover comes out").distance());
    }

    /** The core has been drawn by then: it has slipped in its cover, and no figure from the cut end would be true. */
    @Test
    void coreMarks_haveNoFigureFromTheCutEnd() {
        SpliceLayout layout = layouts(BRAID, EYE, PLAIN).get(0);
        List<Mark> onCore =
                layout.marks().stream().filter(mark -> mark.on().equals("core")).toList();
        assertEquals(
                List.of("core comes out", "cover goes in", "cover comes out"),
                onCore.stream().map(Mark::name).toList());
        assertTrue(onCore.stream().allMatch(mark -> mark.findFromCutEnd().isEmpty()));
        assertTrue(layout.marks().stream()
                .filter(mark -> !mark.on().equals("core"))
                .allMatch(mark -> mark.findFromCutEnd().isPresent()));
    }

    /** Two-fid form: one short section, then three fids and a short section (published handbook [8], p. 70). */
    @Test
    void twoFidForm_marksTheCoreFurtherDown() {
        SpliceLayout layout = layouts(BRAID, EndSpec.of("double-braid-eye-two-fid", flat(300)), PLAIN)
                .get(0);
        assertEquals(fine(504), fromCutEnd(layout, "tail mark"));
        assertEquals(new FineLength(945_000), mark(layout, "cover goes in").distance());
        assertEquals(
                new FineLength(7_560_000 + 945_000),
                mark(layout, "cover comes out").distance());
        assertEquals(fine(8 * 252), mark(layout, "slip knot").distance());
    }

    /** Strand counts for a taper belong to printed instructions. */
    @Test
    void doubleBraid_tapersAsTheRopeMakerSays() {
        for (String id : List.of("double-braid-eye", "double-braid-eye-two-fid", "end-for-end-join")) {
            String counts = String.join("; ", row(id).layout().counts());
            assertTrue(counts.contains("as the rope maker's instructions say"), counts);
            assertTrue(counts.chars().noneMatch(Character::isDigit), counts);
        }
    }

    /** About a third of the buried tail is tapered, in HMPE a quarter to a third: common practice. */
    @Test
    void bury_isTaperedOverAThirdOfItsTail() {
        SpliceLayout layout =
                layouts(HOLLOW, EndSpec.of("bury-eye", flat(300)), PLAIN).get(0);
        assertEquals(fine(864), fromCutEnd(layout, "tail mark"));
        assertEquals(fine(288), fromCutEnd(layout, "start of the taper"));
    }

    /** published handbook [9], pp. 104, 106: the tool comes out 4/3 of the tail below the throat, in HMPE 3/2; one tail would cut the taper off. */
    @ParameterizedTest
    @CsvSource({"HMPE, 1296", "POLYESTER, 384", "NYLON, 384"})
    void buryTool_comesOutBeyondTheTail(@Kind Fibre fibre, long expected) {
        Rope hollow = rope(Kinds.TWELVE_STRAND, fibre, mm(12));
        SpliceLayout layout =
                layouts(hollow, EndSpec.of("bury-eye", flat(300)), PLAIN).get(0);
        assertEquals(fine(expected), mark(layout, "tool comes out").distance());
        assertTrue(layout.marks().stream().noneMatch(mark -> mark.name().contains("end of the bury")));
    }

    /** The second tool comes out where the rope still free before the tip of the first tail ends, where that is nearer. */
    @Test
    void buryTool_ofTheSecondEyeComesOutBeforeTheTipOfTheFirstTail() {
        EndSpec eye = EndSpec.of("bury-eye", flat(100));
        // 12 mm: clear 1,800 of which the first tail fills 864; the second take-up is 155.52
        List<SpliceLayout> strop = layouts(HOLLOW, new Length(2_000), eye, eye);
        Mark first = mark(strop.get(0), "tool comes out");
        Mark second = mark(strop.get(1), "tool comes out");
        assertEquals(fine(1_296), first.distance());
        assertEquals(new FineLength(10_915_200), second.distance());
        assertTrue(
                second.purpose().exact().contains("nearer than the usual 1.5 tails"),
                second.purpose().exact());
        assertTrue(second.distance().compareTo(new FineLength(8_640_000 + 1_555_200)) >= 0);
    }

    @Test
    void everyRow_namesItsMarksPlainly() {
        BOOK.terminations().forEach(row -> row.layout().marks().forEach(mark -> {
            assertTrue(mark.name().length() > 3 && mark.name().chars().noneMatch(Character::isDigit), mark.name());
            assertTrue(!mark.name().equals(LayoutMark.CUT_END), mark.name());
            assertTrue(!mark.purpose().isEmpty(), row.id() + " " + mark.name());
        }));
    }

    @Test
    void layout_withoutMarksOfItsOwnHasTailAndThroat() {
        Rope laid = rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(12));
        SpliceLayout layout =
                layouts(laid, EndSpec.of("three-strand-eye", flat(300)), PLAIN).get(0);
        assertEquals(
                List.of("tail mark", "throat mark"),
                layout.marks().stream().map(Mark::name).toList());
        assertEquals(fine(256), fromCutEnd(layout, "tail mark"));
        assertEquals(
                List.of("unlay and tape the three strands to the tail mark", "4 full tucks with each strand"),
                layout.counts().stream()
                        .map(Sentence::exact)
                        .filter(count -> !count.startsWith("advised"))
                        .toList());
        assertTrue(layout.caution().contains("rope maker"), layout.caution());
    }

    /** How long a splice takes is no caution: a card warns of what can go wrong. */
    @Test
    void cautions_speakOfNoLabour() {
        BOOK.terminations()
                .forEach(row -> assertFalse(
                        row.work().caution().contains("minute"),
                        row.id() + ": " + row.work().caution()));
    }

    /** In a join each strand makes half of the number on its side (29 CFR 1926.251(d)): 8 are 4 and 4, 10 tapered 5 and 2. */
    @Test
    void shortSplice_countsTheTucksOfOneSide() {
        Rope laid = rope(Kinds.THREE_STRAND, Kinds.POLYESTER, mm(12));
        assertEquals(
                "4 full tucks with each strand on its side of the join",
                layouts(laid, EndSpec.of("short-splice"), PLAIN)
                        .get(0)
                        .counts()
                        .get(0)
                        .exact());
        EndSpec tapered = new EndSpec(
                "short-splice", EyeSpec.NONE, EndSpec.FittingSpec.NONE, new EndSpec.Options(10, true, "", ""));
        assertEquals(
                "5 full tucks with each strand on its side of the join, then 2 tapered away",
                layouts(laid, tapered, PLAIN).get(0).counts().get(0).exact());
    }

    /** Every tucked end says how many tucks; wire: three full and two half, or four and one (Japan's crane ordinance 219). */
    @ParameterizedTest
    @CsvSource({
        "tuck-eye, TWELVE_STRAND, POLYESTER, 4 full tucks with each strand",
        "eight-strand-eye, EIGHT_STRAND, NYLON, 4 full tucks with each strand",
        "twelve-strand-join, TWELVE_STRAND, POLYESTER, 4 full tucks with each strand on its side of the join",
        "wire-tucked-eye, WIRE, STEEL, '3 full tucks with each strand, then 2 with half of each strand'",
        "wire-tucked-eye-four-one, WIRE, STEEL, '4 full tucks with each strand, then 1 with half of each strand'",
    })
    void tuckedEnds_sayHowManyTucks(String id, @Kind Construction construction, @Kind Fibre fibre, String expected) {
        EndSpec end = row(id).kind() == Termination.Kind.JOIN ? EndSpec.of(id) : EndSpec.of(id, flat(300));
        List<String> counts = layouts(rope(construction, fibre, mm(12)), end, PLAIN).get(0).counts().stream()
                .map(Sentence::exact)
                .toList();
        assertTrue(counts.contains(expected), counts.toString());
        assertTrue(
                counts.stream().skip(counts.indexOf(expected)).noneMatch(count -> count.startsWith("unlay")),
                "unlaid before the first tuck: " + counts);
    }

    /**
     * What print adds to a row beyond its lengths: pull tests on 6 mm rope (a secondary page); a clip maker's instructions;
     * AC 43.13-1B par. 7-147; a tool maker's manual; two makers of wedge sockets.
     */
    @ParameterizedTest
    @CsvSource({
        "bury-eye, TWELVE_STRAND, POLYESTER, without a taper 6 mm rope broke 13 to 20 % below the average",
        "bury-eye, TWELVE_STRAND, HMPE, without a taper 6 mm rope broke 13 to 20 % below the average",
        "clip-eye, WIRE, STEEL, one clip more where a pulley takes the place of the thimble",
        "wire-sleeve-eye, WIRE, STEEL, nearer than 2 in to a fairlead or pulley where the wire runs (AC 43.13-1B par. 7-147)",
        "swaged, WIRE, STEEL, a bore that goes through: about 1/4 in beyond it",
        "wedge-socket, WIRE, STEEL, about three quarters of the wedge's length from the body"
    })
    void rows_sayWhatElsePrintAsks(String id, @Kind Construction construction, @Kind Fibre fibre, String expected) {
        SpliceBook book = Bench.change(BOOK, id, each -> Bench.withLength(each, What.TAIL, 400));
        boolean fitting = row(id).kind() == Termination.Kind.FITTING;
        EndSpec end = fitting
                ? new EndSpec(
                        id, EyeSpec.NONE, new EndSpec.FittingSpec("", fine(45)), new EndSpec.Options(0, false, "", ""))
                : EndSpec.of(id, flat(300));
        Rope rope = rope(construction, fibre, mm(12));
        List<SpliceLayout> layouts = model(id.equals("wire-sleeve-eye") ? book : BOOK, rope)
                .pieces(one(Bench.make(Length.ofMetres(20), end, PLAIN)))
                .layouts();
        String counts = Sentence.joined("; ", layouts.get(0).counts()).exact();
        assertTrue(counts.contains(expected), counts);
    }

    /** TB 55-1900-232-10 p. 2-52: in high-stretch synthetics the thimble can tumble out of the eye. */
    @ParameterizedTest
    @CsvSource({"NYLON, true", "POLYESTER, false"})
    void thimbleInRopeThatStretches_isCautioned(@Kind Fibre fibre, boolean told) {
        Rope braid = rope(Kinds.DOUBLE_BRAID, fibre, mm(12));
        EndSpec lined = EndSpec.of("double-braid-eye", new EyeSpec.OnThimble("light-12", Diameter.NONE));
        Demanded demanded = model(BOOK, braid).pieces(one(Bench.make(Length.ofMetres(20), lined, PLAIN)));
        assertEquals(told, demanded.layouts().get(0).caution().contains("the thimble tumbles out (TB 55-1900-232-10"));
        assertEquals(told, demanded.work().get(0).caution().contains("tumbles out"));
    }

    /** FM 55-501: open the rope to 4 times the diameter of the eye, the eye included; 200 mm: 800 mm. */
    @Test
    void hastyEye_saysHowFarTheRopeIsOpened() {
        Rope wire = rope(Kinds.WIRE, Kinds.STEEL, mm(12));
        EyeSpec round = new EyeSpec.RoundEye(fine(200), Diameter.NONE);
        SpliceLayout layout =
                layouts(wire, EndSpec.of("hasty-eye", round), PLAIN).get(0);
        assertEquals(fine(800), fromCutEnd(layout, "rope opened to here"));
    }

    /** The knot itself lies between its tail and the standing part: 10 and 15 D of 12 mm rope, from memory. */
    @Test
    void bowline_isMarkedBeyondItsOwnRope() {
        SpliceLayout layout =
                layouts(BRAID, EndSpec.of("bowline", flat(300)), PLAIN).get(0);
        assertEquals(fine(120), fromCutEnd(layout, "tail mark"));
        assertEquals(new FineLength(1_200_000 + 1_800_000 + 6_189_696), fromCutEnd(layout, "knot ends here"));
    }

    /** 3/4 in wire: 4 clips on 18 in, saddles of 3 D: one saddle left beyond the first, the second hard against the thimble. */
    @Test
    void clipEye_placesEveryClipFromTheCutEnd() {
        Rope wire = rope(Kinds.WIRE, Kinds.STEEL, inches("3/4"));
        SpliceLayout layout =
                layouts(wire, EndSpec.of("clip-eye", flat(300)), PLAIN).get(0);
        assertEquals(inch("18"), fromCutEnd(layout, "tail mark"));
        assertEquals(inch("3.375"), fromCutEnd(layout, "first clip"));
        assertEquals(inch("16.875"), fromCutEnd(layout, "second clip"));
        assertEquals(inch("7.875"), fromCutEnd(layout, "third clip"));
        assertEquals(inch("12.375"), fromCutEnd(layout, "fourth clip"));
        assertEquals(
                List.of(
                        "4 clips, saddles on the live part",
                        "torque of the nuts: as the clip maker states",
                        "tighten again after the first load"),
                layout.counts().subList(0, 3).stream().map(Sentence::exact).toList());
    }

    /** 10 m less the bearing of the second eye, 300 mm, and its own take-up of 176.4 mm: neither margin nor rounding. */
    @Test
    void secondThroat_isMeasuredFromTheFinishedFirstEye() {
        List<SpliceLayout> both = layouts(BRAID, EYE, EYE);
        Mark throat = mark(both.get(1), "throat, measured");
        assertEquals(
                "bearing point of the finished end A, laid flat", throat.from().exact());
        assertEquals(new FineLength(97_000_000 + 1_764_000), throat.distance());
        assertEquals(Optional.empty(), throat.findFromCutEnd());
        assertTrue(both.get(0).marks().stream().noneMatch(mark -> mark.name().equals("throat, measured")));
    }

    /** A 300 mm flat eye is 236.5 mm on its pin of 150 mm: who measures on the floor with the eye flat is 63.5 mm off. */
    @Test
    void secondThroat_saysHowTheFirstEyeLies() {
        EndSpec onPin = EndSpec.of("double-braid-eye", Bench.flatOnPin(300, 150));
        Mark throat = mark(layouts(BRAID, onPin, EYE).get(1), "throat, measured");
        assertEquals(
                "bearing point of the finished end A, on a pin of 150 mm",
                throat.from().exact());
        assertEquals(new FineLength(97_000_000 + 1_764_000), throat.distance());
    }

    /** Wanted wet at 5 % shrinkage and under 2 % tension: 10 m is 10,320 mm slack and dry. */
    @Test
    void secondThroat_followsTensionAndWetting() {
        Mark throat = mark(converted(List.of()).get(1), "throat, measured");
        double slack = 10_000 / 1.02 / 0.95;
        assertEquals(slack - 300 + 176.4, throat.distance().units() / 10_000.0, 0.001);
    }

    @Test
    void plainEnds_haveNoLayout() {
        assertEquals(List.of(), layouts(BRAID, PLAIN, EndSpec.of("sealed")));
    }

    /** Middle of 10 m: 4,700 mm of clear rope beyond the throat, which lies tail, eye and take-up from the cut end. */
    @Test
    void marksAlong_lieWhereTheFinishedAssemblyWantsThem() {
        WantedMark middle = new WantedMark("middle", new Ratio(1, 2), FineLength.ZERO);
        WantedMark near = new WantedMark("1 m", Ratio.ZERO, Length.ofMetres(1).fine());
        Demanded demanded = marked(List.of(middle, near));
        SpliceLayout along = demanded.layouts().get(demanded.layouts().size() - 1);
        long throat = 2_520_000 + 6_189_696 + 1_764_000;
        assertEquals(new FineLength(throat + 47_000_000), fromCutEnd(along, "middle"));
        assertEquals(new FineLength(throat + 7_000_000), fromCutEnd(along, "1 m"));
    }

    /** A mark at 5 m of the wet and tensioned length lies as much further along the slack and dry piece. */
    @Test
    void marksAlong_followTensionAndWettingAsTheLengthDoes() {
        List<SpliceLayout> layouts = converted(
                List.of(new WantedMark("5 m", Ratio.ZERO, Length.ofMetres(5).fine())));
        double throat = 252 + 618.9696 + 176.4;
        double place = throat + 5_000 / 1.02 / 0.95 - 300;
        assertEquals(place, fromCutEnd(layouts.get(layouts.size() - 1), "5 m").units() / 10_000.0, 0.001);
    }

    @Test
    void marksAlong_insideAnEyeAreRefused() {
        Demanded demanded = marked(List.of(new WantedMark("0.2 m", Ratio.ZERO, new Length(200).fine())));
        assertEquals("marks", demanded.findings().get(0).field());
        assertEquals(List.of(), demanded.pieces());
    }

    private static Demanded marked(List<WantedMark> marks) {
        Asked asked = new Asked(Tolerance.NONE, Tolerance.NONE, Tolerance.NONE, marks);
        return model(BOOK, BRAID)
                .pieces(one(new Make(
                        Written.worked(Length.ofMetres(10)), Measuring.USUAL, EYE, PLAIN, Extras.NONE, asked)));
    }

    /** Two eyes, wanted wet at 5 % shrinkage and under 2 % of tension. */
    private static List<SpliceLayout> converted(List<WantedMark> marks) {
        Measuring wet =
                new Measuring(Measuring.Between.BEARING_POINTS, Diameter.NONE, Ratio.percent(2), Ratio.percent(5));
        Asked asked = new Asked(Tolerance.NONE, Tolerance.NONE, Tolerance.NONE, marks);
        return model(BOOK, BRAID)
                .pieces(one(new Make(Written.worked(Length.ofMetres(10)), wet, EYE, EYE, Extras.NONE, asked)))
                .layouts();
    }

    private static List<SpliceLayout> layouts(Rope rope, EndSpec endA, EndSpec endB) {
        return layouts(rope, Length.ofMetres(10), endA, endB);
    }

    private static List<SpliceLayout> layouts(Rope rope, Length finished, EndSpec endA, EndSpec endB) {
        return model(BOOK, rope).pieces(one(Bench.make(finished, endA, endB))).layouts();
    }

    private static Termination row(String id) {
        return BOOK.terminations().stream()
                .filter(row -> row.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static Mark mark(SpliceLayout layout, String name) {
        return layout.marks().stream()
                .filter(mark -> mark.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name + " in " + layout.marks()));
    }

    private static FineLength fromCutEnd(SpliceLayout layout, String name) {
        return mark(layout, name).findFromCutEnd().orElseThrow();
    }

    private static Diameter inches(String inches) {
        return DiameterText.parse(inches + " in").value().orElseThrow();
    }

    private static FineLength inch(String inches) {
        return LengthText.parseFine(inches + " in").value().orElseThrow();
    }
}
