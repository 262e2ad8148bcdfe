package bitterend.exchange.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.measure.Parsed;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days and figures as they are typed in several places; expectations from the calendars and decimal signs in use there. */
final class LocalFormTest {
    private static LocalForm form(String tag) {
        return LocalForm.of(tag).value().orElseThrow();
    }

    private static String said(Parsed<String> parsed) {
        return parsed.value().orElse("?");
    }

    @ParameterizedTest
    @CsvSource({
        "de-DE,5.3.2026,2026-03-05",
        "de-DE,05.03.26,2026-03-05",
        "de-DE,2026-03-05,2026-03-05",
        "de-DE,5.3.,?",
        "de-DE,31.2.2026,?",
        "de-DE,5/3/2026,?",
        "en-GB,5/3/2026,2026-03-05",
        "en-US,3/5/2026,2026-03-05",
        "en-US,13/5/2026,?",
        "en-US,5.3.2026,?",
        "fr-FR,05/03/2026,2026-03-05",
        "sv-SE,2026-03-05,2026-03-05"
    })
    void day_isThatOfThePlace(String tag, String typed, String file) {
        assertEquals(file, said(form(tag).day(typed)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "de-DE;23,4 m;23.4 m",
                "de-DE;1,500 m;1.500 m",
                "de-DE;23.4 m;23.4 m",
                "de-DE;1.500 m;?",
                "de-DE;1.500,25 m;?",
                "de-DE;12,5 m to 13,25 m: chafed;12.5 m to 13.25 m: chafed",
                "de-DE;bury-eye length 0,5 m pin 12,5 mm;bury-eye length 0.5 m pin 12.5 mm",
                "de-DE;20 mm +/-2,5 mm;20 mm +/-2.5 mm",
                "de-DE;eye=0,5 m;eye=0.5 m",
                "de-DE;swaged fork-1.250 with SB1.500;swaged fork-1.250 with SB1.500",
                "de-DE;swaged bore 1.250 mm;?",
                "de-DE;1.250-fork 1.2500-fork;1.250-fork 1.2500-fork",
                "de-DE;over all, on pin 40 mm;over all, on pin 40 mm",
                "en-GB;bury-eye length 0.5 m;bury-eye length 0.5 m",
                "en-GB;bury-eye length 0,5 m;?",
                "en-GB;23.4 m;23.4 m",
                "en-GB;1,500 m;?",
                "en-GB;23,4 m;?",
                "en-US;77 ft 6 1/2 in;77 ft 6 1/2 in"
            })
    void figure_becomesThatOfTheFilesOrIsRefused(String tag, String typed, String file) {
        assertEquals(file, said(form(tag).figures(typed)));
    }

    @Test
    void refusal_saysWhatToType() {
        assertTrue(form("de-DE").figures("1.500 m").refusal().orElse("").contains("1500, or 1,500"));
        assertTrue(form("de-DE").day("5.3.").refusal().orElse("").contains("31.12.2026 or 2026-12-31"));
    }

    @Test
    void withoutAPlace_nothingIsChanged() {
        assertEquals("5.3.2026", said(LocalForm.NONE.day("5.3.2026")));
        assertEquals("23,4 m", said(LocalForm.NONE.figures("23,4 m")));
        assertTrue(LocalForm.of("xx-YY").value().isEmpty());
        assertTrue(LocalForm.of("de").value().isEmpty());
    }
}
