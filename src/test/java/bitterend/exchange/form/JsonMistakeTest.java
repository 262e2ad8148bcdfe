package bitterend.exchange.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Slips of the pen in JSON, each told at the line where it was made. */
final class JsonMistakeTest {
    private static String told(String text) {
        Findings findings = new Findings();
        JsonDocument.read(new InputFile("ropes.json", text, ""), "x/1", findings, document -> document);
        List<Finding> all = findings.sorted();
        assertEquals(1, all.size(), all::toString);
        return all.get(0).place() + ": " + all.get(0).expected();
    }

    @Test
    void missingComma_isToldWhereItBelongs_andInWhichRow() {
        assertEquals(
                "line 4: a comma at the end of this, at DB12, since more follows",
                told(
                        """
                        {"format": "x/1",
                         "ropes": [
                          {"id": "DB12",
                           "price": "2 EUR/m"

                           "name": "double braid"}]}
                        """));
        assertEquals(
                "line 1: a comma at the end of this, at DB12, since more follows",
                told("{\"ropes\": [{\"id\": \"DB12\"}\n {\"id\": \"DB14\"}]}"));
    }

    @Test
    void commaTooMany_isToldInItsLine() {
        assertEquals("line 1: no comma before the closing }", told("{\"format\": \"x/1\",\n}"));
        assertEquals("line 1: no comma before the closing ], at A", told("{\"ropes\": [{\"id\": \"A\"},\n]}"));
        assertEquals("line 2: one comma between two things, and none before the first", told("{\"a\": [1,\n, 2]}"));
    }

    @Test
    void bracketThatIsNotClosed_isToldWhereItWasOpened() {
        assertEquals(
                "line 2: a ] for the [ of this line, before the end of the file",
                told("{\n\"ropes\": [\n{\"id\": \"A\"}\n"));
        assertEquals("line 1: a } for the { of this line, before the end of the file", told("{\"format\": \"x/1\"\n"));
        assertEquals("line 1: a ] first: what was opened last is closed first", told("{\"ropes\": [{\"id\": \"A\"}}"));
    }

    @Test
    void quotes_areToldOf() {
        assertEquals(
                "line 1: a double quote at the end of the text that begins in this line",
                told("{\"name\": \"double braid,\n\"id\": \"A\"}"));
        assertEquals("line 1: plain double quotes, \", around texts and names", told("{'name': 'double'}"));
        assertEquals("line 1: plain double quotes, \", around texts and names", told("{\"name\": \u201cdouble\u201d}"));
        assertEquals("line 1: double quotes around a text: \"white\"", told("{\"colour\": white}"));
        assertEquals("line 1: a name in double quotes", told("{colour: \"white\"}"));
    }

    @Test
    void whatJsonHasNot_isToldOf() {
        assertEquals(
                "line 1: no comment: JSON has none; \"note\" is for what people should know",
                told("{// ours\n\"a\": 1}"));
        assertEquals("line 1: the member id once in an object, at A", told("{\"id\": \"A\", \"id\": \"B\"}"));
        assertEquals("line 1: a colon between a name and what it is", told("{\"id\" = \"A\"}"));
        assertEquals(
                "line 2: nothing after the last }: there is one too many before, or two files in one",
                told("{\"format\": \"x/1\"}\n}"));
    }
}
