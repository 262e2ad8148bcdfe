package bitterend.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

final class SentenceTest {
    private static final Length CUT = new Length(12_340);
    private static final Sentence SHORT = Sentence.of("A-1/2.3 m takes ")
            .and(CUT)
            .and("; E-1.000 m has ")
            .and(new Length(999))
            .and(" in one run");

    @Test
    void lengths_arePrintedInTheUnitsOfThePage() {
        assertEquals("A-1/2.3 m takes 12.340 m; E-1.000 m has 0.999 m in one run", SHORT.print(Units.METRIC));
        assertEquals(
                "A-1/2.3 m takes 40 ft 5 13/16 in; E-1.000 m has 3 ft 3 5/16 in in one run",
                SHORT.print(Units.IMPERIAL));
    }

    @Test
    void typedLength_staysAsTyped_andIsExplainedOnAPageInTheOtherUnits() {
        Sentence coming =
                Sentence.of("order 7: ").and(Written.parse("490 ft").value().orElseThrow());
        assertEquals("order 7: 490 ft", coming.exact());
        assertEquals("order 7: 490 ft", coming.print(Units.IMPERIAL));
        assertEquals("order 7: 490 ft (149.352 m)", coming.print(Units.METRIC));
    }

    @Test
    void fineLength_isPrintedInMillimetresOrInches() {
        Sentence lost = Sentence.of("changed by ").and(FineLength.ofMillimetres(-40));
        assertEquals("changed by -40 mm", lost.exact());
        assertEquals("changed by -1 9/16 in", lost.print(Units.IMPERIAL));
    }

    @Test
    void wordsBesideEachOther_areOneTerm() {
        assertEquals(Sentence.of("ab"), Sentence.of("a").and(Sentence.of("").and("b")));
        assertNotEquals(Sentence.of("12.340 m"), Sentence.NONE.and(CUT));
        assertTrue(Sentence.of("").isEmpty());
    }

    @Test
    void listOfSentences_isJoinedByWords() {
        assertEquals("", Sentence.joined("; ", List.of()).exact());
        assertEquals(
                "a; 12.340 m; b",
                Sentence.joined("; ", List.of(Sentence.of("a"), Sentence.NONE.and(CUT), Sentence.of("b")))
                        .exact());
    }

    @Test
    void beginning_isTakenOffWhereItIsThere() {
        assertEquals(
                "takes 12.340 m",
                Sentence.of("A-1: takes ").and(CUT).without("A-1: ").exact());
        assertEquals(SHORT, SHORT.without("A-2"));
    }

    @Test
    void sentenceOfAFile_isReadBackWithItsLengths() {
        assertEquals(SHORT, Sentence.of(SHORT.exact(), SHORT.metres()));
        assertEquals(
                Sentence.of("reads 1.000 m"),
                Sentence.of("reads 1.000 m", List.of(new Length(2000))),
                "a length that does not stand in the words is no term");
    }
}
