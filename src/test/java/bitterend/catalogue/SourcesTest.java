package bitterend.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The bibliography names every source that built-in rows and docs name; ranges are printed with their default. */
final class SourcesTest {
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

    /** The number of a handbook; initials and the first surname; the first figures of a standard or a rule. */
    private static final Pattern MARK_OF_A_WORK = Pattern.compile(
            "^\\| (\\[\\d+\\]) \\||^\\* (?:\\p{Lu}\\. )+(\\p{Lu}[\\p{L}-]+)|^\\* [^(,]*?(\\d[\\d.-]{3,}\\d)");

    private static final Pattern HANDBOOK_ROW = Pattern.compile("\\| \\[\\d+\\] \\| ([^,*(]*).*");
    private static final Pattern SURNAME = Pattern.compile("\\b\\p{Lu}\\p{L}{2,}\\b");
    private static final Pattern TEXT = Pattern.compile(".*[.](java|jte|json|csv|md|txt|html|css|xml)");

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

    /** A work that nothing rests on is no source: each is named where it is used, by its number, its mark or its writer. */
    @Test
    void everyWork_isUsedSomewhere() throws IOException {
        StringBuilder everything = new StringBuilder();
        for (String root : List.of("src", "docs", "demo-data", "DEVELOPERS.md")) {
            try (Stream<Path> files = Files.walk(Path.of(root))) {
                for (Path file : files.filter(SourcesTest::isOurs).toList()) {
                    everything.append(Files.readString(file, StandardCharsets.ISO_8859_1));
                }
            }
        }
        Set<String> unused = new TreeSet<>();
        int works = 0;
        for (String line : Files.readAllLines(Path.of("docs", "bibliography.md"))) {
            Matcher mark = MARK_OF_A_WORK.matcher(line);
            if (mark.find()) {
                works++;
                String name = Stream.of(mark.group(1), mark.group(2), mark.group(3))
                        .filter(Objects::nonNull)
                        .findFirst()
                        .orElseThrow();
                if (everything.indexOf(name) < 0) {
                    unused.add(name);
                }
            }
        }
        assertTrue(works > 50, "only " + works);
        assertEquals(Set.of(), unused);
    }

    /** Whoever wrote a handbook is named in the bibliography alone: everywhere else it has its number. */
    @Test
    void handbooks_areNamedByNumberEverywhere() throws IOException {
        Pattern authors = authors();
        Set<String> named = new TreeSet<>();
        for (String root : List.of("src", "docs", "demo-data", "README.md", "DEVELOPERS.md")) {
            try (Stream<Path> files = Files.walk(Path.of(root))) {
                for (Path file : files.filter(SourcesTest::isOurs).toList()) {
                    Matcher author = authors.matcher(Files.readString(file, StandardCharsets.ISO_8859_1));
                    while (author.find()) {
                        named.add(file + ": " + author.group());
                    }
                }
            }
        }
        assertEquals(Set.of(), named);
    }

    private static boolean isOurs(Path file) {
        return Files.isRegularFile(file)
                && !file.startsWith(Path.of("docs", "licences"))
                && !file.endsWith("bibliography.md")
                && TEXT.matcher(file.toString()).matches();
    }

    /** Surnames in front of the titles of the table of handbooks. */
    private static Pattern authors() throws IOException {
        Set<String> surnames = new TreeSet<>();
        for (String line : Files.readAllLines(Path.of("docs", "bibliography.md"))) {
            Matcher row = HANDBOOK_ROW.matcher(line);
            Matcher surname = SURNAME.matcher(row.matches() ? row.group(1) : "");
            while (surname.find()) {
                surnames.add(surname.group());
            }
        }
        assertTrue(surnames.size() > 10, surnames.toString());
        return Pattern.compile("\\b(" + String.join("|", surnames) + ")\\b");
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
