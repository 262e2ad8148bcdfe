package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A quote from the day it is drawn up to the order that comes of it, and back, on the command line. */
final class QuoteLifeTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void copyShed() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        request("asks.csv", 2);
    }

    private void request(String name, int quantity) throws IOException {
        Files.writeString(
                shop.resolve(name),
                "line,customer,rope,length,end a,quantity,minutes,due\n1,sloop Redshank,LAID-14,5 m,whipped," + quantity
                        + ",20 min,2026-03-20\n2,sloop Redshank,LAID-14,7 m,whipped,1,30 min,2026-03-20\n");
    }

    private Run run(int code, String words) {
        String[] typed = words.split(" ");
        for (int i = 0; i < typed.length; i++) {
            typed[i] = typed[i].replace("_", " ").replace("SHOP", "" + shop);
        }
        Run run = Run.of(typed);
        assertEquals(code, run.code(), words + "\n" + run.out() + run.err());
        return run;
    }

    private String keep() {
        return run(0, "quote SHOP SHOP/asks.csv --keep --accept Ada --time 100ms --who Ada")
                .out();
    }

    private String list(String day) {
        return run(0, "quote list SHOP --day " + day).out();
    }

    private List<String> files() throws IOException {
        Path quotes = shop.resolve("quotes");
        if (!Files.exists(quotes)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(quotes)) {
            return all.filter(Files::isRegularFile)
                    .map(each -> "" + each.getFileName())
                    .sorted()
                    .toList();
        }
    }

    @Test
    void quote_isAQuestion_andFilesNothingUnlessItIsKept() throws IOException {
        run(0, "quote SHOP SHOP/asks.csv --time 100ms");
        assertEquals(List.of(), files());
        keep();
        keep();
        assertEquals(List.of("Q-2601.1.json", "Q-2602.1.json"), files());
    }

    @Test
    void numberThatTheRequestStates_isKeptWhereItIsFree() throws IOException {
        Files.writeString(shop.resolve("stated.csv"), "order,line,rope,length\nWhimbrel 7,1,LAID-14,5 m\n");
        run(0, "quote SHOP SHOP/stated.csv --keep --time 100ms");
        run(0, "quote SHOP SHOP/stated.csv --keep --time 100ms");
        assertEquals(List.of("Q-2601.1.json", "Whimbrel 7.1.json"), files());
    }

    @Test
    void keptQuote_printsAsItWasFiled_whateverBecomesOfTheCatalogue() throws IOException {
        String customer = run(0, "quote SHOP SHOP/asks.csv --keep --accept Ada --time 100ms --customer")
                .out();
        byte[] filed = Files.readAllBytes(shop.resolve("quotes/Q-2601.1.json"));
        Path ropes = shop.resolve("ropes.json");
        Files.writeString(ropes, Files.readString(ropes).replaceAll("(\"price\": \")[0-9.]+", "$199.00"));
        assertEquals(customer, run(0, "quote show SHOP Q-2601 --customer").out());
        run(0, "quote revise SHOP Q-2601 --time 100ms");
        assertEquals(
                customer, run(0, "quote show SHOP Q-2601 --customer --rev 1").out());
        assertFalse(customer.equals(run(0, "quote show SHOP Q-2601 --customer").out()), "at today's prices");
        assertArrayEquals(filed, Files.readAllBytes(shop.resolve("quotes/Q-2601.1.json")), "never written again");
        assertTrue(run(3, "quote show SHOP Q-2601 --rev 9").err().contains("Q-2601/1"));
    }

    @Test
    void keptQuote_isPrintedOnPaperToo() throws IOException {
        keep();
        Path html = folder.resolve("kept.html");
        Run shown = Run.of("quote", "show", "" + shop, "Q-2601", "--html", "" + html, "--pdf", folder + "/kept.pdf");
        assertEquals(0, shown.code(), shown.err());
        assertTrue(Files.readString(html).contains("not for the customer"));
        String json = run(0, "quote show SHOP Q-2601 --customer --json").out();
        assertTrue(json.contains("bitterend/quote-for-customer/1") && !json.contains("margin"), json);
    }

    @Test
    void revision_tellsWhatChangedLineByLine() throws IOException {
        keep();
        request("more.csv", 5);
        Files.writeString(
                shop.resolve("more.csv"),
                Files.readString(shop.resolve("more.csv"))
                        .replaceAll("(?m)^2,.*\n", "3,sloop Redshank,LAID-14,2 m,,1,,\n"));
        String told =
                run(0, "quote revise SHOP Q-2601 SHOP/more.csv --time 100ms").out();
        for (String words : List.of(
                "1     quantity  2 ",
                "2     dropped   1 of 7 m, ",
                "3     new line",
                "1 of 2 m, LAID-14",
                "Total before tax:")) {
            assertTrue(told.contains(words), words + " not in\n" + told);
        }
        assertTrue(run(0, "quote show SHOP Q-2601").out().contains("Revision 2; it takes the place of revision 1."));
        String feet = run(0, "quote revise SHOP Q-2601 SHOP/asks.csv --units imperial --accept Ada --time 100ms")
                .out();
        assertTrue(feet.contains("1 of 22 ft 11 9/16 in, LAID-14"), feet);
    }

    @Test
    void quote_lapsesAfterItsLastDay_andIsRevisedThen() {
        keep();
        run(0, "quote sent SHOP Q-2601 --day 2026-03-03 --note by_post");
        assertTrue(list("2026-04-01").contains("sent on 2026-03-03: by post"), list("2026-04-01"));
        assertTrue(list("2026-04-02").contains("lapsed"), list("2026-04-02"));
        assertTrue(run(3, "quote accept SHOP Q-2601 --day 2026-04-02").err().contains("quote revise"));
        run(0, "quote revise SHOP Q-2601 --day 2026-04-02 --time 100ms");
        assertTrue(list("2026-04-02").contains("drawn up"), list("2026-04-02"));
    }

    @Test
    void anEarlierQuote_isDrawnUpAnew() throws IOException {
        keep();
        run(0, "quote SHOP --from Q-2601 --keep --time 100ms");
        assertEquals(List.of("Q-2601.1.json", "Q-2602.1.json"), files());
        assertTrue(Files.readString(shop.resolve("quotes/Q-2602.1.json")).contains("\"from\": \"Q-2601\""));
        run(3, "quote SHOP --from Q-2609 --keep");
    }

    @Test
    void acceptance_writesOrderLines_andIsTakenBackWhole_withoutALedger() throws IOException {
        acceptedAndBack();
    }

    @Test
    void acceptance_writesOrderLines_andIsTakenBackWhole_inTheLedger() throws IOException {
        run(0, "stock open SHOP");
        byte[] before = Files.readAllBytes(shop.resolve("orders.csv"));
        acceptedAndBack();
        assertArrayEquals(before, Files.readAllBytes(shop.resolve("orders.csv")), "byte for byte");
        String booked = run(0, "quote accept SHOP Q-2601 --order E-60").out();
        String event = booked.replaceAll("(?s).*Event (\\d+).*", "$1");
        run(0, "stock undo SHOP " + event);
        assertArrayEquals(before, Files.readAllBytes(shop.resolve("orders.csv")), "by stock undo as well");
        assertTrue(list("2026-03-02").contains("drawn up"), list("2026-03-02"));
    }

    private void acceptedAndBack() throws IOException {
        keep();
        String before = Files.readString(shop.resolve("orders.csv"));
        run(3, "quote accept SHOP Q-2601 --order E-31");
        assertEquals(before, Files.readString(shop.resolve("orders.csv")), "an order of that number is there");
        run(0, "quote accept SHOP Q-2601 --order E-60 --who Bo --note by_telephone");
        String orders = Files.readString(shop.resolve("orders.csv"));
        assertTrue(orders.contains("Q-2601/1/1") && orders.contains("Q-2601/1/2"), orders);
        assertTrue(run(0, "orders SHOP").out().contains("E-60"));
        assertTrue(list("2026-03-02").contains("accepted"), list("2026-03-02"));
        run(3, "quote accept SHOP Q-2601 --order E-61");
        run(3, "quote decline SHOP Q-2601");
        run(3, "quote revise SHOP Q-2601 --time 100ms");
        run(0, "quote back SHOP Q-2601");
        assertFalse(Files.readString(shop.resolve("orders.csv")).contains("E-60"));
        assertTrue(list("2026-03-02").contains("drawn up"), list("2026-03-02"));
        run(3, "quote back SHOP Q-2601");
    }

    /** Somebody writes into the order book meanwhile: his lines stay. */
    @Test
    void acceptanceTakenBack_leavesWhatOthersWrote() throws IOException {
        run(0, "stock open SHOP");
        keep();
        run(0, "quote accept SHOP Q-2601 --order E-60");
        DemoShop.order(shop, "E-70,1,tug,LAID-14,3 m");
        run(0, "quote back SHOP Q-2601");
        String orders = Files.readString(shop.resolve("orders.csv"));
        assertTrue(orders.contains("E-70") && !orders.contains("E-60"), orders);
    }

    @Test
    void acceptance_isNotTakenBackOncePiecesAreCut() {
        run(0, "stock open SHOP");
        keep();
        run(0, "quote accept SHOP Q-2601 --order E-60");
        run(0, "stock cut SHOP E10 5.2m --piece E-60/1.1");
        assertTrue(run(3, "quote back SHOP Q-2601").err().contains("E-60/1.1"));
        assertTrue(list("2026-03-02").contains("accepted"), list("2026-03-02"));
    }

    /** A line that cannot be made any more is not ordered. */
    @Test
    void acceptance_ofARopeThatIsGone_writesNothing() throws IOException {
        keep();
        Path ropes = shop.resolve("ropes.json");
        Files.writeString(ropes, Files.readString(ropes).replace("LAID-14", "LAID-15"));
        for (String file : List.of("orders.csv", "reels.csv")) {
            Path table = shop.resolve(file);
            Files.writeString(table, Files.readString(table).replace("LAID-14", "LAID-15"));
        }
        String before = Files.readString(shop.resolve("orders.csv"));
        assertTrue(run(3, "quote accept SHOP Q-2601 --order E-60").err().contains("rope"));
        assertEquals(before, Files.readString(shop.resolve("orders.csv")));
    }

    @Test
    void twoWhoKeepAtOnce_getANumberEach() throws IOException {
        List<CompletableFuture<Run>> runs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            runs.add(CompletableFuture.supplyAsync(
                    () -> Run.of("quote", "" + shop, shop + "/asks.csv", "--keep", "--time", "50ms")));
        }
        runs.forEach(each -> assertEquals(0, each.join().code(), each.join().err()));
        assertEquals(4, files().size(), "" + files());
    }

    /** From the question to what three jobs teach; then the last acceptance is held by its cut piece. */
    @Test
    void job_isWalkedFromTheQuoteToWhatItTeaches() throws IOException {
        run(0, "stock open SHOP");
        Files.writeString(
                shop.resolve("small.csv"),
                "line,customer,rope,length,end a,end b,quantity,minutes\n1,tug,LAID-14,2 m,three-strand-eye length 20 cm,whipped,1,30 min\n");
        for (int job = 1; job <= 3; job++) {
            String quote = "Q-260" + job;
            String order = "E-6" + job;
            run(0, "quote SHOP SHOP/small.csv --keep --time 100ms");
            run(0, "quote sent SHOP " + quote);
            run(0, "quote revise SHOP " + quote + " --time 100ms");
            run(0, "quote sent SHOP " + quote);
            run(0, "quote accept SHOP " + quote + " --order " + order + " --due 2026-03-20");
            assertTrue(run(4, "quote compare SHOP " + quote).out().contains("is posted yet"));
            run(0, "stock cut SHOP E10 2.6m --piece " + order + "/1.1");
            run(0, "measure SHOP " + order + "/1.1 --came-out 2m --passed --minutes " + (35 + 5 * job));
            String settled = run(0, "quote compare SHOP " + quote).out().replaceAll("\\s+", " ");
            assertTrue(settled.contains("quote " + quote + "/2, order " + order), settled);
            assertTrue(settled.contains("minutes are booked for 1 of 1 piece"), settled);
            String taught = run(0, "quote learn SHOP --json").out();
            assertEquals(job == 3, taught.contains("\"proposedMinutesEach\""), taught);
        }
        String page = run(0, "quote learn SHOP").out();
        assertTrue(page.contains("3 jobs") && page.contains("15             22        22"), page);
        assertTrue(
                page.replaceAll("\\s+", " ")
                        .contains("in splices.json of the shop, under terminations, the minutes of"
                                + " three-strand-eye 23, whipped 22."),
                page);
        assertTrue(run(3, "quote back SHOP Q-2603").err().contains("E-63/1.1"));
        run(0, "stock spoil SHOP E-63/1.1 --back 2m");
        assertTrue(run(4, "quote compare SHOP Q-2603").out().contains("is posted yet"));
        run(0, "quote back SHOP Q-2603");
        assertTrue(run(3, "quote compare SHOP Q-2603").err().contains("no order is known"));
    }
}
