package bitterend.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody wrote keeps its words beside its value. */
final class WrittenTest {

    @ParameterizedTest
    @CsvSource({
        "31 ft 6 in, IMPERIAL, 31 ft 6 in",
        "31 ft 6 in, METRIC, 31 ft 6 in (9601.2 mm)",
        "18 in, IMPERIAL, 18 in",
        "3 fathoms, IMPERIAL, 3 fathoms",
        "12500 mm, METRIC, 12500 mm",
        "77 mm, IMPERIAL, 77 mm (3 1/16 in)",
        "  12.5   m , METRIC, 12.5 m"
    })
    void length_isPrintedAsWritten_andBesideItInTheOtherSystem(String text, Units units, String printed) {
        assertEquals(printed, written(text).print(units, length -> LengthText.print(length, units)));
    }

    @Test
    void length_thatNobodyWrote_isPrintedAsThePageDoes() {
        Written worked = Written.worked(new Length(12_345));
        assertEquals("12345 mm", worked.print(Units.METRIC, LengthText::exact));
        assertEquals("12345 mm", worked.kept());
    }

    @Test
    void wholeMillimetres_areNoLessToCut_andNoMoreThatAreThere() {
        Written feet = written("31 ft 6 in");
        assertEquals(96_012_000, feet.exact().units());
        assertEquals(new Length(9_602), feet.roundedUp());
        assertEquals(new Length(9_601), feet.roundedDown());
    }

    @Test
    void lengths_areEqualHoweverTheyWereWritten() {
        assertEquals(written("31 ft 6 in"), written("378 in"));
        assertEquals(written("31 ft 6 in").hashCode(), written("378 in").hashCode());
        assertNotEquals(written("12 m"), written("12.001 m"));
    }

    @ParameterizedTest
    @CsvSource({
        "bury-eye length 14 in pin 4 in / whipped, bury-eye length 355.6 mm pin 101.6 mm / whipped",
        "bury-eye length 1 ft 2 1/2 in tucks 4 / sealed, bury-eye length 368.3 mm tucks 4 / sealed",
        "double-braid-eye thimble T12 / swaged bore 45 mm, double-braid-eye thimble T12 / swaged bore 45 mm",
        "bury-eye ratio 5 pin 0.15 m / short-splice to M-24, bury-eye ratio 5 pin 150 mm / short-splice to M-24"
    })
    void lengthsInWords_areFound(String words, String exact) {
        assertEquals(exact, LengthsInWords.exact(words));
    }

    private static Written written(String text) {
        return Written.parse(text).value().orElseThrow();
    }
}
