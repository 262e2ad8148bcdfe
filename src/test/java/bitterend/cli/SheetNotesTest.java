package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Before the cut a sheet says what concerns the pieces that are on it; what is said of others is on the plan's pages. */
final class SheetNotesTest {
    private static final Pattern LINES = Pattern.compile("G-\\d+/\\d+");
    private static final String NO_CODE = "the code that holds for slings and lifting";

    @TempDir
    private Path folder = Path.of("");

    @Test
    void notes_areOfTheLinesOnTheSheet_byTheirNumbers() throws IOException {
        Path loft = DemoShop.copy("gannet-loft", folder);
        Path settings = loft.resolve("shop.json");
        String stated = Files.readString(settings);
        assertTrue(stated.contains("\"code\": \"en\","), "the demo states a code");
        Files.writeString(settings, stated.replace("\"code\": \"en\",", ""));
        String bad = "G-2999,1,ketch Brambling,DB12,,five,,sealed,sealed,,1,2026-03-03" + ",".repeat(24) + "\n";
        Files.writeString(loft.resolve("orders.csv"), bad, StandardOpenOption.APPEND);
        run(4, loft, "plan", "--time", "1s");
        List<String> all = notes(loft, "--all");
        assertTrue(all.stream().noneMatch(note -> note.matches(".*orders\\.csv row \\d.*")), all.toString());
        List<String> wire = notes(loft, "--reel", "0420");
        assertTrue(wire.stream().anyMatch(note -> note.contains("a leg 60.3 degrees")), wire.toString());
        assertTrue(wire.stream().anyMatch(note -> note.contains(NO_CODE)), wire.toString());
        assertFalse(wire.stream().anyMatch(note -> note.contains("row 72")), "not in the plan: " + wire);
        List<String> braid = notes(loft, "--reel", "0406");
        assertFalse(braid.stream().anyMatch(note -> note.contains(NO_CODE)), "no sling is on it: " + braid);
    }

    @Test
    void orderLeftOut_isSaidWhereTheSheetsAreTheWholePlan() throws IOException {
        Path shed = DemoShop.copy("eider-shed", folder);
        String bad = "E-99,1,ferry steps,LAID-14,five,sealed,sealed,1,2026-03-13,,,,\n";
        Files.writeString(shed.resolve("orders.csv"), bad, StandardOpenOption.APPEND);
        run(4, shed, "plan", "--time", "300ms");
        List<String> all = notes(shed, "--all");
        assertTrue(all.stream().anyMatch(note -> note.contains("Left out: orders.csv, row 6")), all.toString());
        List<String> one = notes(shed, "--reel", "E7");
        assertFalse(one.stream().anyMatch(note -> note.contains("row 6")), "not in the plan: " + one);
    }

    /** What is cautioned before the cut; every line that it names is on the sheets. */
    private static List<String> notes(Path loft, String... which) throws IOException {
        run(0, loft, "sheet", which);
        String page = PageText.of(loft.resolve("sheet.html"));
        int from = page.indexOf("<h2>Before you cut</h2>");
        if (from < 0) {
            return List.of();
        }
        int to = page.indexOf("<h2>Always</h2>");
        String notes = page.substring(from, to);
        Set<String> onIt = named(page.substring(to));
        Set<String> said = named(notes);
        assertTrue(onIt.containsAll(said), said + " on " + onIt);
        return Stream.of(notes.split("</p>", -1))
                .filter(note -> note.contains("Caution"))
                .toList();
    }

    private static Set<String> named(String words) {
        Set<String> lines = new TreeSet<>();
        Matcher each = LINES.matcher(words);
        while (each.find()) {
            lines.add(each.group());
        }
        return lines;
    }

    private static void run(int code, Path loft, String command, String... more) {
        Run run = Run.of(Stream.concat(Stream.of(command, loft.toString()), Stream.of(more))
                .toArray(String[]::new));
        assertEquals(code, run.code(), run.err());
    }
}
