package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a proposal over the edited order to what came of it: short, late, in parts; and back. */
final class ReorderWalkTest {
    private static final LocalDate DAY = LocalDate.parse("2026-03-02");

    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    /** A rope of which 20 m a week are cut, 30 m of it there; one of which 5 m a week are, and one without a past. */
    @BeforeEach
    void shop() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        StringBuilder history = new StringBuilder("order,line,placed,rope,quantity,length,end a,end b\n");
        for (int week = 1; week <= 30; week++) {
            LocalDate monday = DAY.minusWeeks(week);
            history.append("H-" + week + ",1," + monday + ",BRAID-12,2,9.8 m,sealed,sealed\n");
            history.append("H-" + week + ",2," + monday + ",LAID-14,1,4.9 m,sealed,sealed\n");
        }
        write("history.csv", history.toString());
        write("orders.csv", "order,line,rope,quantity,length,end a,end b,due\n");
        reels("R1,BRAID-12,30 m", "R2,LAID-14,60 m");
        offers("B,Hawser Yard,BRAID-12,100 m,190 EUR,,2 %,7,1", "L,Hawser Yard,LAID-14,100 m,150 EUR,,,7,1");
        write(
                "suppliers.csv",
                """
                supplier,address,contact,freight by order,free freight from,minimum order
                Hawser Yard,"3 Capstan Lane, Eider",yard office,20 EUR,600 EUR,
                """);
    }

    private void write(String file, String text) throws IOException {
        Files.writeString(shop.resolve(file), text);
    }

    private void reels(String... rows) throws IOException {
        write("reels.csv", "reel,rope,length\n" + String.join("\n", rows) + "\n");
    }

    private void offers(String... rows) throws IOException {
        write(
                "offers.csv",
                "offer,supplier,rope,length,price,breaks,tolerance,lead days,minimum\n" + String.join("\n", rows)
                        + "\n");
    }

    private Run run(int code, String... words) {
        List<String> args = new ArrayList<>();
        for (String word : words) {
            args.add(word.equals("SHOP") ? shop.toString() : word);
        }
        if (words[0].equals("reorder")
                || (words.length > 3 && words[1].equals("order") && !words[3].equals("--back"))) {
            args.addAll(List.of("--day", "" + DAY));
        }
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(code, run.code(), run.out() + run.err());
        return run;
    }

    private static String flat(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private String onOrder() throws IOException {
        return Files.readString(shop.resolve("on-order.csv"));
    }

    @Test
    void wholeWay_fromTheProposalToTheClaim_andBack() throws IOException {
        run(0, "stock", "open", "SHOP");
        Path proposal = folder.resolve("proposal.csv");
        Run told = run(0, "reorder", "SHOP", "--out", "" + proposal);
        assertTrue(flat(told).contains("BRAID-12 B 1 100.000 190.00 EUR 190.00 EUR 2026-03-02 2026-03-09"), told.out());
        assertTrue(flat(told).contains("30.000 m free, nothing booked: 30.000 m left"), told.out());
        assertTrue(flat(told).contains("Reels 190.00 EUR, freight 20.00 EUR; together 210.00 EUR."), told.out());
        String text = Files.readString(proposal);
        assertTrue(text.contains("B,BRAID-12,Hawser Yard,100 m,1,2026-03-09,190.00 EUR,"), text);
        assertTrue(text.contains("L,LAID-14,Hawser Yard,100 m,0,"), "what is not due is there to be ordered: " + text);

        Files.writeString(proposal, text.replace("100 m,1,2026-03-09,190.00 EUR", "100 m,3,2026-03-10,180.00 EUR"));
        Run looked = run(0, "stock", "order", "SHOP", "" + proposal);
        assertTrue(flat(looked).contains("P-1 "), looked.out());
        assertTrue(flat(looked).contains("3 Capstan Lane, Eider"), looked.out());
        assertTrue(flat(looked).contains("a reel may come shorter by 2 %, 2.000 m, and no more"), looked.out());
        assertFalse(Files.exists(shop.resolve("on-order.csv")), "looking writes nothing");
        run(0, "stock", "order", "SHOP", "" + proposal, "--accept", "--who", "Ada");
        assertTrue(onOrder().contains("P-1,BRAID-12,100 m,3,2026-03-10,,Hawser Yard,180.00 EUR,"), onOrder());
        Run again = run(0, "reorder", "SHOP");
        assertTrue(flat(again).contains("Nothing is to be ordered today"), "what comes in time counts: " + again.out());

        receive("E1", "100 m", "2026-03-10");
        receive("E2", "95 m", "2026-03-12");
        assertTrue(onOrder().contains("P-1,"), "the third is still to come");
        String claims = flat(run(0, "stock", "claims", "SHOP"));
        assertTrue(claims.contains("P-1 E2 BRAID-12 2026-03-12 100.000 95.000 5.000 3.000 5.40 EUR"), claims);
        assertTrue(claims.contains("P-1 BRAID-12 2026-03-10 2026-03-12 2 1"), claims);

        assertTrue(run(3, "stock", "order", "SHOP", "--back").err().contains("a reel of order P-1 came"));
        run(0, "stock", "undo", "SHOP", "3");
        run(0, "stock", "undo", "SHOP", "2");
        assertTrue(flat(run(0, "stock", "claims", "SHOP")).contains("No reel came"));
        assertTrue(flat(run(0, "stock", "order", "SHOP", "--back")).contains("Taken back: P-1."));
        assertFalse(Files.exists(shop.resolve("on-order.csv")), "there was none before");
        run(0, "stock", "order", "SHOP", "" + proposal, "--accept");
        assertTrue(onOrder().contains("P-2,") && !onOrder().contains("P-1,"), "no number twice: " + onOrder());
        run(0, "stock", "verify", "SHOP");
    }

    private void receive(String reel, String length, String day) {
        run(0, "stock", "receive", "SHOP", reel, "BRAID-12", length, "--on-order", "P-1", "--received", day);
    }

    /** Booked orders count, and so does the day on which rope that is on order comes. */
    @Test
    void position_mindsBookedOrders_andWhenRopeComes() throws IOException {
        reels("R1,BRAID-12,200 m", "R2,LAID-14,60 m");
        assertTrue(flat(run(0, "reorder", "SHOP")).contains("Nothing is to be ordered today"));
        write(
                "orders.csv",
                "order,line,rope,quantity,length,end a,end b,due\nO-1,1,BRAID-12,9,20 m,sealed,sealed,2026-06-01\n");
        String booked = flat(run(0, "reorder", "SHOP"));
        assertTrue(booked.contains("BRAID-12 B 1 100.000"), booked);
        assertTrue(booked.contains("booked: 19."), booked);
        write(
                "on-order.csv",
                "number,rope,length,quantity,expected,supplier\nX-7,BRAID-12,100 m,1,2027-03-01,Hawser Yard\n");
        String far = flat(run(0, "reorder", "SHOP"));
        assertTrue(far.contains("98.000 m of X-7 come too late, on 2027-03-03"), far);
        assertTrue(far.contains("BRAID-12 B 1 100.000"), far);
        write(
                "on-order.csv",
                "number,rope,length,quantity,expected,supplier\nX-7,BRAID-12,100 m,1,2026-03-06,Hawser Yard\n");
        assertTrue(flat(run(0, "reorder", "SHOP")).contains("Nothing is to be ordered today"));
    }

    @Test
    void ropeWithoutAPast_isTold_whereMoreIsBookedThanThere() throws IOException {
        write(
                "history.csv",
                "order,line,placed,rope,quantity,length,end a,end b\nH-1,1,2026-02-02,LAID-14,1,2 m,sealed,sealed\n");
        write(
                "orders.csv",
                "order,line,rope,quantity,length,end a,end b,due\nO-1,1,BRAID-12,2,20 m,sealed,sealed,2026-06-01\n");
        String told = flat(run(0, "reorder", "SHOP"));
        assertTrue(told.contains("Booked beyond what there is, without a past"), told);
        assertTrue(told.contains("BRAID-12: 30.000 m free, 40."), told);
        assertTrue(told.contains("bitterend buy"), told);
    }

    /** What would be ordered in a week goes along: two orders cost two freights. */
    @Test
    void soon_isPulledIn_whereItSavesFreight_orWhereTheOrderIsTooSmall() throws IOException {
        reels("R1,BRAID-12,30 m", "R2,LAID-14,22 m");
        String told = flat(run(0, "reorder", "SHOP"));
        assertTrue(told.contains("LAID-14 L 1 100.000"), told);
        assertTrue(told.contains("but its way costs less with the others"), told);
        assertTrue(told.contains("Reels 340.00 EUR, freight 20.00 EUR"), told);
        write("suppliers.csv", "supplier,freight by order,minimum order\nHawser Yard,,300 EUR\n");
        String small = flat(run(0, "reorder", "SHOP"));
        assertTrue(small.contains("but the order is then as large as its supplier asks"), small);
        reels("R1,BRAID-12,30 m", "R2,LAID-14,200 m");
        String below = flat(run(0, "reorder", "SHOP"));
        assertTrue(below.contains("Hawser Yard takes no order below 300.00 EUR: this one comes to 190.00 EUR"), below);
    }

    @Test
    void budget_paysForWhatIsLeftShortest() throws IOException {
        reels("R1,BRAID-12,30 m", "R2,LAID-14,1 m");
        String all = flat(run(0, "reorder", "SHOP"));
        assertTrue(all.contains("LAID-14 L 1") && all.contains("BRAID-12 B 1"), all);
        String some = flat(run(0, "reorder", "SHOP", "--budget", "200"));
        assertTrue(some.contains("Due, and beyond the budget"), some);
        assertTrue(some.indexOf("LAID-14 L 1") < some.indexOf("Due, and beyond"), "it is used up first: " + some);
        String json = run(0, "reorder", "SHOP", "--budget", "200", "--json").out();
        assertTrue(json.contains("\"beyondBudget\""), json);
        run(2, "reorder", "SHOP", "--budget", "much");
    }

    /** Four reels of B cost least by the metre; a budget that pays for one of each rope buys one of each. */
    @Test
    void smallBudget_paysForTheLeastOfEachRope_beforeOneRopeGetsNothing() throws IOException {
        reels("R1,BRAID-12,30 m", "R2,LAID-14,1 m");
        offers("B,Hawser Yard,BRAID-12,100 m,190 EUR,4: 150 EUR,2 %,7,1", "L,Hawser Yard,LAID-14,100 m,150 EUR,,,7,1");
        String all = flat(run(0, "reorder", "SHOP"));
        assertTrue(all.contains("LAID-14 L 1") && all.contains("BRAID-12 B 4"), all);
        String some = flat(run(0, "reorder", "SHOP", "--budget", "360"));
        assertTrue(some.contains("LAID-14 L 1") && some.contains("BRAID-12 B 1"), some);
        assertTrue(some.contains("The least that is paid for it now: the budget allows no more."), some);
        assertFalse(some.contains("beyond the budget"), some);
    }

    /** Rope cut in lumps: what the shop asks of its service is what is asked here, unless something else is typed. */
    @Test
    void service_isThatOfTheShop() throws IOException {
        StringBuilder history = new StringBuilder("order,line,placed,rope,quantity,length,end a,end b\n");
        for (int week = 1; week <= 40; week++) {
            history.append("H-" + week + ",1," + DAY.minusWeeks(week) + ",BRAID-12," + (week % 7 == 0 ? 9 : 1)
                    + ",9.8 m,sealed,sealed\n");
        }
        write("history.csv", history.toString());
        String settings = Files.readString(shop.resolve("shop.json"));
        write("shop.json", settings.replaceFirst("\\{", "{\"service\": \"80 %\", "));
        String low = flat(run(0, "reorder", "SHOP"));
        assertEquals(low, flat(run(0, "reorder", "SHOP", "--service", "80")));
        write("shop.json", settings.replaceFirst("\\{", "{\"service\": \"99 %\", "));
        String high = flat(run(0, "reorder", "SHOP"));
        assertEquals(high, flat(run(0, "reorder", "SHOP", "--service", "99")));
        assertFalse(high.equals(low), high);
    }

    @Test
    void offerThatComesInTime_goesBeforeACheaperOneThatDoesNot() throws IOException {
        offers("CHEAP,Far Works,BRAID-12,100 m,100 EUR,,,70,1", "QUICK,Hawser Yard,BRAID-12,100 m,190 EUR,,,7,1");
        assertTrue(flat(run(0, "reorder", "SHOP")).contains("BRAID-12 QUICK"));
        reels("R1,BRAID-12,30 m", "R3,BRAID-12,200 m", "R2,LAID-14,60 m");
        assertTrue(flat(run(0, "reorder", "SHOP")).contains("BRAID-12 CHEAP"));
    }

    /** What nobody can order is named, and what the proposal rests on: the budget of the shop, though more is typed. */
    @Test
    void page_saysWhatCannotBeOrdered_andWhatItRestsOn() throws IOException {
        write(
                "offers.csv",
                """
                offer,supplier,rope,length,price,lead days,supply,valid until
                B,Hawser Yard,BRAID-12,100 m,190 EUR,7,,
                OLD,Hawser Yard,BRAID-12,100 m,90 EUR,7,,2026-02-01
                GONE,Hawser Yard,LAID-14,100 m,150 EUR,7,0,
                """);
        String settings = Files.readString(shop.resolve("shop.json"));
        write(
                "shop.json",
                settings.replaceFirst(
                        "\\{", "{\"service\": \"96 %\", \"budget\": \"500.00 EUR\", \"mostWeeks\": 40, "));
        String told = flat(run(0, "reorder", "SHOP", "--budget", "900"));
        assertTrue(told.contains("BRAID-12: OLD of Hawser Yard is left out: valid until 2026-02-01."), told);
        assertTrue(told.contains("LAID-14: GONE of Hawser Yard is left out: nothing is left of it."), told);
        assertTrue(
                told.contains(
                        "Reels ordered on 2026-03-02, so that 96 % of the rope is there in time; a budget of 500.00"
                                + " EUR, freight included; rope for 40 weeks at the most where an offer allows it."),
                told);
        assertTrue(told.contains("The budget of the shop holds: it is smaller than the 900.00 EUR of --budget."), told);
        assertTrue(told.contains("% interest a year, and each coil"), told);
        assertFalse(flat(run(0, "reorder", "SHOP", "--budget", "400")).contains("of the shop holds"));
        String json = run(0, "reorder", "SHOP", "--json").out();
        assertTrue(json.contains("\"leftOut\"") && json.contains("\"budget\": \"500.00 EUR\""), json);
    }

    @Test
    void wrongRows_areNamed_andNothingIsWritten() throws IOException {
        Path proposal = Files.writeString(
                folder.resolve("p.csv"),
                """
                offer,rope,supplier,length,quantity,expected,price,note
                X,BRAID-12,Hawser Yard,100 m,1,2026-03-09,190.00 EUR,
                B,LAID-14,Hawser Yard,100 m,1,2026-03-09,190.00 EUR,
                B,BRAID-12,Hawser Yard,90 m,1,2026-03-09,190.00 EUR,
                B,BRAID-12,Hawser Yard,100 m,some,2026-03-09,190.00 EUR,
                ,BRAID-12,Hawser Yard,100 m,1,,190.00 EUR,
                B,BRAID-12,Hawser Yard,100 m,1,2026-03-09,much,
                """);
        String err = run(3, "stock", "order", "SHOP", "" + proposal, "--accept").err();
        for (String wrong : List.of(
                "row 2, offer: found \"X\"",
                "row 3, rope: found \"LAID-14\"",
                "row 4, length: found \"90 m\"",
                "row 5, quantity: found \"some\"",
                "row 6, expected",
                "row 7, price: found \"much\"")) {
            assertTrue(err.contains(wrong), wrong + "\n" + err);
        }
        assertFalse(Files.exists(shop.resolve("on-order.csv")));
    }

    @Test
    void oddRows_areWarnedOf_andLookedAt() throws IOException {
        offers("B,Hawser Yard,BRAID-12,100 m,190 EUR,4: 150 EUR,2 %,7,1", "L,Hawser Yard,LAID-14,100 m,150 EUR,,,7,1");
        Path proposal = Files.writeString(
                folder.resolve("p.csv"),
                """
                offer,quantity,expected,price
                B,3,2026-03-09,150.00 EUR
                B,2,2026-02-27,190.00 EUR
                L,1,2026-03-09,140.00 EUR
                """);
        Run run = run(0, "stock", "order", "SHOP", "" + proposal);
        String err = run.err().replaceAll("\\s+", " ");
        assertTrue(err.contains("190.00 EUR each, the price of 3 reels of B; 150.00 EUR is the price from 4 on"), err);
        assertTrue(err.contains("row 3, expected: found \"2026-02-27\", expected a day from 2026-03-02 on"), err);
        assertTrue(
                err.contains("with those above it is 5 reels, and in one order of so many each costs 150.00 EUR"), err);
        assertFalse(err.contains("row 4"), "a price that was agreed: " + err);
    }

    @Test
    void sameOrderAgainToday_isWarnedOf() throws IOException {
        Path proposal = Files.writeString(folder.resolve("p.csv"), "offer,quantity\nB,2\n");
        assertFalse(run(0, "stock", "order", "SHOP", "" + proposal, "--accept")
                .err()
                .contains("already"));
        Path other = Files.writeString(folder.resolve("o.csv"), "offer,quantity\nL,1\n");
        assertFalse(run(0, "stock", "order", "SHOP", "" + other).err().contains("already"));
        for (String[] more : new String[][] {{}, {"--accept"}}) {
            List<String> args = new ArrayList<>(List.of("stock", "order", "SHOP", "" + proposal));
            args.addAll(List.of(more));
            String err = run(0, args.toArray(String[]::new)).err();
            assertTrue(err.contains("warning: the same was ordered today already: P-1."), err);
        }
        run(0, "stock", "order", "SHOP", "--back");
        run(0, "stock", "order", "SHOP", "--back");
        assertFalse(run(0, "stock", "order", "SHOP", "" + proposal).err().contains("already"));
    }

    @Test
    void order_goesBelowWhatIsThere_cellByCell_underTheNextNumber() throws IOException {
        String before =
                "number;rope;length;expected;supplier;mine\r\nA 9;BRAID-12;50 m;2026-03-04;\"Hawser Yard\";x\r\n";
        write("on-order.csv", before.replace(";mine", "").replace(";x", ""));
        String kept = onOrder();
        Path proposal = Files.writeString(
                folder.resolve("p.csv"),
                "offer,quantity,certificate,note\nB,2,works certificate,\nB,0,,\n,,,\nL,1,,\"ask for Ida, please\"\n");
        Run run = run(0, "stock", "order", "SHOP", "" + proposal, "--accept");
        assertTrue(onOrder().contains("A 10;BRAID-12;100 m;2026-03-09;"), onOrder());
        assertTrue(onOrder().contains("A 11;LAID-14;100 m;2026-03-09;"), onOrder());
        assertTrue(flat(run).contains("with certificate: works certificate, its number"), run.out());
        assertTrue(flat(run).contains("ask for Ida, please"), run.out());
        run(0, "stock", "order", "SHOP", "--back");
        assertEquals(kept, onOrder());
        run(0, "stock", "order", "SHOP", "" + proposal, "--accept");
        Files.writeString(shop.resolve("on-order.csv"), onOrder().replace("A 12", "A 99"));
        assertTrue(run(3, "stock", "order", "SHOP", "--back").err().contains("somebody changed on-order.csv"));
    }
}
