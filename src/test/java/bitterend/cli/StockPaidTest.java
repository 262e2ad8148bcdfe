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

    /** 300 and 100 were paid: 10.01 for bringing them is 7.51 and 2.50, to the coin. */
    @Test
    void freightOfAList_isSharedByWhatWasPaidForEach() throws IOException {
        String file = Files.writeString(
                        folder.resolve("came.csv"),
                        "reel,rope,length,on order,paid\nE11,BRAID-12,200 m,B-9,\nE12,LAID-14,50 m,,2 EUR/m\n")
                .toString();
        String before = run(0, "list").out();
        String told = run(0, "receive", "--file", file, "--freight", "10.01").out();
        has(told, "Of 10.01 EUR for bringing them, by what was paid for each: 7.51 EUR on E11, 2.50 EUR on E12.");
        has(told, "300.00 EUR");
        assertTrue(told.lines().allMatch(line -> line.length() <= 80), told);
        has(run(0, "receive", "--file", file, "--json").out(), "\"paid\": \"100.00 EUR\"");
        assertEquals(before, run(0, "list").out());
        run(0, "receive", "--file", file, "--freight", "10.01", "--accept");
        has(history("E11"), "\"price\": \"300.00 EUR\", \"freight\": \"7.51 EUR\"");
        has(history("E12"), "\"price\": \"100.00 EUR\", \"freight\": \"2.50 EUR\"");
    }

    private long event() {
        String all = run(0, "history", "E11", "--json").out().replaceAll("\\s+", " ");
        return Long.parseLong(all.replaceAll(".*\"event\": ([0-9]+).*", "$1"));
    }

    /** The invoice comes later and says otherwise: 110 m at 1.90 are 209.00. */
    @Test
    void price_isPutRightLater_andTakenBackWhole() {
        run(0, "receive", "E11", "LAID-14", "110 m", "--paid", "1.85 EUR/m", "--freight", "12 EUR");
        run(0, "count", "E11", "109 m");
        String rack = run(0, "list").out();
        has(
                run(0, "correct", "E11", "--paid", "1.90 EUR/m", "--note", "invoice 88")
                        .out(),
                "209.00 EUR, not 203.50 EUR, was paid for reel E11, and 12.00 EUR for bringing it");
        has(history("E11"), "\"price\": \"209.00 EUR\", \"freight\": \"12.00 EUR\"");
        has(run(0, "history", "E11").out(), "corrected, paid 209.00 EUR; invoice 88");
        assertEquals(rack, run(0, "list").out());
        long price = event();
        run(0, "correct", "E11", "--freight", "14");
        has(history("E11"), "\"price\": \"209.00 EUR\", \"freight\": \"14.00 EUR\"");
        run(0, "move", "E11", "bay 3");
        run(0, "undo", "" + price);
        has(history("E11"), "\"price\": \"203.50 EUR\", \"freight\": \"14.00 EUR\"");
        assertFalse(run(0, "history", "E11").out().contains("invoice 88"), "taken back");
        run(0, "verify");
    }

    @Test
    void correctionOfPriceAndLot_isOneEvent() {
        run(0, "receive", "E11", "LAID-14", "110 m", "--lot", "7");
        run(0, "correct", "E11", "--lot", "8", "--paid", "210", "--freight", "9.50");
        has(history("E11"), "\"note\": \"lot 7 -> 8\"");
        has(history("E11"), "\"price\": \"210.00 EUR\", \"freight\": \"9.50 EUR\"");
        run(0, "undo", "" + event());
        assertFalse(history("E11").contains("\"paid\""), "taken back with the lot");
        assertTrue(
                run(0, "list").out().matches("(?s).*E11 +LAID-14 +7 .*"),
                run(0, "list").out());
    }

    /** What is corrected is known of a reel that was there when the ledger was begun, and of one that is used up. */
    @Test
    void price_isPutRightOfReelsOfTheBeginning_andOfThoseThatAreGone() {
        run(0, "receive", "E11", "LAID-14", "110 m");
        run(0, "sell", "E11");
        run(0, "correct", "E11", "--paid", "210");
        has(history("E11"), "\"price\": \"210.00 EUR\"");
        run(0, "correct", "E9", "--paid", "1 EUR/m");
        has(history("E9"), "\"price\": \"200.00 EUR\"");
        run(3, "correct", "E11", "--lot", "8");
    }

    /** An id is given again once its reel was taken back: what was said of that one is not said of this. */
    @Test
    void correctionOfAReelThatNeverCame_isNotThatOfTheNextWithItsId() {
        run(0, "receive", "E11", "LAID-14", "110 m");
        long came = event();
        run(0, "correct", "E11", "--paid", "210");
        run(0, "undo", "" + came);
        assertFalse(history("E11").contains("\"paid\""), "it never came");
        run(0, "receive", "E11", "LAID-14", "90 m");
        assertFalse(history("E11").contains("\"paid\""), "another reel");
        run(0, "correct", "E11", "--paid", "2 EUR/m");
        has(history("E11"), "\"price\": \"180.00 EUR\"");
    }

    @Test
    void correctionThatCannotBe_isRefused() {
        run(0, "receive", "E11", "LAID-14", "110 m", "--paid", "210");
        run(0, "receive", "E12", "LAID-14", "50 m", "--owner", "Port Pilots", "--order", "E-31");
        run(0, "split", "E11", "20 m", "E14");
        has(run(3, "correct", "E11", "--paid", "210 EUR").err(), "reel E11 says so already");
        has(run(2, "correct", "E12", "--paid", "210").err(), "the shop pays nothing for a customer's own rope");
        has(run(3, "correct", "E14", "--paid", "40").err(), "reel E14 came off reel E11: correct what was paid");
        has(run(2, "correct", "E7", "--freight", "4").err(), "freight counts with what was paid for the reel");
        has(run(2, "correct", "E11", "--paid", "dear").err(), "--paid: found \"dear\", expected");
        has(run(2, "correct", "E11", "--freight", "-4").err(), "--freight: found \"-4\", expected");
        has(run(3, "correct", "E99", "--paid", "40").err(), "there is no reel E99");
    }

    /** 300 each were ordered at: short by 10 m of 200, 15.00 by the order, 14.00 by what was really paid. */
    @Test
    void claim_isByThePriceThatWasPutRight() {
        run(0, "receive", "E11", "BRAID-12", "190 m", "--on-order", "B-9");
        run(0, "correct", "E11", "--paid", "280");
        has(run(0, "claims", "--json").out(), "\"paid\": \"280.00 EUR\"");
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
        run(0, "correct", "E11", "--paid", "100 EUR");
        assertTrue(
                quote("quote", "compare", shop.toString(), "Q-2601").matches(".*rope in the pieces [0-9.]+ 6.20 .*"));
        run(0, "undo", "" + event(), "--note", "other invoice");
        String page = quote("quote", "compare", shop.toString(), "Q-2601");
        assertTrue(page.matches(".*rope in the pieces [0-9.]+ 12.40 .*"), page);
        assertTrue(page.matches(".*freight [0-9.]+ 1.86 .*"), page);
        assertTrue(page.contains("Rope is counted at what its reel was paid for;"), page);
        assertTrue(page.contains("All freight is in that line, by reel, by weight and by order"), page);
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
