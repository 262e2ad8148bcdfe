package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The purchaser's day at the command line. */
final class BuyDayTest {
    private static final String[] STUDY = {"--from-history", "--scenarios", "10", "--weeks", "4"};
    private final Path folder;
    private final Path shop;

    BuyDayTest(@TempDir Path folder) throws IOException {
        this.folder = folder;
        shop = DemoShop.copy("eider-shed", folder);
    }

    @Test
    void study_isTheSameBytes_onOneThreadOrTwo_wholeOrMerged() throws IOException {
        Run whole = buy("--threads", "1");
        assertEquals(0, whole.code(), whole.err());
        assertTrue(whole.out().contains("Keep 200 m."), whole.out());
        assertTrue(whole.out().contains("bitterend reorder " + shop), whole.out());
        assertFalse(whole.out().contains("Order soon"), "what is due is worked out by reorder alone");
        assertEquals(whole.out(), buy("--threads", "2").out());
        List<String> merge = new ArrayList<>(List.of("--merge"));
        for (int part = 1; part <= 3; part++) {
            Path file = folder.resolve("share" + part + ".json");
            Files.writeString(file, buy("--share", part + "/3").out());
            merge.add(file.toString());
        }
        assertEquals(whole.out(), buy(merge.toArray(String[]::new)).out());
    }

    /** How long reels are on their way, and from where to where the length to order below may be: on the page and for programs. */
    @Test
    void study_saysItsLeads_andHowSureThePointIs() {
        Run page = buy("--rope", "BRAID-12");
        assertTrue(page.out().contains("From the order to the rack: "), page.out());
        assertTrue(page.out().replaceAll("\\s+", " ").matches("(?s).*When less than [0-9]+ m is there.*"), page.out());
        String json = buy("--rope", "BRAID-12", "--json").out();
        assertTrue(json.contains("\"leadDays\": ") && json.contains("\"leadSpread\": "), json);
        assertTrue(
                json.replaceAll("\\s+", "")
                        .matches("(?s).*\"below\":\\{\"value\":\"[0-9]+mm\",\"low\":\"[0-9]+mm\",\"high\":.*"),
                json);
    }

    /** From the rack there is: the page says so, shares put together print the same, and none is of a study that warms up. */
    @Test
    void study_startsFromTheRackThereIs() throws IOException {
        Run whole = buy("--from-rack", "--threads", "1");
        assertEquals(0, whole.code(), whole.err());
        assertTrue(whole.out().contains("For 2026-03-02, from the rack there is."), whole.out());
        assertFalse(whole.out().contains("to warm up"), whole.out());
        List<String> merge = new ArrayList<>(List.of("--from-rack", "--merge"));
        for (int part = 1; part <= 2; part++) {
            Path file = folder.resolve("rack" + part + ".json");
            Files.writeString(file, buy("--from-rack", "--share", part + "/2").out());
            merge.add(file.toString());
        }
        assertEquals(whole.out(), buy(merge.toArray(String[]::new)).out());
        assertEquals(3, buy("--merge", merge.get(2), merge.get(3)).code(), "a study that warms up is another one");
        assertTrue(buy("--from-rack", "--json").out().contains("\"fromRack\": true"));
    }

    @Test
    void shareOfAnotherStudy_isRefusedWithItsPlace() throws IOException {
        Path file = folder.resolve("share.json");
        Files.writeString(file, buy("--share", "1/2", "--seed", "5").out());
        Run run = buy("--merge", file.toString());
        assertEquals(3, run.code());
        assertTrue(run.err().contains("share.json, seed: found \"5\""), run.err());
        Run twice = buy("--seed", "5", "--merge", file.toString(), file.toString());
        assertEquals(3, twice.code());
        assertTrue(twice.err().contains("a scenario that no other file has"), twice.err());
    }

    @Test
    void ordersInHand_areBoughtForOnlyWhereTheRackFallsShort() throws IOException {
        Run nothing = Run.of("buy", shop.toString(), "--time", "2s");
        assertEquals(0, nothing.code(), nothing.err());
        assertTrue(nothing.out().contains("Buy nothing"), nothing.out());
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity,due
                E-40,1,BRAID-12,60 m,6,2026-03-20
                E-40,2,LAID-14,230 m,1,
                """);
        Run run = Run.of("buy", shop.toString(), "--time", "2s");
        assertEquals(4, run.code(), run.err());
        String page = run.out().replaceAll("\\s+", " ");
        assertTrue(page.contains("E-40/2.1: takes 230.000 m in one length; the longest to be had is 220.000 m"), page);
        assertTrue(page.contains("in one length without joins"), page);
        // Two days on the way and two working days that reels are usually late before Friday the 20th.
        assertTrue(page.contains("order by 2026-03-16"), page);
        assertTrue(page.contains("Next best"), page);
    }

    @Test
    void budgetAndWeeks_boundWhatIsRecommended() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity,due
                E-40,1,BRAID-12,60 m,6,2026-03-20
                """);
        Run much = Run.of("buy", shop.toString(), "--budget", "much");
        assertEquals(2, much.code());
        assertTrue(much.err().contains("--budget: found \"much\", expected an amount of money"), much.err());
        Run weeks = Run.of("buy", shop.toString(), "--most-weeks", "0");
        assertEquals(2, weeks.code());
        assertTrue(weeks.err().contains("expected a number of weeks from 1 to 520"), weeks.err());
        Run poor = Run.of("buy", shop.toString(), "--time", "2s", "--budget", "10 EUR");
        assertEquals(4, poor.code(), poor.err());
        String page = poor.out().replaceAll("\\s+", " ");
        assertTrue(page.contains("The budget of 10.00 EUR does not pay for all orders: the least paid comes to"), page);
        assertTrue(page.contains("It pays for no reel of the work that comes first."), page);
        assertTrue(page.contains("These stay without rope then: E-40/1 (2 pieces)"), page);
    }

    /** Of two pieces that the rack has no rope for one comes off the reel that the budget can pay for. */
    @Test
    void budgetBelowTheLeastPaid_ordersWhatItCanPayFor() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity,due
                E-40,1,BRAID-12,60 m,6,2026-03-20
                """);
        Run run = Run.of("buy", shop.toString(), "--time", "2s", "--budget", "200 EUR");
        assertEquals(4, run.code(), run.err());
        String page = run.out().replaceAll("\\s+", " ");
        assertTrue(
                page.contains("The most urgent work first, order 1 reel of 100 m BRAID-12 (B12-100) for 196.00"), page);
        assertTrue(page.contains("These stay without rope then: E-40/1 (1 piece)"), page);
        assertTrue(page.contains("within the budget * 196.00"), page);
        assertTrue(page.contains("BRAID-12 within the budget * 1 x B12-100 196.00"), page);
        String json = Run.of("buy", shop.toString(), "--time", "2s", "--budget", "200 EUR", "--json")
                .out();
        assertTrue(json.contains("\"affordable\""), json);
    }

    /** A set that costs less by less than is proven apart is a tie: what is taken is not called the least cost alone then. */
    @Test
    void headline_agreesWithTheTieBelowIt() throws IOException {
        Path loft = DemoShop.copy("gannet-loft", folder);
        String page = Run.of("buy", loft.toString(), "--time", "5s").out().replaceAll("\\s+", " ");
        assertEquals(page.contains("A tie: "), !page.contains("the least cost alike"), page);
        assertEquals(page.contains("A tie: "), page.contains("and but for a tie the least cost"), page);
        assertFalse(page.contains("in place of 1 reel of 220 m ES32 (ES32-220) would"), page);
        assertTrue(
                page.contains("offers of rope that is there: DB12-1000 (a reel may hold several lengths joined)"),
                page);
    }

    /** Two pieces want 200 m however they are bought, which lasts longer than asked for: it is given, and that is said. */
    @Test
    void weeksThatNoWayKeeps_areTold_withTheWayThatLeavesTheLeast() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity,due
                E-40,1,BRAID-12,60 m,6,2026-03-20
                """);
        Run run = Run.of("buy", shop.toString(), "--time", "2s", "--most-weeks", "2");
        assertEquals(0, run.code(), run.out());
        String page = run.out().replaceAll("\\s+", " ");
        assertTrue(
                page.contains(
                        "Above the most weeks, 2, since no way that serves the orders leaves less of it: BRAID-12 3.0."),
                page);
        assertTrue(page.contains("for 370.00 EUR"), page);
    }

    /** The option, what was found, and what is expected; the shop's own form of money. */
    @Test
    void wrongBudgetOrWeeks_areToldByTheirOption() {
        for (String[] wrong : new String[][] {
            {"--budget", "-5 EUR", "expected an amount from 0.00 EUR on"},
            {"--budget", "5000 USD", "expected an amount of money such as 12.50 EUR"},
            {"--most-weeks", "600", "expected a number of weeks from 1 to 520"},
            {"--most-weeks", "2.5", "expected a number of weeks from 1 to 520"}
        }) {
            Run run = Run.of("buy", shop.toString(), wrong[0], wrong[1]);
            assertEquals(2, run.code());
            assertTrue(run.err().contains(wrong[0] + ": found \"" + wrong[1] + "\", " + wrong[2]), run.err());
        }
    }

    /** Why they cannot be had is said once for all pieces of which it is true; a single reel is of one lot anyway. */
    @Test
    void piecesThatNothingHolds_areNamedTogether() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity,due
                E-40,1,BRAID-12,60 m,6,2026-03-20
                E-40,2,LAID-14,230 m,2,
                """);
        String page = Run.of("buy", shop.toString(), "--time", "2s").out().replaceAll("\\s+", " ");
        assertTrue(page.contains("E-40/2.1, E-40/2.2: takes 230.000 m in one length"), page);
    }

    /** A rope that is not ordered may have offers that nobody can order: they do not belong on the page. */
    @Test
    void offersThatNobodyCanOrder_areNamedForRopesWithWorkAlone() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity,due
                E-40,1,BRAID-12,60 m,6,2026-03-20
                """);
        Path offers = shop.resolve("offers.csv");
        Files.writeString(
                offers,
                """
                offer,supplier,rope,length,price,joined,supply,valid until
                JOINED,Ropewalk,BRAID-12,1000 m,900.00 EUR,yes,,
                OTHER,Ropewalk,LAID-14,1000 m,900.00 EUR,yes,,
                THERE,Ropewalk,BRAID-12,200 m,350.00 EUR,,,
                """);
        Run run = Run.of("buy", shop.toString(), "--time", "2s");
        assertTrue(run.out().contains("JOINED"), run.out());
        assertFalse(run.out().contains("OTHER"), run.out());
        String json = Run.of("buy", shop.toString(), "--time", "2s", "--json").out();
        assertTrue(json.contains("JOINED") && !json.contains("OTHER"), json);
    }

    /** What is off the reel needs no rope any more, though its order is in the book until it is delivered. */
    @Test
    void piecesThatAreCut_areNotBoughtForAgain() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,rope,length,quantity,due
                E-40,1,BRAID-12,60 m,4,2026-03-03
                """);
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
        assertEquals(
                0, Run.of("plan", shop.toString(), "--effort", "reproducible").code());
        assertEquals(0, Run.of("stock", "post", shop.toString(), "--all").code());
        Run run = Run.of("buy", shop.toString(), "--time", "2s");
        assertEquals(0, run.code(), run.out());
        assertTrue(run.out().contains("Buy nothing"), run.out());
    }

    @Test
    void badOffersAndHistory_areToldWithTheirPlaces() throws IOException {
        Files.writeString(shop.resolve("offers.csv"), "offer,rope,length,price\nA,BRAID-12,100,1 EUR\nA,NONE,5 m,x\n");
        Files.writeString(
                shop.resolve("history.csv"),
                "order,line,placed,rope,length\nH,1,soon,BRAID-12,3 m\nK,1,2026-01-05,GONE,3 m\n");
        Run run = Run.of("check", shop.toString());
        assertEquals(3, run.code());
        for (String told : List.of(
                "offers.csv, row 2, length: found \"100\"",
                "offers.csv, row 3, rope: found \"NONE\"",
                "offers.csv, row 3, price: found \"x\"",
                "history.csv, row 2, placed: found \"soon\"",
                "warning: history.csv, row 3, rope: found \"GONE\"")) {
            assertTrue(run.out().contains(told), told + "\n" + run.out());
        }
    }

    @Test
    void pages_holdTheirPicturesAndOpenWithoutANetwork() throws IOException {
        Path html = folder.resolve("study.html");
        Path pdf = folder.resolve("study.pdf");
        Run run = buy(
                "--html",
                html.toString(),
                "--pdf",
                pdf.toString(),
                "--pictures",
                folder.resolve("svg").toString());
        assertEquals(0, run.code(), run.err());
        String page = Files.readString(html);
        assertTrue(page.contains("<svg") && page.contains("LAID-14: past pieces by cut length"));
        assertFalse(page.replace("http://www.w3.org/2000/svg", "").contains("http"), "nothing from the network");
        assertEquals("%PDF", new String(Files.readAllBytes(pdf), 0, 4, java.nio.charset.StandardCharsets.US_ASCII));
        assertTrue(Files.readString(folder.resolve("svg/BRAID-12-cost.svg")).startsWith("<svg"));
    }

    @Test
    void offersThatNobodyCanOrder_areNamedInAStudy() throws IOException {
        Path offers = shop.resolve("offers.csv");
        Files.writeString(
                offers,
                """
                offer,supplier,rope,length,price,joined,supply,valid until
                JOINED,Ropewalk,BRAID-12,1000 m,900.00 EUR,yes,,
                GONE,Ropewalk,BRAID-12,100 m,150.00 EUR,,0,
                OVER,Ropewalk,BRAID-12,150 m,150.00 EUR,,,2025-01-31
                THERE,Ropewalk,BRAID-12,200 m,350.00 EUR,,,
                """);
        String told = buy("--rope", "BRAID-12").out().replaceAll("\\s+", " ");
        assertTrue(told.contains("(JOINED): a reel may hold several lengths joined."), told);
        assertTrue(told.contains("(GONE): nothing is left of it."), told);
        assertTrue(told.contains("(OVER): valid until 2025-01-31."), told);
        String json = buy("--rope", "BRAID-12", "--json").out();
        assertTrue(json.contains("\"leftOut\""), json);
        assertTrue(json.contains("\"no longer valid\""), json);
    }

    private Run buy(String... more) {
        List<String> words = new ArrayList<>(List.of("buy", shop.toString()));
        words.addAll(List.of(STUDY));
        words.addAll(List.of(more));
        return Run.of(words.toArray(String[]::new));
    }
}
