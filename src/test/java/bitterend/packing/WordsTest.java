package bitterend.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.measure.Length;
import org.junit.jupiter.api.Test;

/** Lengths inside sentences are found again as they were written. */
final class WordsTest {
    @Test
    void everyLengthOfASentence_isReprinted() {
        String sentence = "A/1.1 takes " + Words.of(new Length(12_345)) + "; beside it R 1.500 mm has "
                + Words.of(new Length(7)) + ", at most (" + Words.of(new Length(999_999_999)) + ").";
        assertEquals(
                "A/1.1 takes <12345>; beside it R 1.500 mm has <7>, at most (<999999999>).",
                Words.reprinted(sentence, length -> "<" + length.mm() + ">"));
    }

    @Test
    void idsAndCoarserFigures_areLeftAlone() {
        String sentence = "G-2101/1.250 moves 2.5 m beside x12.345 m and 12.345 metres";
        assertEquals(sentence, Words.reprinted(sentence, length -> "?"));
    }
}
