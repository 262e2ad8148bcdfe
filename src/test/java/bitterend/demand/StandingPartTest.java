package bitterend.demand;

import static bitterend.demand.Bench.amount;
import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.flatOnPin;
import static bitterend.demand.Bench.mm;
import static bitterend.demand.Bench.model;
import static bitterend.demand.Bench.one;
import static bitterend.demand.Bench.rope;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Grade;
import bitterend.catalogue.Kinds;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Rope;
import bitterend.catalogue.SpliceBook;
import bitterend.catalogue.Thimble;
import bitterend.catalogue.ThroatAngle;
import bitterend.demand.Assembly.Extras;
import bitterend.demand.Assembly.Make;
import bitterend.demand.EndSpec.FittingSpec;
import bitterend.demand.EndSpec.Options;
import bitterend.demand.Measuring.Between;
import bitterend.exchange.SplicesJson;
import bitterend.finding.Finding;
import bitterend.measure.Diameter;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.Written;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A derivation says between which points a length is measured, and what lies between each throat and its point. */
final class StandingPartTest {
    private static final SpliceBook BOOK = SplicesJson.builtIn();
    private static final Rope BRAID = rope(Kinds.DOUBLE_BRAID, Kinds.POLYESTER, mm(12));
    private static final Rope WIRE = rope(Kinds.WIRE, Kinds.STEEL, mm(12));
    private static final EndSpec PLAIN = EndSpec.of("plain");
    private static final EndSpec EYE = EndSpec.of("double-braid-eye", flat(300));
    private static final EndSpec RING = EndSpec.of("wire-grommet");
    private static final String BEARING = "end A: throat to bearing point";

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "BEARING_POINTS; bearing point to bearing point",
                "FLAT; inside of the eyes, laid flat",
                "OUTSIDE; over the outside of the eyes, laid flat",
                "ON_PINS; on pins of 60 mm"
            })
    void finishedLength_saysBetweenWhatItIsMeasured(Between between, String words) {
        Derivation derivation = derive(BOOK, BRAID, make(between, EYE));
        assertEquals(words, derivation.lines().get(0).formula().exact());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "BEARING_POINTS; inside length of the eye",
                "FLAT; inside length of the eye, flat",
                "OUTSIDE; inside length of the eye, flat",
                "ON_PINS; eye on the pin of the measurement"
            })
    void softEye_bearsAsItIsMeasured(Between between, String words) {
        assertEquals(words, formula(derive(BOOK, BRAID, make(between, EYE))));
    }

    @Test
    void eyeOnItsPin_bearsThere() {
        EndSpec onPin = EndSpec.of("double-braid-eye", flatOnPin(300, 60));
        assertEquals("eye on its pin of 60 mm", formula(derive(BOOK, BRAID, make(Between.BEARING_POINTS, onPin))));
    }

    /** A swaged terminal bears on the bottom of its bore, a wedge socket where the rope turns. */
    @Test
    void fitting_bearsOnItsPin() {
        Derivation swaged = derive(BOOK, WIRE, make(Between.BEARING_POINTS, fitted("swaged")));
        assertEquals("centre of the pin to the bottom of the bore", formula(swaged));
        assertEquals(fine(-45), amount(swaged, BEARING));
        assertEquals(
                "centre of the pin to where the rope turns round the wedge",
                formula(derive(BOOK, WIRE, make(Between.BEARING_POINTS, fitted("wedge-socket")))));
    }

    /** Off the sheet of a thimble nobody has measured; typed by the shop it is arithmetic. */
    @Test
    void thimble_bearsOnItsCrownAndIsKnownAsItsRowIs() {
        Provenance sheet = new Provenance("a sheet", Grade.SECONDARY, false);
        Make lined = make(
                Between.BEARING_POINTS, EndSpec.of("double-braid-eye", new EyeSpec.OnThimble("T12", Diameter.NONE)));
        Demanded offTheSheet = model(withThimble(sheet), BRAID).pieces(one(lined));
        Derivation derivation = offTheSheet.derivations().get(0);
        assertEquals("of the thimble", formula(derivation));
        assertEquals(fine(-55), amount(derivation, BEARING));
        assertEquals(sheet, provenance(derivation, BEARING));
        assertEquals(sheet, provenance(derivation, "end A: round the eye"));
        assertEquals(
                List.of("the shop's own measurements in thimbles.json: sheets differ by up to 15 %"),
                offTheSheet.remarks().stream().map(Finding::expected).toList());
        assertEquals(
                "Its thimble is from a sheet, unverified: measure yours and type it.",
                offTheSheet.work().get(0).unchecked());
        Demanded typed =
                model(withThimble(new Provenance("", Grade.SHOP, true)), BRAID).pieces(one(lined));
        assertEquals(Provenance.ARITHMETIC, provenance(typed.derivations().get(0), "end A: round the eye"));
        assertEquals(List.of(), typed.remarks());
        assertEquals("", typed.work().get(0).unchecked());
    }

    /** A ring has an inside circumference, or a working length laid flat; anything else has neither. */
    @Test
    void circumference_isThatOfARingAlone() {
        assertEquals("", refusals(WIRE, make(Between.CIRCUMFERENCE, RING)));
        assertEquals("", refusals(WIRE, make(Between.FLAT, RING)));
        assertEquals("", refusals(WIRE, make(Between.BEARING_POINTS, RING)));
        String otherwise =
                "measured: a ring so measured: circumference, or flat for the working length of a ring laid flat";
        assertEquals(otherwise, refusals(WIRE, make(Between.OUTSIDE, RING)));
        assertEquals(otherwise, refusals(WIRE, make(Between.ON_PINS, RING)));
        assertEquals(
                "measured: circumference: a ring: other assemblies are measured pin to pin, flat or outside",
                refusals(BRAID, make(Between.CIRCUMFERENCE, EYE)));
    }

    @Test
    void ring_hasNoOtherEnd() {
        Make make = new Make(
                Written.worked(Length.ofMetres(10)),
                Measuring.USUAL,
                RING,
                EndSpec.of("wire-tucked-eye", flat(300)),
                Extras.NONE);
        assertEquals("end b: wire-tucked-eye: nothing: a grommet has no other end", refusals(WIRE, make));
    }

    /** An eye at half its rope closes on nothing; it is told as it was written, where somebody wrote it. */
    @Test
    void eye_thatDoesNotCloseIsToldAsItWasWritten() {
        String wanted = ": an inside length above half the rope, 6 mm";
        assertEquals(
                "end a: an eye of 6 mm" + wanted,
                refusals(BRAID, make(Between.BEARING_POINTS, EndSpec.of("double-braid-eye", flat(6)))));
        EndSpec written = new EndSpec(
                "double-braid-eye", flat(6), FittingSpec.NONE, Options.NONE, "double-braid-eye length 0.6 cm");
        assertEquals(
                "end a: double-braid-eye length 0.6 cm" + wanted,
                refusals(BRAID, make(Between.BEARING_POINTS, written)));
        assertEquals("", refusals(BRAID, make(Between.BEARING_POINTS, EndSpec.of("double-braid-eye", flat(100)))));
    }

    /** A finished assembly tells a take-up where something is spliced, and its ends are such as can be made. */
    @Test
    void takeUp_isToldOfSplicedEnds() {
        TakeUp ofOne = takeUp(BRAID, EYE, PLAIN);
        assertTrue(ofOne.isKnown());
        assertEquals(1, ofOne.ends());
        assertEquals("double-braid-eye", ofOne.termination());
        assertEquals(2, takeUp(BRAID, EYE, EYE).ends());
    }

    @Test
    void takeUp_isUnknownOfEndsThatTakeNothingUp() {
        TakeUp plain = takeUp(BRAID, PLAIN, PLAIN);
        assertFalse(plain.isKnown());
        assertEquals(
                List.of("an end that is spliced or knotted"),
                plain.findings().stream().map(Finding::expected).toList());
        assertFalse(takeUp(WIRE, fitted("wedge-socket"), PLAIN).isKnown());
    }

    /** An eye splice without an eye, a fitting with one, a knot along at an end: none of them is an assembly. */
    @Test
    void takeUp_isUnknownOfEndsThatStateTooLittleOrTooMuch() {
        EndSpec withEye = new EndSpec("swaged", flat(300), new FittingSpec("", fine(45)), Options.NONE);
        assertFalse(takeUp(BRAID, EndSpec.of("double-braid-eye"), EYE).isKnown());
        assertFalse(
                takeUp(WIRE, withEye, EndSpec.of("wire-tucked-eye", flat(300))).isKnown());
        assertFalse(takeUp(BRAID, EndSpec.of("overhand-knot"), PLAIN).isKnown());
    }

    private static TakeUp takeUp(Rope rope, EndSpec endA, EndSpec endB) {
        return model(BOOK, rope).takeUp(one(Bench.make(Length.ofMetres(10), endA, endB)), fine(12_000));
    }

    private static EndSpec fitted(String id) {
        return new EndSpec(id, EyeSpec.NONE, new FittingSpec("", fine(45)), Options.NONE);
    }

    private static SpliceBook withThimble(Provenance provenance) {
        return Bench.withThimbles(
                BOOK,
                new Thimble(
                        "T12", fine(130), fine(55), fine(6), ThroatAngle.ofDegrees(60), mm(11), mm(13), provenance));
    }

    private static Make make(Between between, EndSpec endA) {
        Diameter pin = between == Between.ON_PINS ? mm(60) : Diameter.NONE;
        return new Make(
                Written.worked(Length.ofMetres(10)),
                new Measuring(between, pin, Ratio.ZERO, Ratio.ZERO),
                endA,
                PLAIN,
                Extras.NONE);
    }

    private static Derivation derive(SpliceBook book, Rope rope, Make make) {
        return model(book, rope).pieces(one(make)).derivations().get(0);
    }

    private static String formula(Derivation derivation) {
        return line(derivation, BEARING).formula().exact();
    }

    private static Provenance provenance(Derivation derivation, String label) {
        return line(derivation, label).provenance();
    }

    private static Derivation.Line line(Derivation derivation, String label) {
        return derivation.lines().stream()
                .filter(line -> line.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static String refusals(Rope rope, Make make) {
        return model(BOOK, rope).pieces(one(make)).findings().stream()
                .filter(Finding::isError)
                .map(each -> each.field() + ": " + each.found() + ": " + each.expected())
                .collect(Collectors.joining("\n"));
    }
}
