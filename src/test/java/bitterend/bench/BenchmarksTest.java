package bitterend.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class BenchmarksTest {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String words) {
        return Benchmarks.run(new PrintWriter(out, true), new PrintWriter(err, true), words.split(" "));
    }

    @ParameterizedTest
    @CsvSource({
        "days --days 0, --days: found 0",
        "days --days few, 'few'",
        "days --time 0, --time: found 0.0",
        "days --time NaN, --time: found NaN",
        "days --speed 3, '--speed'",
        "days --days, --days",
        "days 30 -5, -5",
        "days 30 many, 'many'",
        "crowded --days 0, --days: found 0",
        "crowded -5, -5",
        "load --busy 0, --busy: found 0",
        "growth --time -1, --time: found -1.0",
        "growth 100, '100'",
        "hard --count 0, --count: found 0",
        "hard --kind SOFT, 'SOFT'",
        "steps --forks 0, --forks: found 0",
        "steps sawing, 'found sawing, expected pricing, master or score'",
        "less many, 'many'",
        "rolling 0, SEEDS: found 0",
        "serve --devices 0, --devices: found 0",
        "study 0, SCENARIOS: found 0",
        "week --ropes 0, --ropes: found 0",
        "week --horizon soon, 'soon'",
        "one no-such-file.tsv, cannot read no-such-file.tsv",
        "sizes, FILE",
        "dyas, dyas"
    })
    void badArguments_areNamedAndEndWithTwo(String words, String named) {
        assertEquals(2, run(words));
        assertTrue(err.toString().startsWith("error: "), err::toString);
        assertTrue(err.toString().contains(named), err::toString);
        assertEquals("", out.toString());
    }

    @Test
    void load_printsALineForEachDayAndCounts() {
        assertEquals(0, run("load --days 2 --time 0.2 --busy 1 6"));
        List<String> lines = out.toString().lines().toList();
        assertEquals(4, lines.size(), out::toString);
        assertEquals("no worse on 2 of 2", lines.get(3));
    }

    @Test
    void crowded_printsALineForEachShareOfTheRack() {
        assertEquals(0, run("crowded --days 1 --time 0.5 --sets 3 12"));
        List<String> lines = out.toString().lines().toList();
        assertEquals(4, lines.size(), out::toString);
        assertTrue(lines.get(1).startsWith("12\t60\t1\t0\t"), out::toString);
    }

    @Test
    void days_printALineForEachWayAndOneForTheTargets() {
        assertEquals(0, run("days --days 2 --time 0.2 --cpu --each --seed 3 30"));
        List<String> lines = out.toString().lines().toList();
        int columns = lines.get(0).split("\t").length;
        List<String[]> rows = lines.stream()
                .filter(line -> line.startsWith("30\t"))
                .map(line -> line.split("\t"))
                .toList();
        assertEquals(
                List.of("first fit", "best fit", "search alone", "patterns alone", "both"),
                rows.stream().map(row -> row[1]).toList());
        rows.forEach(row -> assertEquals(columns, row.length));
        rows.forEach(row -> assertEquals("2", row[2]));
        assertEquals(
                10,
                lines.stream()
                        .filter(line -> line.startsWith("  30 pieces, seed "))
                        .count());
        assertTrue(lines.get(lines.size() - 1).startsWith("targets, 30-300 pieces, 2 days, both: gap median "));
    }

    @Test
    void hard_printsProblemsThatOneReads_andTheCheckerConfirmsTheCases(@TempDir Path folder) throws IOException {
        assertEquals(0, run("hard --pieces 45 --length 5000 --count 2"));
        Path file = folder.resolve("drawn.tsv");
        Files.writeString(file, out.toString());
        out.getBuffer().setLength(0);
        assertEquals(0, run("one --each " + file));
        assertEquals(2, out.toString().split("confirmed in", -1).length - 1, out::toString);
    }

    @Test
    void growth_printsARowForEachSize(@TempDir Path folder) throws IOException {
        Path picture = folder.resolve("growth.svg");
        assertEquals(0, run("growth --time 0.2 --pieces 150 --lengths 60 --coils 60 --picture " + picture));
        assertTrue(Files.readString(picture).contains(">different lengths</text>"));
        assertEquals(
                List.of("pieces\tlengths", "100\t100", "150\t150", "60\t50", "60\t60", "300\t82", "300\t82"),
                out.toString()
                        .lines()
                        .map(line -> String.join("\t", List.of(line.split("\t")).subList(0, 2)))
                        .toList());
        out.toString().lines().forEach(line -> assertEquals(12, line.split("\t").length, line));
    }

    @Test
    void growthOfTheLargestAlone_isARowForEachThingThatGrows() {
        assertEquals(0, run("growth --time 0.2 --pieces 150 --lengths 0 --coils 60 --of 40 --last"));
        List<String> rows = out.toString().lines().toList();
        assertEquals(3, rows.size(), out::toString);
        assertTrue(rows.get(1).startsWith("150\t40\t"), rows.get(1));
    }

    @Test
    void week_printsALineForEachRopeAndPolicyAndForAll() {
        assertEquals(0, run("week --ropes 3 --only 3- --days 5 --draws 1 --horizon 1,5 --work 5"));
        List<String[]> rows = out.toString()
                .lines()
                .filter(line -> line.contains("\t"))
                .map(line -> line.split("\t"))
                .toList();
        assertEquals(1 + 2 * 3, rows.size(), out::toString);
        rows.forEach(row -> assertEquals(rows.get(0).length, row.length));
        assertEquals("horizon-5 brake-8", rows.get(6)[1]);
        assertEquals("0.00", rows.get(4)[3]);
    }

    @Test
    void doubling_endsWithTheLast() {
        assertEquals(List.of(100, 200, 400, 800), Growth.doubling(100, 800));
        assertEquals(List.of(50, 100, 130), Growth.doubling(50, 130));
        assertEquals(List.of(20), Growth.doubling(50, 20));
    }

    @ParameterizedTest
    @ValueSource(strings = {"one", "sizes", "days", "growth", "steps", "less", "rolling", "week", "years"})
    void scriptAndContributorsPage_tellOfEverySubCommand(String name) throws IOException {
        assertTrue(Files.readString(Path.of(".ci/bench")).contains("#   .ci/bench " + name + " "), name);
        assertTrue(Files.readString(Path.of("DEVELOPERS.md")).contains("`.ci/bench " + name), name);
    }
}
