package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rope that is on order, on the small demo loft on Monday 2 March: the rack has no 90 m of LAID-14, what is coming has. */
final class ComingRopeTest {
    private static final String COMING = "B-9,LAID-14,110 m,1,2026-03-04,works,\n";

    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void copyDemo() throws IOException {
        shop = DemoShop.copy("eider-shed", folder).toString();
        onOrder(COMING);
    }

    private void onOrder(String rows) throws IOException {
        Files.writeString(
                Path.of(shop, "on-order.csv"), "number,rope,length,quantity,expected,certificate,supplier\n" + rows);
    }

    /** An order of one piece of 90 m. */
    private void order(String due) throws IOException {
        DemoShop.order(Path.of(shop), "E-61,1,pilot boat Dunlin,LAID-14,90 m,whipped,whipped,1," + due);
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), run.err() + run.out());
        return run;
    }

    private String plan(int code) {
        return oneLine(run(code, "plan", shop, "--effort", "reproducible").out());
    }

    private static String oneLine(String page) {
        return page.replaceAll("\\s+", " ");
    }

    /** Expected on Wednesday, usually two working days late: counted on from Friday. */
    @Test
    void ropeThatComesInTime_isPlannedWithAndItsRiskTold() throws IOException {
        order("2026-03-10");
        String page = plan(0);
        assertTrue(page.contains("1 of them on order"), page);
        assertTrue(
                page.contains("Rides on rope on order: E-61 on B-9, expected 2026-03-04, 4 working days before it must"
                        + " be cut;"),
                page);
        assertTrue(page.contains("coming 03-04 B-9:1 LAID-14"), page);
        String week = oneLine(run(0, "show", shop, "week").out());
        assertTrue(
                week.contains("E-61 pilot boat Dunlin 1 B-9 2026-03-04 2026-03-10 4"),
                "in the table of the week: " + week);
        String reel = oneLine(run(0, "show", shop, "B-9:1").out());
        assertTrue(reel.contains("on order B-9, coming 2026-03-04, counted on from 2026-03-06"), reel);
        String json = run(0, "show", shop, "--json").out();
        assertTrue(json.contains("\"ridesOnOrder\""), json);
        assertTrue(json.contains("\"countedFrom\": \"2026-03-06\""), json);
    }

    @Test
    void ropeThatComesTooLate_isNamedAndNotPlannedWith() throws IOException {
        order("2026-03-05");
        String page = plan(4);
        assertTrue(
                page.contains("Order B-9 would do for E-61/1.1: 110 m of LAID-14, expected 2026-03-04, counted on from"
                        + " 2026-03-06; or receive"),
                page);
        String why = oneLine(run(0, "show", shop, "reasons").out());
        assertTrue(
                why.contains("E-61/1.1 must be cut by 2026-03-05; rope on order B-9 is counted on from 2026-03-06"),
                why);
    }

    @Test
    void lateness_isWhatTheShopSays() throws IOException {
        order("2026-03-05");
        Path settings = Path.of(shop, "shop.json");
        Files.writeString(
                settings, Files.readString(settings).replaceFirst("\\{", "{\"lateness\": \"1 working day\","));
        assertTrue(plan(0).contains("E-61 on B-9, expected 2026-03-04, 1 working day before it must be cut"));
    }

    /** What should have been here on Friday is counted on from tomorrow, day for day. */
    @Test
    void ropeThatIsOverdue_isCountedOnFromTheNextWorkingDay() throws IOException {
        onOrder("B-9,LAID-14,110 m,1,2026-02-25,works,\n");
        order("2026-03-04");
        String page = plan(0);
        assertTrue(
                page.contains(
                        "E-61 on B-9, expected 2026-02-25 and not here yet, 2 working days before it must be cut"),
                page);
    }

    /** The offer of that reel says how much short it may come: 110 m less 2 %. */
    @Test
    void ropeOnOrder_isCountedOnLessTheToleranceOfItsOffer() throws IOException {
        Files.writeString(
                Path.of(shop, "offers.csv"),
                "offer,supplier,rope,length,price,tolerance\nL-110,Quay Ropes,LAID-14,110 m,100.00 EUR,2 %\n");
        DemoShop.order(Path.of(shop), "E-61,1,pilot boat Dunlin,LAID-14,108.5 m,whipped,whipped,1,2026-03-10");
        String page = plan(4);
        assertTrue(page.contains("Not planned: E-61/1.1"), page);
    }

    /** No offer of that length: the most that an offer of the rope may come short; where nobody offers it, 2 % of 110 m. */
    @Test
    void ropeOnOrder_withoutALikeOffer_isCountedOnWithCare() throws IOException {
        DemoShop.order(Path.of(shop), "E-61,1,pilot boat Dunlin,LAID-14,108.5 m,whipped,whipped,1,2026-03-10");
        Files.deleteIfExists(Path.of(shop, "offers.csv"));
        assertTrue(plan(4).contains("Not planned: E-61/1.1"));
        Files.writeString(
                Path.of(shop, "offers.csv"),
                "offer,supplier,rope,length,price,tolerance\nL-220,Quay Ropes,LAID-14,220 m,200.00 EUR,1 %\n");
        plan(0);
        Files.writeString(
                Path.of(shop, "offers.csv"),
                """
                offer,supplier,rope,length,price,tolerance
                L-220,Quay Ropes,LAID-14,220 m,200.00 EUR,1 %
                L-500,Quay Ropes,LAID-14,500 m,400.00 EUR,3 %
                """);
        assertTrue(plan(4).contains("Not planned: E-61/1.1"));
    }

    /** Expected on Saturday the 7th, nobody is there before Monday: a working day later is Tuesday. */
    @Test
    void delay_isCountedFromTheFirstWorkingDay() throws IOException {
        onOrder("B-9,LAID-14,110 m,1,2026-03-07,works,\n");
        order("2026-03-13");
        String page = oneLine(run(0, "plan", shop, "--late", "B-9=1", "--effort", "reproducible")
                .out());
        assertTrue(page.contains("Order B-9 expected 2026-03-10 instead of 2026-03-07"), page);
    }

    @Test
    void planThatRidesOnAnOrder_saysWhatBecameOfIt() throws IOException {
        order("2026-03-10");
        plan(0);
        onOrder("B-9,LAID-14,110 m,1,2026-03-06,works,\n");
        String later = told();
        assertTrue(
                later.contains("order B-9 is expected 2026-03-06 now, not 2026-03-04, and counted on from 2026-03-10"),
                later);
        onOrder("B-9,LAID-14,110 m,1,2026-03-09,works,\n");
        String tooLate = told();
        assertTrue(
                tooLate.contains("order B-9 is expected 2026-03-09 now, not 2026-03-04, and counted on from 2026-03-11;"
                        + " work that rides on it must be cut by 2026-03-10"),
                tooLate);
        onOrder("");
        String gone = told();
        assertTrue(gone.contains("reel B-9:1 is not on order any more"), gone);
    }

    /** What is said of the plan in force before it is shown. */
    private String told() {
        return oneLine(run(0, "show", shop).err());
    }

    /** It has no sheet, whichever are asked for, and is not issued. */
    @Test
    void reelOnOrder_hasNoSheet() throws IOException {
        order("2026-03-10");
        plan(0);
        run(0, "sheet", shop, "--all", "--issue");
        String sheets = PageText.of(Path.of(shop, "sheet.html"));
        assertTrue(sheets.contains("E8"), sheets);
        assertFalse(sheets.contains("B-9:1"), sheets);
        String none = run(2, "sheet", shop, "--reel", "B-9:1").err();
        assertTrue(none.contains("--reel B-9:1: it is on order and has no sheet before it is here"), none);
        assertFalse(plan(0).contains("not in the shop"), "what is issued stays");
    }

    /** Two reels of one order that came in one list: each takes what was promised off one of them. */
    @Test
    void reelsThatComeByAList_takeWhatWasPromisedOffEach() throws IOException {
        onOrder("B-9,LAID-14,110 m,2,2026-03-04,works,\n");
        for (String order : new String[] {"E-61", "E-62"}) {
            DemoShop.order(Path.of(shop), order + ",1,pilot boat Dunlin,LAID-14,90 m,whipped,whipped,1,2026-03-10");
        }
        run(0, "stock", "open", shop);
        plan(0);
        Path list = Files.writeString(
                folder.resolve("came.csv"), "reel,rope,length\nK-9,LAID-14,110 m\nK-10,LAID-14,110 m\n");
        run(0, "stock", "receive", shop, "--file", "" + list, "--on-order", "B-9", "--accept");
        assertTrue(told().contains("reel B-9:1 came and is reel K-9 now"), told());
        assertTrue(told().contains("reel B-9:2 came and is reel K-10 now"), told());
        assertFalse(run(0, "plan", shop, "--effort", "reproducible").out().contains("B-9"), "nothing changes");
    }

    @Test
    void reelThatComes_takesWhatWasPromised() throws IOException {
        order("2026-03-10");
        run(0, "stock", "open", shop);
        plan(0);
        String unsaid = oneLine(
                run(0, "stock", "receive", shop, "K-9", "LAID-14", "110 m").err());
        assertTrue(unsaid.contains("order B-9 of LAID-14 is still to come"), unsaid);
        run(0, "stock", "undo", shop, "3");
        String other = run(3, "stock", "receive", shop, "K-9", "BRAID-12", "110 m", "--on-order", "B-9")
                .err();
        assertTrue(other.contains("order B-9 is of LAID-14, not of BRAID-12"), other);
        run(0, "stock", "receive", shop, "K-9", "LAID-14", "110 m", "--on-order", "B-9");
        assertTrue(told().contains("reel B-9:1 came and is reel K-9 now"));
        Run again = run(0, "plan", shop, "--effort", "reproducible");
        assertFalse(again.out().contains("on order"), again.out());
        assertTrue(run(0, "show", shop, "K-9").out().contains("E-61/1.1"));
        assertFalse(again.out().contains("B-9"), "no change is told of what stays: " + again.out());
        String since = oneLine(run(0, "show", shop, "changes").out());
        assertTrue(since.contains("As plan 1 promised"), since);
        String none = run(3, "stock", "receive", shop, "K-10", "LAID-14", "110 m", "--on-order", "B-9")
                .err();
        assertTrue(none.contains("nothing is to come of an order of reels B-9; on-order.csv has none"), none);
        String checked = run(0, "check", shop).out();
        assertTrue(checked.contains("this order is received"), checked);
    }

    /** Buying for the orders in hand counts on the same rope, once. */
    @Test
    void ropeOnOrder_isNotBoughtAgain() throws IOException {
        order("2026-03-10");
        Files.writeString(
                Path.of(shop, "offers.csv"),
                "offer,supplier,rope,length,price,lead days\nL-110,Quay Ropes,LAID-14,110 m,300.00 EUR,1\n");
        assertFalse(bought().contains(" x L-110"), bought());
        onOrder("");
        assertTrue(bought().contains(" x L-110"), bought());
    }

    private String bought() {
        return oneLine(run(0, "buy", shop, "--time", "1s").out());
    }

    /** Counted on from Friday the 6th; three working days later from Wednesday the 11th, a day too late for E-61. */
    @Test
    void delay_saysWhoseWorkWouldBeLeftUndoneAndWritesNothing() throws IOException {
        order("2026-03-10");
        plan(0);
        String[] late = {"plan", shop, "--late", "B-9=3", "--effort", "reproducible"};
        String page = oneLine(run(0, late).out());
        assertTrue(
                page.contains(
                        "Order B-9 expected 2026-03-09 instead of 2026-03-04, counted on from 2026-03-11 instead of"
                                + " 2026-03-06."),
                page);
        assertTrue(page.contains("Left undone then: 1 piece of 1 order."), page);
        assertTrue(page.contains("E-61 pilot boat Dunlin E-61/1.1 2026-03-10 2026-03-11 1"), page);
        assertTrue(page.contains("Cut in time all the same: E-32."), page);
        assertFalse(Files.exists(Path.of(shop, "plans", "2.json")), "a question");
        String json = run(0, "plan", shop, "--late", "B-9=3", "--effort", "reproducible", "--json")
                .out();
        assertTrue(json.contains("\"format\": \"bitterend/late/1\""), json);
        assertTrue(json.contains("\"workingDaysLate\": 1"), json);
        String little = oneLine(run(0, "plan", shop, "--late", "B-9=1", "--effort", "reproducible")
                .out());
        assertTrue(little.contains("Nothing more would be left undone, at the same cost."), little);
    }

    @Test
    void delayThatCannotBeMeant_isRefused() {
        assertTrue(run(2, "plan", shop, "--late", "P-1=3")
                .err()
                .contains("found \"P-1\", expected the number of an order of rope that is to come: B-9"));
        assertTrue(run(2, "plan", shop, "--late", "B-9").err().contains("such as P-88=3"));
        assertTrue(run(2, "plan", shop, "--late", "B-9=3", "--keep", "1")
                .err()
                .contains("--keep: is for making a plan; --late asks what would be, and keeps nothing"));
    }
}
