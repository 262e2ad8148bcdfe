package bitterend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The words that people read: string literals of the program, templates, built-in rows, README and docs. */
final class WordsTest {
    private static final Path BIBLIOGRAPHY = Path.of("docs/bibliography.md");

    private static final Pattern LITERAL = Pattern.compile("\"\"\"(?s:.*?)\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"");
    private static final Pattern COMMENT = Pattern.compile("/\\*(?s:.*?)\\*/|(?m:^ *//.*$)");

    /** What is said in other words, and how. */
    private static final Map<Pattern, String> BANNED = Map.of(
            Pattern.compile("(?i)\\b(?:is|are|was|were|be|been|each) told\\b"),
            "says, reports, names",
            Pattern.compile("(?i)\\b(?:stands?|stood)\\b(?! for\\b)"),
            "is",
            Pattern.compile("(?i)\\b(?:lies?|lay) beside\\b"),
            "is next to",
            Pattern.compile("(?i)\\bmend(?:s|ed|ing)?\\b"),
            "repaired",
            Pattern.compile("(?i)\\blived through\\b"),
            "tried",
            Pattern.compile("\\bbitterend [a-z]+(?: [a-z]+)? SHOP[^\"]* (?:LENGTH|FILE|EVENT|REEL|ORDER|PIECE)\\b"),
            "a command that can be pasted");

    /** Names of data sets, which are called by whoever published them. */
    private static final Pattern DATA_SETS = Pattern.compile("Falkenauer [TU]|Scholl 3");

    /** Words between the names of authors that are none. */
    private static final Set<String> NO_NAMES = Set.of("Day", "International", "Journal", "Forest", "Engineering");

    @Test
    void wordsThatPeopleRead_arePlain() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : texts()) {
            for (String words : read(file)) {
                BANNED.forEach((banned, better) -> {
                    if (banned.matcher(words).find()) {
                        found.add(file + ": " + around(words, banned) + " -> " + better);
                    }
                });
            }
        }
        assertEquals("", String.join("\n", found));
    }

    /** Elsewhere a work is named by its number. */
    @Test
    void authors_areNamedInTheBibliographyAlone() throws IOException {
        Set<String> authors = authors();
        assertTrue(authors.size() > 40, authors.toString());
        Pattern named = Pattern.compile("\\b(?:" + String.join("|", authors) + ")\\b");
        List<String> found = new ArrayList<>();
        for (Path file : texts()) {
            for (String words : read(file)) {
                if (!file.equals(BIBLIOGRAPHY)
                        && named.matcher(DATA_SETS.matcher(words).replaceAll(""))
                                .find()) {
                    found.add(file + ": " + around(words, named));
                }
            }
        }
        assertEquals("", String.join("\n", found));
    }

    @Test
    void plantedWords_areFound() {
        for (String words : List.of(
                "the reader is told",
                "it stands on the page",
                "mended since",
                "it was lived through",
                "it lies beside")) {
            assertTrue(BANNED.keySet().stream().anyMatch(found(words)), words);
        }
        assertTrue(BANNED.keySet().stream().noneMatch(found("the standing part; the name stands for a jar")));
        assertEquals(List.of("\"one\"", "\"t\\\"wo\""), literals("/* \"not this\" */ f(\"one\", \"t\\\"wo\");"));
    }

    private static Predicate<Pattern> found(String words) {
        return banned -> banned.matcher(words).find();
    }

    private static List<Path> texts() throws IOException {
        List<Path> texts = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        for (String folder : List.of("docs", "src/main/java", "src/main/jte", "src/main/resources")) {
            try (Stream<Path> all = Files.walk(Path.of(folder))) {
                all.filter(file -> file.toString().matches(".*\\.(md|java|jte|json)"))
                        .sorted()
                        .forEach(texts::add);
            }
        }
        return texts;
    }

    private static List<String> read(Path file) throws IOException {
        String text = Files.readString(file);
        return file.toString().endsWith(".java") ? literals(text) : text.lines().toList();
    }

    private static List<String> literals(String source) {
        return LITERAL.matcher(COMMENT.matcher(source).replaceAll(""))
                .results()
                .map(found -> found.group())
                .toList();
    }

    /** Surnames before the titles of the bibliography. */
    private static Set<String> authors() throws IOException {
        Set<String> authors = new TreeSet<>();
        for (String line : Files.readAllLines(BIBLIOGRAPHY)) {
            Matcher work = Pattern.compile("(?:\\| \\[\\d+] \\| |\\* (?=[A-Z]\\. ))([^*(]*).*")
                    .matcher(line);
            if (work.matches()) {
                Pattern.compile("\\b[A-Z][a-z]{2,}\\b")
                        .matcher(work.group(1))
                        .results()
                        .map(found -> found.group())
                        .filter(name -> !NO_NAMES.contains(name))
                        .forEach(authors::add);
            }
        }
        return authors;
    }

    /** The words around what was found. */
    private static String around(String words, Pattern what) {
        Matcher matcher = what.matcher(words);
        return matcher.find()
                ? words.substring(Math.max(0, matcher.start() - 40), Math.min(words.length(), matcher.end() + 40))
                        .strip()
                : "";
    }
}
