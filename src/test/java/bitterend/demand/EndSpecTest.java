package bitterend.demand;

import static bitterend.demand.Bench.fine;
import static bitterend.demand.Bench.flat;
import static bitterend.demand.Bench.flatOnPin;
import static bitterend.demand.Bench.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import bitterend.catalogue.Allowance;
import bitterend.catalogue.EyeSpec;
import bitterend.catalogue.Provenance;
import bitterend.catalogue.Term;
import bitterend.catalogue.Yardstick;
import bitterend.demand.EndSpec.FittingSpec;
import bitterend.demand.EndSpec.Options;
import bitterend.measure.Diameter;
import bitterend.measure.FineLength;
import bitterend.measure.Ratio;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** An end is known by how it is made, and said in the form of the cell of an order. */
final class EndSpecTest {
    private static final FittingSpec BORE = new FittingSpec("", fine(45));
    private static final EndSpec EYE = EndSpec.of("bury-eye", flat(300));

    @Test
    void ends_madeAlikeAreEqualHoweverTheyWereWritten() {
        EndSpec written = new EndSpec("bury-eye", flat(300), FittingSpec.NONE, Options.NONE, "bury-eye length 30 cm");
        assertEquals(EYE, written);
        assertEquals(EYE.hashCode(), written.hashCode());
    }

    @Test
    void ends_thatDifferInOneThingAreNotEqual() {
        Stream.of(
                        new EndSpec("bury-eye-hmpe", EYE.eye(), FittingSpec.NONE, Options.NONE),
                        new EndSpec("bury-eye", flat(301), FittingSpec.NONE, Options.NONE),
                        new EndSpec("bury-eye", EYE.eye(), BORE, Options.NONE),
                        new EndSpec("bury-eye", EYE.eye(), FittingSpec.NONE, new Options(5, false, "", "")))
                .forEach(other -> {
                    assertNotEquals(EYE, other);
                    assertNotEquals(EYE.hashCode(), other.hashCode());
                });
    }

    static Stream<Arguments> endsInWords() {
        return Stream.of(
                Arguments.of("plain", EndSpec.of("plain")),
                Arguments.of("bury-eye length 300 mm", EYE),
                Arguments.of("bury-eye length 300 mm pin 150 mm", EndSpec.of("bury-eye", flatOnPin(300, 150))),
                Arguments.of(
                        "bury-eye perimeter 600 mm",
                        EndSpec.of("bury-eye", new EyeSpec.Perimeter(fine(600), Diameter.NONE))),
                Arguments.of(
                        "bury-eye diameter 190 mm",
                        EndSpec.of("bury-eye", new EyeSpec.RoundEye(fine(190), Diameter.NONE))),
                Arguments.of(
                        "bury-eye ratio 5 pin 60 mm",
                        EndSpec.of("bury-eye", new EyeSpec.PinRatio(Ratio.of(5), mm(60)))),
                Arguments.of(
                        "bury-eye thimble T12", EndSpec.of("bury-eye", new EyeSpec.OnThimble("T12", Diameter.NONE))),
                Arguments.of(
                        "swaged fork-12", fitted("swaged", new FittingSpec("fork-12", FineLength.ZERO), Options.NONE)),
                Arguments.of("swaged bore 45 mm", fitted("swaged", BORE, Options.NONE)),
                Arguments.of(
                        "three-strand-eye length 250 mm tucks 5 tapered",
                        new EndSpec("three-strand-eye", flat(250), FittingSpec.NONE, new Options(5, true, "", ""))),
                Arguments.of(
                        "short-splice to M24",
                        fitted("short-splice", FittingSpec.NONE, new Options(0, false, "", "M24"))),
                Arguments.of(
                        "bury-eye length 300 mm tail 90 diameters",
                        new EndSpec("bury-eye", flat(300), FittingSpec.NONE, tail(diameters(90)))));
    }

    @ParameterizedTest
    @MethodSource("endsInWords")
    void end_thatNobodyWroteIsSaidInTheFormOfTheCell(String words, EndSpec end) {
        assertEquals(words, EndWords.of(end));
    }

    @Test
    void end_thatSomebodyWroteIsSaidAsItWasWritten() {
        assertEquals(
                "bury-eye length 30 cm",
                EndWords.of(
                        new EndSpec("bury-eye", flat(300), FittingSpec.NONE, Options.NONE, "bury-eye length 30 cm")));
    }

    /** A length is told as it was written, up to the next option; so many diameters are told with what they come to. */
    @Test
    void tail_isToldAsWrittenWhereItIsALength() {
        Allowance length = allowance(new Term.Fixed(fine(900)));
        assertEquals(
                "90 cm", written(length, "bury-eye length 30 cm tail 90 cm").tailWritten());
        assertEquals(
                "90 cm",
                written(length, "bury-eye length 30 cm tail 90 cm with SB12").tailWritten());
        assertEquals(
                "90 cm",
                written(length, "bury-eye length 30 cm tail 90 cm tucks 5").tailWritten());
        assertEquals("", written(length, "").tailWritten());
        assertEquals(
                "",
                written(diameters(90), "bury-eye length 30 cm tail 90 diameters")
                        .tailWritten());
        assertEquals("", written(Allowance.NOTHING, "bury-eye length 30 cm").tailWritten());
    }

    private static EndSpec written(Allowance tail, String words) {
        return new EndSpec("bury-eye", flat(300), FittingSpec.NONE, tail(tail), words);
    }

    private static EndSpec fitted(String id, FittingSpec fitting, Options options) {
        return new EndSpec(id, EyeSpec.NONE, fitting, options);
    }

    private static Options tail(Allowance tail) {
        return new Options(0, false, "", "", tail);
    }

    private static Allowance diameters(long count) {
        return allowance(new Term.Multiple(Ratio.of(count), Yardstick.DIAMETER));
    }

    private static Allowance allowance(Term term) {
        return new Allowance(List.of(term), Provenance.ORDER);
    }
}
