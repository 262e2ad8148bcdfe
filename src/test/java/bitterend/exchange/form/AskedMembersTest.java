package bitterend.exchange.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

final class AskedMembersTest {
    private static final String KNOWN = "a member known here: ";

    @Test
    void memberNobodyAskedFor_isTold_withWhatWasAsked() {
        assertEquals(
                List.of("lenght: " + KNOWN + "format, length, name; did you mean length?"),
                told("{\"format\": \"f\", \"name\": \"a\", \"lenght\": \"1 m\"}", root -> {
                    root.fields().text("name");
                    return root.fields().text("length");
                }));
    }

    @Test
    void objectOpenedTwice_wasAskedForBoth() {
        assertEquals(
                List.of("/in c: " + KNOWN + "a, b"),
                told("{\"format\": \"f\", \"in\": {\"a\": 1, \"b\": 2, \"c\": 3}}", root -> {
                    root.object("in").fields().text("a");
                    return root.object("in").has("b");
                }));
    }

    @Test
    void eachObjectOfAList_isLookedAt() {
        assertEquals(
                List.of("/rows/1 b: " + KNOWN + "a"),
                told(
                        "{\"format\": \"f\", \"rows\": [{\"a\": 1}, {\"a\": 1, \"b\": 2}]}",
                        root -> root.objects("rows").stream()
                                .map(row -> row.fields().text("a"))
                                .toList()));
    }

    @Test
    void listNobodyOpened_isTold_andNothingInsideIt() {
        assertEquals(
                List.of("rows: " + KNOWN + "format"),
                told("{\"format\": \"f\", \"rows\": [{\"a\": 1}]}", JsonObject::fields));
    }

    @Test
    void freeNames_remarksAndObjectsLeftEarly_areNoMistakes() {
        assertEquals(
                List.of(),
                told("{\"format\": \"f\", \"note\": \"n\", \"free\": {\"x\": 1}, \"left\": {\"y\": 2}}", root -> {
                    root.mayHave("note");
                    root.object("left").leave();
                    return root.object("free").names();
                }));
    }

    @Test
    void fileOfAnotherFormat_isToldAsThatAlone() {
        assertEquals(List.of("format: \"f\""), told("{\"format\": \"g\", \"x\": 1}", JsonObject::names));
    }

    @Test
    void partOfAFile_leavesTheRestAlone() {
        Findings findings = new Findings();
        InputFile file = new InputFile("x.json", "{\"format\": \"f\", \"a\": 1, \"b\": 2}", "");
        JsonDocument.readPart(file, "f", findings, root -> root.fields().text("a"));
        assertEquals(0, findings.size());
    }

    private static List<String> told(String json, Function<JsonObject, Object> reader) {
        Findings findings = new Findings();
        JsonDocument.read(new InputFile("x.json", json, ""), "f", findings, reader);
        return findings.sorted().stream().map(AskedMembersTest::inShort).toList();
    }

    private static String inShort(Finding finding) {
        return (finding.place() + " " + finding.field()).strip() + ": " + finding.expected();
    }
}
