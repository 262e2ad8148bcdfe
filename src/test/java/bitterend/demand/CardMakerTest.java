package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.flatOnPin;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.rope;
import static bitterend.demand.Rigging.BRAID;
import static bitterend.demand.Rigging.EYE;
import static bitterend.demand.Rigging.PLAIN;
import static bitterend.demand.Rigging.SHACKLE;
import static bitterend.demand.Rigging.between;
import static bitterend.demand.Rigging.eyeWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Rope;
import bitterend.demand.Assembly.Asked;
import bitterend.demand.Assembly.Make;
import bitterend.demand.EndSpec.FittingSpec;
import bitterend.demand.EndSpec.Options;
import bitterend.demand.Measuring.Between;
import bitterend.demand.SpliceCard.How;
import bitterend.demand.SpliceCard.Outcome;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A splice card says how long a leg is to come out, between which points, and under which conditions. */
final class CardMakerTest {
    private static final Length TEN_METRES = Length.ofMetres(10);
    private static final Rope WIRE = rope(Kinds.WIRE, Kinds.STEEL, mm(12));
    private static final EndSpec FORK =
            new EndSpec("swaged", EyeSpec.NONE, new FittingSpec("", fine(45)), Options.NONE);
    private static final EndSpec WIRE_EYE = EndSpec.of("wire-tucked-eye", flat(300));

    @Test
    void legWithEyes_isMeasuredBetweenTheirBearings() {
        SpliceCard card = card(BRAID, usual(EYE, EYE));
        assertEquals("bearing point to bearing point, slack and dry", ordered(card));
        assertEquals("slack and dry on the floor, inside of the eyes, laid flat", floor(card));
        assertEquals("bearing point to bearing point, slack and dry", fresh(card, How.PINS));
        assertEquals(Optional.empty(), card.find(How.TENSION));
    }

    @Test
    void legWithOneEye_isMeasuredOnTheFloorToItsOtherEnd() {
        assertEquals(
                "slack and dry on the floor, inside of the eye, laid flat, to the other end",
                floor(card(BRAID, usual(EYE, PLAIN))));
        assertEquals(
                "slack and dry on the floor, inside of the eye, laid flat, to the pin",
                floor(card(WIRE, usual(WIRE_EYE, FORK))));
    }

    @Test
    void legWithoutEyes_isMeasuredFromPinToPinOrEndToEnd() {
        SpliceCard bare = card(BRAID, usual(PLAIN, PLAIN));
        assertEquals("end to end, slack and dry", ordered(bare));
        assertEquals("slack and dry on the floor, end to end", floor(bare));
        SpliceCard forks = card(WIRE, usual(FORK, FORK));
        assertEquals("pin to pin, slack and dry", ordered(forks));
        assertEquals("slack and dry on the floor, pin to pin", floor(forks));
        assertEquals("pin to pin, slack and dry", fresh(forks, How.PINS));
    }

    @Test
    void ring_isMeasuredRoundItsInsideAndHasOneEnd() {
        SpliceCard card = card(WIRE, usual(EndSpec.of("wire-grommet"), PLAIN));
        assertEquals("slack and dry on the floor, round the inside of the ring", floor(card));
        assertEquals("inside circumference of the ring, slack and dry", ordered(card));
        assertEquals(1, card.ends().size());
    }

    /** Over the outside at either end lies one rope of 12 mm more than inside. */
    @Test
    void outside_isMeasuredOverTheRope() {
        SpliceCard card = card(BRAID, measured(new Measuring(Between.OUTSIDE, Diameter.NONE, Ratio.ZERO, Ratio.ZERO)));
        assertEquals("over the outside of the eyes, laid flat, slack and dry", ordered(card));
        assertEquals("slack and dry on the floor, over the outside of the eyes, laid flat", floor(card));
        assertEquals(fine(10_000), card.floor().length());
        assertEquals(fine(10_000 - 24 - 600), card.clear());
        assertEquals(Optional.empty(), card.find(How.PINS));
    }

    /** Hardware is in the length that the order states, and not in the rope that is measured at the bench. */
    @Test
    void legOverHardware_isOrderedOverItAndMeasuredWithoutIt() {
        SpliceCard card = card(BRAID, between("SB12", "end", TEN_METRES, eyeWith(SHACKLE), EYE));
        assertEquals("inside of shackle SB12 to bearing point of end B, slack and dry", ordered(card));
        assertEquals(fine(10_000), card.ordered().length());
        assertEquals("bearing point to bearing point, slack and dry", fresh(card, How.PINS));
        assertEquals(fine(9_952), card.find(How.PINS).orElseThrow().length());
        assertEquals(fine(9_952), card.floor().length());
    }

    /** The 1 mm that a shackle may be off is added to a tolerance that is stated, and is none where none is. */
    @Test
    void tolerance_overHardwareIsThatOfTheRopeAndTheHardware() {
        Make over = between("SB12", "end", TEN_METRES, eyeWith(SHACKLE), EYE);
        assertFalse(card(BRAID, over).ordered().isJudged());
        SpliceCard judged = card(BRAID, within(over, 150));
        assertEquals(fine(151), judged.ordered().tolerance());
        assertEquals(fine(150), judged.floor().tolerance());
    }

    /** 10,200 mm under a tension that stretches it by 2 % are 10,000 mm slack: the two pins stand 10,200 mm apart. */
    @Test
    void tension_isACondition() {
        Measuring tensioned =
                new Measuring(Between.BEARING_POINTS, Diameter.NONE, Ratio.percent(2), Ratio.ZERO, Ratio.ZERO);
        SpliceCard card = card(BRAID, within(measured(tensioned, 10_200), 204));
        assertEquals("bearing point to bearing point, under the tension that stretches it by 2 %", ordered(card));
        Outcome under = card.find(How.TENSION).orElseThrow();
        assertEquals(
                "bearing point to bearing point, dry, under the tension that stretches it by 2 %",
                under.measured().exact());
        assertEquals(fine(10_200), under.length());
        assertEquals(fine(204), under.tolerance());
        assertEquals(fine(10_000), card.floor().length());
        assertEquals(fine(200), card.floor().tolerance());
    }

    /** 9,900 mm after a first wetting that shrinks it by 1 % are 10,000 mm fresh; 10,100 mm bedded in by 1 % are, too. */
    @Test
    void waterAndFirstLoads_areConditions() {
        Measuring wetted =
                new Measuring(Between.BEARING_POINTS, Diameter.NONE, Ratio.ZERO, Ratio.percent(1), Ratio.ZERO);
        SpliceCard wet = card(BRAID, measured(wetted, 9_900));
        assertEquals("bearing point to bearing point, after a first wetting that shrinks it by 1 %", ordered(wet));
        assertEquals(fine(10_000), wet.floor().length());
        assertEquals(Optional.empty(), wet.find(How.TENSION));
        Measuring bedded =
                new Measuring(Between.BEARING_POINTS, Diameter.NONE, Ratio.ZERO, Ratio.ZERO, Ratio.percent(1));
        SpliceCard loaded = card(BRAID, measured(bedded, 10_100));
        assertEquals("bearing point to bearing point, after first loads that lengthen it by 1 %", ordered(loaded));
        assertEquals(fine(10_000), loaded.floor().length());
    }

    @Test
    void pins_areThoseOfTheMeasurement() {
        Measuring onPins = new Measuring(Between.ON_PINS, mm(60), Ratio.ZERO, Ratio.ZERO);
        SpliceCard card = card(BRAID, measured(onPins));
        assertEquals("on pins of 60 mm, slack and dry", ordered(card));
        assertEquals("on pins of 60 mm, slack and dry", fresh(card, How.PINS));
        assertEquals(fine(10_000), card.find(How.PINS).orElseThrow().length());
        assertTrue(card.floor().length().compareTo(fine(10_000)) > 0, "an eye is longer flat than on a pin");
    }

    /** Only a spliced eye that is not lined has an angle at its throat; without a pin it is not known. */
    @Test
    void throatAngle_isToldOfSoftEyesAlone() {
        SpliceCard card = card(BRAID, usual(EndSpec.of("double-braid-eye", flatOnPin(300, 150)), EYE));
        assertEquals("throat angle 60.2 degrees", card.ends().get(0).eye().throatAngle());
        assertEquals(
                "throat angle not checked, no pin or thimble stated",
                card.ends().get(1).eye().throatAngle());
        SpliceCard knot = card(BRAID, usual(EndSpec.of("bowline", flatOnPin(300, 150)), PLAIN));
        assertEquals("", knot.ends().get(0).eye().throatAngle());
        assertTrue(knot.ends().get(0).hasEye());
        assertFalse(knot.ends().get(1).hasEye());
    }

    private static Make usual(EndSpec endA, EndSpec endB) {
        return Bench.make(TEN_METRES, endA, endB);
    }

    private static Make measured(Measuring measuring) {
        return measured(measuring, 10_000);
    }

    private static Make measured(Measuring measuring, long mm) {
        return new Make(Written.worked(new Length(mm)), measuring, EYE, EYE, Assembly.Extras.NONE);
    }

    private static Make within(Make make, long mm) {
        Tolerance tolerance = new Tolerance(Written.worked(new Length(mm)), Ratio.ZERO);
        Asked asked = new Asked(tolerance, Tolerance.NONE, Tolerance.NONE, List.of());
        return new Make(make.finished(), make.measuring(), make.endA(), make.endB(), make.extras(), asked);
    }

    private static SpliceCard card(Rope rope, Make make) {
        Demanded demanded = Bench.model(Rigging.BOOK, rope).pieces(one(make));
        return demanded.findCard().orElseThrow(() -> new AssertionError(demanded.findings()));
    }

    private static String ordered(SpliceCard card) {
        return card.ordered().measured().exact();
    }

    private static String floor(SpliceCard card) {
        return fresh(card, How.SLACK);
    }

    private static String fresh(SpliceCard card, How how) {
        return card.find(how).orElseThrow().measured().exact();
    }
}
