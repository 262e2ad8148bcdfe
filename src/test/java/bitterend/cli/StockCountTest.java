package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.workbook.RawBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The rack counted from a list: filled in by place, held against the ledger, booked as one event. */
final class StockCountTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void open() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        run(0, "open");
    }

    private Run run(int code, String command, String... more) {
        String[] args = new String[more.length + 3];
        args[0] = "stock";
        args[1] = command;
        args[2] = shop.toString();
        System.arraycopy(more, 0, args, 3, more.length);
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.out() + run.err());
        return run;
    }

    /** The list with these figures in it. */
    private String filled(Map<String, String> counted) throws IOException {
        List<String> rows = run(0, "count", "--sheet").out().lines().toList();
        Path file = folder.resolve("count.csv");
        Files.writeString(
                file, rows.stream().map(row -> filled(row, counted)).collect(Collectors.joining("\n", "", "\n")));
        return file.toString();
    }

    private static String filled(String row, Map<String, String> counted) {
        String[] cells = row.split(",", -1);
        cells[5] = counted.getOrDefault(cells[1], cells[5]);
        return String.join(",", cells);
    }

    @Test
    void list_goesByPlaceAndTellsNoLength() {
        String list = run(0, "count", "--sheet").out();
        assertEquals(
                "place,reel,rope,name,lot,counted,unit,uncertainty,movements,who",
                list.lines().findFirst().orElse(""));
        assertEquals(
                List.of("hook 1,E7", "hook 2,E8", "hook 3,E10", "shelf,E9"),
                list.lines()
                        .skip(1)
                        .map(row -> row.replaceAll("^([^,]*,[^,]*),.*", "$1"))
                        .toList());
        assertFalse(list.contains("62"), list);
    }

    @Test
    void whatDiffers_isToldInRopeAndMoneyAndBooksNothing() throws IOException {
        String file = filled(Map.of("E7", "61.9 m", "E8", "20", "E9", "200 m", "E10", "not found"));
        String before = run(0, "list").out();
        String told = run(0, "count", "--file", file).out();
        assertTrue(told.contains("What differs"), told);
        assertTrue(told.contains("-13.500 m"), told);
        assertTrue(told.contains("far off"), told);
        assertTrue(told.contains("not found"), told);
        assertTrue(
                told.contains("2 reels agree with the ledger"), "61.9 m is within the 0.3 m it may be short: " + told);
        assertEquals(before, run(0, "list").out());
    }

    @Test
    void count_isAcceptedAsOneEventAndTakenBackWhole() throws IOException {
        String file = filled(Map.of("E7", "60.5 m", "E8", "20 m", "E9", "empty", "E10", "not found"));
        String before = run(0, "list").out();
        assertTrue(run(0, "count", "--file", file, "--accept").out().contains("event 2, 1 reel"));
        assertTrue(run(0, "list").out().contains("60.5 m  counted"));
        assertFalse(run(0, "list").out().contains("20 m  counted"), "set apart");
        assertTrue(run(0, "undo", "2").out().contains("undone"));
        Run all = run(
                0,
                "count",
                "--file",
                filled(Map.of("E7", "60.5 m", "E8", "20 m", "E9", "empty", "E10", "not found")),
                "--accept",
                "--sure",
                "--who",
                "Ada");
        assertTrue(all.out().contains("event 4, 4 reels"), all.out());
        String rack = run(0, "list").out();
        assertFalse(rack.contains("E9"), "nothing is left of it: " + rack);
        assertTrue(rack.contains("on hold"), "nobody plans off what was not found: " + rack);
        run(0, "verify");
        run(0, "undo", "4");
        assertEquals(before, run(0, "list").out());
        run(0, "verify");
    }

    @Test
    void reelThatWasCutMeanwhile_isCountedAgain() throws IOException {
        String file = filled(Map.of("E7", "60.5 m"));
        run(0, "cut", "E7", "2 m", "--sample", "test");
        assertTrue(run(0, "count", "--file", file).out().contains("booked since"));
        Run refused = run(3, "count", "--file", file, "--accept", "--sure");
        assertTrue(refused.err().contains("nothing of the count is to be booked"), refused.err());
    }

    @Test
    void rowThatCannotBeRead_isToldWithItsPlaceAndNothingIsBooked() throws IOException {
        String wrong = run(3, "count", "--file", filled(Map.of("E7", "plenty", "E8", "33 m")), "--accept")
                .err();
        assertTrue(wrong.contains("count.csv, row 2, counted: found \"plenty\""), wrong);
        assertTrue(wrong.contains("empty, or not found"), wrong);
        assertEquals(
                1,
                run(0, "history", "E8")
                        .out()
                        .lines()
                        .filter(line -> line.contains("received"))
                        .count());
    }

    @Test
    void whatIsInNoBook_isTold() throws IOException {
        Path file = folder.resolve("count.csv");
        Files.writeString(file, "reel;counted\nE99;12 m\nE7;62 m\n");
        String told = run(0, "count", "--file", file.toString()).out();
        assertTrue(told.contains("Not in the books"), told);
        assertTrue(told.contains("E99, 12 m"), told);
        assertTrue(told.contains("Not counted: E8 at hook 2"), told);
    }

    @Test
    void reelWithoutRope_isNoCount_andSaysHowItIsBooked() {
        for (String nothing : List.of("0", "0 m", "0 mm")) {
            Run refused = run(2, "count", "E7", nothing);
            assertTrue(refused.err().contains("bitterend stock condemn SHOP REEL"), refused.err());
            assertTrue(refused.err().contains("the word empty"), refused.err());
        }
        assertFalse(run(2, "count", "E7", "-1 m").err().contains("condemn"), "no reel holds less than nothing");
    }

    @Test
    void answer_isOneDocumentForPrograms() throws IOException {
        String json = run(0, "count", "--file", filled(Map.of("E7", "60.5 m")), "--accept", "--json")
                .out();
        assertTrue(json.contains("\"event\": 2"), json);
        assertTrue(json.contains("\"difference\": \"-1500 mm\"") || json.contains("-1.5 m"), json);
    }

    @Test
    void list_isReadByThePlaceOfTheShop_andAsAWorkbook() throws IOException {
        Path settings = shop.resolve("shop.json");
        Files.writeString(
                settings,
                Files.readString(settings)
                        .replace("\"units\": \"metric\"", "\"units\": \"metric\", \"locale\": \"de-DE\""));
        Path file = folder.resolve("count.csv");
        Files.writeString(file, "reel;counted;unit;uncertainty\nE7;60,5;m;\nE8;32,25 m;;1,5 cm\n");
        String commas = run(0, "count", "--file", file.toString()).out();
        assertTrue(commas.contains("60.500 m"), commas);
        assertTrue(commas.contains("32.250 m"), commas);
        Path book = folder.resolve("count.xlsx");
        RawBook.of(
                        "Count",
                        RawBook.row(1, "reel", "counted", "uncertainty")
                                + RawBook.row(2, "E7", "60.5 m", "")
                                + RawBook.row(3, "E8", "32,25 m", "15 mm"))
                .write(book);
        assertEquals(commas, run(0, "count", "--file", book.toString()).out());
        Run none = run(3, "count", "--file", folder.resolve("cuont.csv").toString());
        assertTrue(none.err().contains("cuont.csv: found nothing, expected a file that is there"), none.err());
    }
}
