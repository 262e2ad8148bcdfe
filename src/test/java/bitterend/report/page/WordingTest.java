package bitterend.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

final class WordingTest {
    @Test
    void numberAndItsUnit_stayOnOneLine() {
        assertEquals(List.of("it takes", "12.340 m", "of rope"), Wording.wrapped("it takes 12.340 m of rope", 10));
        assertEquals(List.of("costs", "3.50 EUR;", "8 kg"), Wording.wrapped("costs 3.50 EUR; 8 kg", 10));
    }

    @Test
    void feetInchesAndSixteenths_stayOnOneLine() {
        assertEquals(
                List.of("it takes", "40 ft 5 13/16 in", "of rope"),
                Wording.wrapped("it takes 40 ft 5 13/16 in of rope", 17));
    }

    @Test
    void figureWiderThanItsLine_isBrokenAtItsBlanks() {
        assertEquals(List.of("40 ft 5", "13/16", "in"), Wording.wrapped("40 ft 5 13/16 in", 7));
    }

    @Test
    void wordsThatBeginLikeAUnit_areLeftAlone() {
        assertEquals(List.of("reel 2", "many"), Wording.wrapped("reel 2 many", 6));
        assertEquals(List.of("at 3", "in-lays"), Wording.wrapped("at 3 in-lays", 7));
    }

    @Test
    void blankWithinAFigure_isHeldOnAPageOfABrowser() {
        assertEquals("30'\u00a010\u00a01/16\" to 32'\u00a05\"", Wording.held("30' 10 1/16\" to 32' 5\""));
        assertEquals("at 3\u00a0ft\u00a02\u00a01/2\u00a0in, 2 x", Wording.held("at 3 ft 2 1/2 in, 2 x"));
    }

    /** What sets a PDF ends a line before the stroke of a fraction. */
    @Test
    void sixteenthsAndRopesInCapitals_stayWholeOnAPage() {
        assertEquals(
                List.of("(59\u00a0ft\u00a08\u00a09/16\u00a0in)", "W-HALF,"),
                Wording.parts("18.2 m (59 ft 8 9/16 in) of W-HALF, sea-going").stream()
                        .filter(Wording.Part::whole)
                        .map(Wording.Part::text)
                        .toList());
    }

    /** A browser ends a line behind a hyphen; the number of a piece is read whole, and nothing is lost on the way. */
    @Test
    void codeWithAHyphen_staysWholeOnAPageOfABrowser() {
        String words = "first G-2108/1.1-2 (bury-eye-hmpe, HM8); 2026-03-05 and 5 m of three-strand-eye  R-104";
        List<Wording.Part> parts = Wording.parts(words);
        assertEquals(
                List.of("G-2108/1.1-2", "2026-03-05", "R-104"),
                parts.stream()
                        .filter(Wording.Part::whole)
                        .map(Wording.Part::text)
                        .toList());
        assertEquals(
                Wording.held(words),
                parts.stream().map(Wording.Part::text).collect(java.util.stream.Collectors.joining()));
        assertEquals(List.of(), Wording.parts(""));
    }
}
