package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was paid for reels that came, and for bringing them. */
final class StockPaidTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void open() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(
                shop.resolve("on-order.csv"),
                "number,rope,length,quantity,expected,price\nB-9,BRAID-12,200 m,2,2026-03-04,300 EUR\n");
        run(0, "open");
    }

    private Run run(int code, String command, String... more) {
        List<String> args = new ArrayList<>(List.of("stock", command, shop.toString()));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(code, run.code(), run.out() + run.err());
        return run;
    }

    private String history(String reel) {
        return run(0, "history", reel, "--json").out().replaceAll("\\s+", " ");
    }

    private static void has(String text, String words) {
        assertTrue(text.replaceAll("\\s+", " ").contains(words), words + " not in\n" + text);
    }

    @Test
    void price_ofTheReelOrByLength_staysWithTheReel() {
        has(
                run(0, "receive", "E11", "LAID-14", "110 m", "--paid", "1.85 EUR/m", "--freight", "12 EUR")
                        .out(),
                "203.50 EUR was paid for reel E11, and 12.00 EUR for bringing it");
        has(history("E11"), "\"byMetre\": \"1.85 EUR/m\"");
        has(history("E11"), "\"price\": \"203.50 EUR\", \"freight\": \"12.00 EUR\"");
        has(
                run(0, "history", "E11").out(),
                "Paid for it: 203.50 EUR without freight, for 110.000 m, 1.85 EUR/m; for bringing it 12.00 EUR.");
        run(0, "receive", "E12", "LAID-14", "110 m", "--paid", "210");
        has(history("E12"), "\"price\": \"210.00 EUR\"");
        assertFalse(history("E12").contains("freight"), "nothing was said of it");
        run(0, "receive", "E13", "LAID-14", "110 m");
        assertFalse(history("E13").contains("\"paid\""), "nobody said so");
    }

    @Test
    void priceOfItsOrder_holdsUnlessAnotherIsSaid() {
        run(0, "receive", "E11", "BRAID-12", "200 m", "--on-order", "B-9");
        has(history("E11"), "\"price\": \"300.00 EUR\"");
        has(
                run(0, "receive", "E12", "BRAID-12", "200 m", "--on-order", "B-9", "--paid", "280 EUR")
                        .out(),
                "280.00 EUR was paid for reel E12");
        has(history("E12"), "\"price\": \"280.00 EUR\"");
        String event = history("E12").replaceAll(".*?\"event\": ([0-9]+).*", "$1");
        run(0, "undo", event);
        assertFalse(history("E12").contains("\"paid\""), "taken back with its reel");
    }

    /** 300 and 100 were paid: 10.01 for bringing them is 7.50 and 2.51, to the coin. */
    @Test
    void freightOfAList_isSharedByWhatWasPaidForEach() throws IOException {
        String file = Files.writeString(
                        folder.resolve("came.csv"),
                        "reel,rope,length,on order,paid\nE11,BRAID-12,200 m,B-9,\nE12,LAID-14,50 m,,2 EUR/m\n")
                .toString();
        String before = run(0, "list").out();
        String told = run(0, "receive", "--file", file, "--freight", "10.01").out();
        has(told, "Of 10.01 EUR for bringing them, by what was paid for each: 7.50 EUR on E11, 2.51 EUR on E12.");
        has(told, "300.00 EUR");
        assertTrue(told.lines().allMatch(line -> line.length() <= 80), told);
        has(run(0, "receive", "--file", file, "--json").out(), "\"paid\": \"100.00 EUR\"");
        assertEquals(before, run(0, "list").out());
        run(0, "receive", "--file", file, "--freight", "10.01", "--accept");
        has(history("E11"), "\"price\": \"300.00 EUR\", \"freight\": \"7.50 EUR\"");
        has(history("E12"), "\"price\": \"100.00 EUR\", \"freight\": \"2.51 EUR\"");
    }

    private static String quote(String... args) {
        Run run = Run.of(args);
        assertEquals(0, run.code(), run.out() + run.err());
        return run.out().replaceAll("\\s+", " ");
    }

    /** 6.2 m off 100 m: at 2.00 a metre 12.40, and of 30.00 for bringing the reel 1.86. */
    @Test
    void quoteIsCompared_atWhatItsReelWasPaidFor_andBroughtFor() throws IOException {
        String asked = Files.writeString(
                        folder.resolve("asked.csv"),
                        "line,customer,rope,length,minutes\n1,Port Pilots,LAID-14,6 m,5 min\n")
                .toString();
        quote("quote", shop.toString(), asked, "--keep");
        quote("quote", "accept", shop.toString(), "Q-2601");
        run(0, "receive", "E11", "LAID-14", "100 m", "--paid", "200 EUR", "--freight", "30 EUR");
        run(0, "cut", "E11", "6.2 m", "--piece", "Q-2601/1.1");
        String page = quote("quote", "compare", shop.toString(), "Q-2601");
        assertTrue(page.matches(".*rope in the pieces [0-9.]+ 12.40 .*"), page);
        assertTrue(page.matches(".*freight [0-9.]+ 1.86 .*"), page);
        assertTrue(page.contains("Rope is counted at what its reel was paid for;"), page);
        assertTrue(
                page.contains("Freight by reel and by weight is in quoted rope, and, of reels that are counted"), page);
    }

    @Test
    void whatCannotBe_isRefused() throws IOException {
        String file = Files.writeString(folder.resolve("came.csv"), "reel,rope,length,paid\nE11,LAID-14,50 m,dear\n")
                .toString();
        has(run(3, "receive", "--file", file).err(), "came.csv, row 2, paid: found \"dear\"");
        has(run(2, "receive", "E11", "LAID-14", "50 m", "--paid", "dear").err(), "--paid: found \"dear\", expected");
        has(run(2, "receive", "E11", "LAID-14", "50 m", "--freight", "5").err(), "--freight: counts with");
        Files.writeString(Path.of(file), "reel,rope,length\nE11,LAID-14,50 m\n");
        has(run(0, "receive", "--file", file, "--freight", "5").out(), "of reel E11 that is not known");
        run(3, "receive", "--file", file, "--freight", "5", "--accept");
    }
}
