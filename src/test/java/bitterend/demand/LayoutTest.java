package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Construction;
import bitterend.catalogue.Fibre;
import bitterend.catalogue.LayoutMark;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.Assembly.WantedMark;
import bitterend.demand.SpliceLayout.Mark;
import bitterend.exchange.SplicesJson;
import bitterend.measure.FineLength;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Where the marks of a splice lie. */
final class LayoutTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Rope BRAID = rope(Construction.DOUBLE_BRAID, Fibre.POLYESTER, mm(12));
    private static final EndSpec EYE = EndSpec.of("double-braid-eye", flat(300));

    /** 12 mm, eye of 600 mm perimeter: throat mark at 870.970 mm from the cut end; core marks by common practice. */
    @Test
    void doubleBraidEye_isMarkedFromTheCutEnd() {
        Map<String, FineLength> places =
                places(layouts(BRAID, EYE, EndSpec.of("plain")).get(0));
        assertEquals(fine(252), place(places, "tail mark"));
        assertEquals(new FineLength(8_709_696), place(places, "throat mark"));
        assertEquals(new FineLength(8_709_696 + 15_120_000), place(places, "slip knot"));
        assertEquals(place(places, "throat mark"), place(places, "core mark one"));
        assertEquals(new FineLength(8_709_696 + 945_000), place(places, "core mark two"));
        // the third lies 1.75 fids below the throat: 441 mm
        assertEquals(new FineLength(8_709_696 + 4_410_000), place(places, "core mark three"));
        assertEquals(new FineLength(8_709_696 + 840_000), place(places, "exit of the core tail"));
    }

    /** Two-fid form: core marks one short section, then three fids and a short section. */
    @Test
    void twoFidForm_marksTheCoreFurtherDown() {
        Map<String, FineLength> places =
                places(layouts(BRAID, EndSpec.of("double-braid-eye-two-fid", flat(300)), EndSpec.of("plain"))
                        .get(0));
        assertEquals(fine(504), place(places, "tail mark"));
        FineLength throat = place(places, "throat mark");
        assertEquals(new FineLength(945_000), place(places, "core mark two").minus(throat));
        assertEquals(
                new FineLength(945_000 + 7_560_000 + 945_000),
                place(places, "core mark three").minus(throat));
        assertEquals(fine(8 * 252), place(places, "slip knot").minus(throat));
    }

    /** Counts of common practice: 8 or 12 core strands, 4 or 3 removed, every fifth pair, 6 in left outside. */
    @Test
    void doubleBraidEye_countsStrandsWhereTheTradeCounts() {
        String counts =
                String.join(" ", layouts(BRAID, EYE, EndSpec.of("plain")).get(0).counts());
        for (String count :
                List.of("every fifth pair", "8 strands below 1 5/8 in", "12 above", "4 or 3 consecutive", "6 in")) {
            assertTrue(counts.contains(count), count);
        }
    }

    /** About a third of the buried tail is tapered: common practice. */
    @Test
    void bury_isTaperedOverAThirdOfItsTail() {
        Rope hollow = rope(Construction.TWELVE_STRAND, Fibre.HMPE, mm(12));
        Map<String, FineLength> places = places(layouts(hollow, EndSpec.of("bury-eye", flat(300)), EndSpec.of("plain"))
                .get(0));
        assertEquals(fine(864), place(places, "tail mark"));
        assertEquals(fine(288), place(places, "start of the taper"));
        assertEquals(fine(864), place(places, "end of the bury").minus(place(places, "throat mark")));
    }

    @Test
    void everyLayout_usesPlainNamesAndKeepsTheTailAndThroatOfTheDerivation() {
        BOOK.terminations().forEach(row -> row.marks().forEach(mark -> {
            assertTrue(mark.name().length() > 3 && mark.name().chars().noneMatch(Character::isDigit), mark.name());
            assertTrue(!mark.name().equals(LayoutMark.CUT_END), mark.name());
        }));
    }

    @Test
    void layout_withoutMarksOfItsOwnHasTailAndThroat() {
        Rope laid = rope(Construction.THREE_STRAND, Fibre.POLYESTER, mm(12));
        SpliceLayout layout = layouts(laid, EndSpec.of("three-strand-eye", flat(300)), EndSpec.of("plain"))
                .get(0);
        assertEquals(
                List.of("tail mark", "throat mark"),
                layout.marks().stream().map(Mark::name).toList());
        assertEquals(fine(256), place(places(layout), "tail mark"));
        assertEquals("4 tucks with each strand", layout.counts().get(0));
        assertTrue(layout.caution().contains("rope maker"), layout.caution());
    }

    @Test
    void plainEnds_haveNoLayout() {
        assertEquals(List.of(), layouts(BRAID, EndSpec.of("plain"), EndSpec.of("sealed")));
    }

    /** Middle of 10 m: 4,700 mm of clear rope beyond the throat, which lies tail, eye and take-up from the cut end. */
    @Test
    void marksAlong_lieWhereTheFinishedAssemblyWantsThem() {
        WantedMark middle = new WantedMark("middle", new Ratio(1, 2), Length.ZERO);
        WantedMark near = new WantedMark("1 m", Ratio.ZERO, Length.ofMetres(1));
        Demanded demanded = marked(List.of(middle, near));
        SpliceLayout along = demanded.layouts().get(demanded.layouts().size() - 1);
        long throat = 2_520_000 + 6_189_696 + 1_764_000;
        assertEquals(new FineLength(throat + 47_000_000), place(places(along), "middle"));
        assertEquals(new FineLength(throat + 7_000_000), place(places(along), "1 m"));
    }

    @Test
    void marksAlong_insideAnEyeAreRefused() {
        Demanded demanded = marked(List.of(new WantedMark("0.2 m", Ratio.ZERO, new Length(200))));
        assertEquals("marks", demanded.findings().get(0).field());
        assertEquals(List.of(), demanded.pieces());
    }

    private static FineLength place(Map<String, FineLength> places, String mark) {
        return Optional.ofNullable(places.get(mark)).orElseThrow(() -> new AssertionError("no " + mark));
    }

    private static Demanded marked(List<WantedMark> marks) {
        Asked asked = new Asked(Tolerance.NONE, Tolerance.NONE, Tolerance.NONE, marks);
        return model(BOOK, BRAID)
                .pieces(one(
                        new Make(Length.ofMetres(10), Measuring.USUAL, EYE, EndSpec.of("plain"), Extras.NONE, asked)));
    }

    private static List<SpliceLayout> layouts(Rope rope, EndSpec endA, EndSpec endB) {
        return model(BOOK, rope)
                .pieces(one(Bench.make(Length.ofMetres(10), endA, endB)))
                .layouts();
    }

    private static Map<String, FineLength> places(SpliceLayout layout) {
        return layout.marks().stream().collect(Collectors.toMap(Mark::name, Mark::fromCutEnd));
    }
}
