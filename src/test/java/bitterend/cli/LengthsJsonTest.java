package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.catalogue.Grade;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What programs read of a cut length: every line of its derivation says how far it can be trusted, as the page does. */
final class LengthsJsonTest {
    private static final String SHOP = "demo-data/gannet-loft";
    private static final JsonMapper MAPPER = new JsonMapper();

    private final JsonNode all;

    LengthsJsonTest() throws IOException {
        all = MAPPER.readTree(out("--json")).path("lines");
    }

    private static String out(String... more) {
        String[] args = new String[more.length + 2];
        args[0] = "lengths";
        args[1] = SHOP;
        System.arraycopy(more, 0, args, 2, more.length);
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.err());
        return run.out();
    }

    private static List<JsonNode> lines(JsonNode line) {
        List<JsonNode> lines = new ArrayList<>();
        line.path("derivations").forEach(each -> each.path("lines").forEach(lines::add));
        return lines;
    }

    private static void assertTrust(String grade, boolean verified, JsonNode derivation) {
        assertEquals(grade, derivation.path("grade").asText(), derivation::toString);
        assertEquals(verified, derivation.path("verified").asBoolean(), derivation::toString);
    }

    private JsonNode line(String order) {
        for (JsonNode line : all) {
            if (order.equals(
                    line.path("order").asText() + "/" + line.path("line").asText())) {
                return line;
            }
        }
        throw new IllegalArgumentException(order);
    }

    private JsonNode labelled(String order, String label) {
        return lines(line(order)).stream()
                .filter(each -> each.path("label").asText().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyLine_hasAGradeAndSaysWhetherItIsVerified() {
        List<String> grades = Arrays.stream(Grade.values())
                .map(grade -> grade.name().toLowerCase(Locale.ROOT))
                .toList();
        for (JsonNode line : all) {
            String order = line.path("order").asText() + "/" + line.path("line").asText();
            lines(line).forEach(each -> {
                assertTrue(grades.contains(each.path("grade").asText()), order + each);
                assertTrue(each.path("verified").isBoolean(), order + each);
                boolean trusted = !each.path("grade").asText().equals("memory");
                assertTrue(trusted || !each.path("verified").asBoolean(), order + each);
            });
        }
    }

    /** The page marks as many lines as unverified. */
    @Test
    void unverifiedLines_areMarkedOnThePageToo() {
        int marked = 0;
        for (String order : List.of("G-2101/1", "G-2115/4", "G-2117/3")) {
            long unverified = lines(line(order)).stream()
                    .filter(each -> !each.path("verified").asBoolean())
                    .count();
            String page = out(order).replaceAll("\\s+", " ");
            assertEquals(unverified, page.split("], ?unverified|arithmetic, ?unverified", -1).length - 1, page);
            marked += (int) unverified;
        }
        assertTrue(marked >= 6, marked + " lines");
    }

    /** One line of each kind: the order's own, the shop's measured one, a handbook's, a dealer's sheet. */
    @Test
    void trust_isThatOfTheSource() {
        assertTrust("order", true, labelled("G-2101/1", "finished length"));
        assertTrust("shop", true, labelled("G-2101/1", "end A: take-up"));
        assertTrust("handbook", false, labelled("G-2107/1", "end A: tail"));
        assertTrust("derived", true, labelled("G-2107/1", "rounding up"));
        assertTrust("secondary", false, labelled("G-2117/3", "end A: round the eye"));
    }

    /** Both sizes of a dealer's thimble are his: the rope round it, and how far its crown lies from the throat. */
    @Test
    void bearingOfAnUnmeasuredThimble_isUnverified() {
        assertTrust("secondary", false, labelled("G-2117/3", "end A: throat to bearing point"));
        assertTrust("derived", true, labelled("G-2101/1", "end A: throat to bearing point"));
    }

    @Test
    void everyGrade_isExplained() throws IOException {
        String formats = Files.readString(Path.of("docs/file-formats.md"));
        String section = formats.substring(formats.indexOf("## What lengths --json prints"));
        for (Grade grade : Grade.values()) {
            assertTrue(section.contains("`" + grade.name().toLowerCase(Locale.ROOT) + "`"), grade.name());
        }
    }
}
