package bitterend.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bibliography names every source that built-in rows and docs name; ranges are printed with their default. */
final class SourcesTest {
    private static final Path RESOURCES = Path.of("src", "main", "resources", "bitterend");
    private static final Pattern NAMED = Pattern.compile(String.join(
            "|",
            "\\d+ CFR \\d+\\.\\d+",
            "8 CCR \\d+",
            "FM [\\d-]*\\d",
            "TB [\\d-]*\\d",
            "AC [\\d.]+-1B",
            "EN (?:ISO )?\\d+",
            "NAVEDTRA \\d+",
            "Mich\\. R [\\d.]*\\d",
            "BC OHS Regulation",
            "Safety Ordinance for Cranes",
            "A-A-\\d+",
            "UFC [\\d-]*\\d",
            "NSTM \\d+"));
    private static final Pattern HANDBOOK = Pattern.compile("\\[(\\d+)\\]");

    private static String bibliography() throws IOException {
        return Files.readString(Path.of("docs", "bibliography.md")).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "src/main/resources/bitterend/splices.json",
                "src/main/resources/bitterend/codes.json",
                "src/main/resources/bitterend/thimbles.json",
                "docs/how-a-length-is-made.md"
            })
    void everySource_standsInTheBibliography(String file) throws IOException {
        String text = Files.readString(Path.of(file)).replaceAll("\\s+", " ");
        String known = bibliography();
        Set<String> missing = new TreeSet<>();
        Matcher named = NAMED.matcher(text);
        while (named.find()) {
            String number = named.group().replaceAll("^(8 CCR|NAVEDTRA|FM) ", "");
            if (!known.contains(named.group()) && !known.contains(" " + number)) {
                missing.add(named.group());
            }
        }
        Matcher handbook = HANDBOOK.matcher(text);
        while (handbook.find()) {
            if (!known.contains("| [" + handbook.group(1) + "] |")) {
                missing.add(handbook.group());
            }
        }
        assertEquals(Set.of(), missing);
    }

    /** No author stands in the rows: pages name handbooks by their numbers. */
    @Test
    void rows_nameHandbooksByNumber() throws IOException {
        for (String name : List.of("splices.json", "codes.json", "thimbles.json")) {
            String text = Files.readString(RESOURCES.resolve(name));
            for (String author :
                    List.of("Ashley", "Avery", "Merry", "Toss", "Fry", "Nicholls", "Verrill", "Dana", "Pawson")) {
                assertTrue(!text.contains(author), name + " " + author);
            }
        }
    }

    /** Where print contradicts itself: what is printed, the default and why. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "tail of a double braid",
                "HMPE bury",
                "HMPE, taper",
                "federal manila sling item, tucks",
                "fibre long splice, legs for each inch of circumference",
                "rope to chain, strand unlaid",
                "wedge socket, dead end",
                "fibre ring",
                "back splice",
                "slip knot of a double braid",
                "soft pressed eye",
                "thimbles of one rope size",
                "shrinkage of nylon kernmantle at its first wetting",
                "fid",
                "clips of 1 in wire",
                "clear rope of wire slings, between splices and fittings"
            })
    void contradiction_isPrintedAsARangeWithItsDefault(String what) throws IOException {
        String row = Files.readAllLines(Path.of("docs", "how-a-length-is-made.md")).stream()
                .filter(line -> line.startsWith("| " + what + " |"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + what));
        assertEquals(5, row.split("\\|", -1).length, row);
    }
}
