package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is to be ordered again, of whom, how much, and why. */
final class ReorderTest {
    private final ReorderShop at;

    ReorderTest(@TempDir Path folder) throws IOException {
        at = new ReorderShop(folder);
    }

    /** Booked orders count, and so does the day on which rope that is on order comes. */
    @Test
    void position_mindsBookedOrders_andWhenRopeComes() throws IOException {
        at.reels("R1,BRAID-12,200 m", "R2,LAID-14,60 m");
        assertTrue(ReorderShop.flat(at.run(0, "reorder", "SHOP")).contains("Nothing is to be ordered today"));
        at.write(
                "orders.csv",
                "order,line,rope,quantity,length,end a,end b,due\nO-1,1,BRAID-12,9,20 m,sealed,sealed,2026-06-01\n");
        String booked = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(booked.contains("BRAID-12 B 1 100.0"), booked);
        assertTrue(booked.contains("booked: 19."), booked);
        at.write(
                "on-order.csv",
                "number,rope,length,quantity,expected,supplier\nX-7,BRAID-12,100 m,1,2027-03-01,Hawser Yard\n");
        String far = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(far.contains("98.0 m of X-7 come too late, on 2027-03-03"), far);
        assertTrue(far.contains("BRAID-12 B 1 100.0"), far);
        at.write(
                "on-order.csv",
                "number,rope,length,quantity,expected,supplier\nX-7,BRAID-12,100 m,1,2026-03-06,Hawser Yard\n");
        assertTrue(ReorderShop.flat(at.run(0, "reorder", "SHOP")).contains("Nothing is to be ordered today"));
    }

    /** 10 m too little of a rope without a past: one reel that holds the longest piece, on one bill with what else is due. */
    @Test
    void ropeWithoutAPast_isOrderedAsFarAsItIsBooked_andBundledWithTheOthers() throws IOException {
        at.write(
                "history.csv",
                """
                order,line,placed,rope,quantity,length,end a,end b
                H-1,1,2026-02-02,LAID-14,8,2 m,sealed,sealed
                """);
        at.reels("R1,BRAID-12,30 m", "R2,LAID-14,1 m");
        at.offers(
                "B,Hawser Yard,BRAID-12,100 m,190 EUR,,2 %,7,1",
                "SHORT,Hawser Yard,BRAID-12,15 m,10 EUR,,,7,1",
                "LONG,Hawser Yard,BRAID-12,200 m,330 EUR,,2 %,7,1",
                "L,Hawser Yard,LAID-14,100 m,150 EUR,,,7,1");
        at.write(
                "orders.csv",
                "order,line,rope,quantity,length,end a,end b,due\nO-1,1,BRAID-12,2,20 m,sealed,sealed,2026-06-01\n");
        String told = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(told.contains("BRAID-12 B 1 100.0 190.00"), told);
        assertTrue(told.contains("more booked than there is, wanted from 2026-06-01 on."), told);
        assertTrue(told.contains("with these reels every piece booked has its rope"), told);
        assertTrue(told.contains("Reels 340.00 EUR, freight 20.00 EUR"), "one freight: " + told);
        String json = at.run(0, "reorder", "SHOP", "--json").out();
        assertTrue(json.contains("\"past\": false") && json.contains("\"shortFrom\": \"2026-06-01\""), json);
        at.offers("L,Hawser Yard,LAID-14,100 m,150 EUR,,,7,1");
        String nobody = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(nobody.contains("Booked beyond what there is, and nobody offers it"), nobody);
        assertTrue(nobody.contains("BRAID-12: 30.0 m free, 40.0 m booked: 10.0 m more booked than there is"), nobody);
    }

    /** Three of 30 m, 50 m there: 40 m are missing, but a reel of 50 m holds one more and not two. */
    @Test
    void ropeWithoutAPast_isOrderedSoThatEveryPieceHasItsReel() throws IOException {
        at.write("history.csv", "order,line,placed,rope,quantity,length,end a,end b\n");
        at.reels("R1,BRAID-12,50 m", "R2,LAID-14,60 m");
        at.offers("SHORT,Hawser Yard,BRAID-12,50 m,90 EUR,,,7,1", "LONG,Hawser Yard,BRAID-12,100 m,170 EUR,,,7,1");
        at.write(
                "orders.csv",
                "order,line,rope,quantity,length,end a,end b,due\nO-1,1,BRAID-12,3,30 m,sealed,sealed,2026-06-01\n");
        String told = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(told.contains("BRAID-12 LONG 1 100.0 170.00"), told);
        assertTrue(told.contains("with these reels every piece booked has its rope"), told);
        at.offers("SHORT,Hawser Yard,BRAID-12,50 m,80 EUR,,,7,1", "LONG,Hawser Yard,BRAID-12,100 m,170 EUR,,,7,1");
        assertTrue(ReorderShop.flat(at.run(0, "reorder", "SHOP")).contains("BRAID-12 SHORT 2 50.0 80.00"));
        at.offers("TINY,Hawser Yard,BRAID-12,25 m,80 EUR,,,7,1");
        String none = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(none.contains("no one offer was found that holds every piece booked"), none);
    }

    /** A small piece that is wanted before anything can come leaves too little of the rack for one of the two long ones. */
    @Test
    void pieceWantedSoon_isCutOffTheRackFirst() throws IOException {
        at.write("history.csv", "order,line,placed,rope,quantity,length,end a,end b\n");
        at.reels("R1,BRAID-12,100 m", "R2,LAID-14,60 m");
        at.offers("B110,Hawser Yard,BRAID-12,110 m,905 EUR,,,10,1", "B220,Hawser Yard,BRAID-12,220 m,1716 EUR,,,10,1");
        at.write(
                "orders.csv",
                """
                order,line,rope,quantity,length,end a,end b,due
                O-1,1,BRAID-12,2,18.5 m,sealed,sealed,2026-03-04
                O-1,2,BRAID-12,2,64.3 m,sealed,sealed,2026-03-05
                """);
        String told = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(told.contains("BRAID-12 B220 1 220.0"), told);
    }

    /** What is booked goes before what only may be wanted, where the budget pays for one of them. */
    @Test
    void ropeThatIsBooked_goesBeforeRopeThatIsDue_inASmallBudget() throws IOException {
        at.write(
                "history.csv",
                """
                order,line,placed,rope,quantity,length,end a,end b
                H-1,1,2026-02-02,LAID-14,8,2 m,sealed,sealed
                """);
        at.reels("R1,BRAID-12,30 m", "R2,LAID-14,8 m");
        at.write(
                "orders.csv",
                "order,line,rope,quantity,length,end a,end b,due\nO-1,1,BRAID-12,2,20 m,sealed,sealed,2026-06-01\n");
        String told = ReorderShop.flat(at.run(0, "reorder", "SHOP", "--budget", "220"));
        assertTrue(told.indexOf("BRAID-12 B 1") < told.indexOf("Due, and beyond the budget"), told);
        assertTrue(told.indexOf("LAID-14 L 1") > told.indexOf("Due, and beyond the budget"), told);
    }

    /** A reel that lasts for years is cheapest by the metre; what is ordered later keeps to the most weeks as well. */
    @Test
    void notYet_keepsToTheMostWeeks() throws IOException {
        at.reels("R1,BRAID-12,2000 m", "R2,LAID-14,60 m");
        at.offers("B,Hawser Yard,BRAID-12,100 m,190 EUR,,,7,1", "HUGE,Hawser Yard,BRAID-12,2000 m,2000 EUR,,,7,1");
        String told = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(told.contains("1 of B "), told);
        assertFalse(told.contains("of HUGE"), told);
    }

    /** What would be ordered in a week goes along: two orders cost two freights. */
    @Test
    void soon_isPulledIn_whereItSavesFreight_orWhereTheOrderIsTooSmall() throws IOException {
        at.reels("R1,BRAID-12,30 m", "R2,LAID-14,22 m");
        String told = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(told.contains("LAID-14 L 1 100.0"), told);
        assertTrue(told.contains("but its way costs less with the others"), told);
        assertTrue(told.contains("Reels 340.00 EUR, freight 20.00 EUR"), told);
        at.write("suppliers.csv", "supplier,freight by order,minimum order\nHawser Yard,,300 EUR\n");
        String small = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(small.contains("but the order is then as large as its supplier asks"), small);
        at.reels("R1,BRAID-12,30 m", "R2,LAID-14,200 m");
        String below = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(below.contains("Hawser Yard takes no order below 300.00 EUR: this one comes to 190.00 EUR"), below);
    }

    @Test
    void budget_paysForWhatIsLeftShortest() throws IOException {
        at.reels("R1,BRAID-12,30 m", "R2,LAID-14,1 m");
        String all = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(all.contains("LAID-14 L 1") && all.contains("BRAID-12 B 1"), all);
        String some = ReorderShop.flat(at.run(0, "reorder", "SHOP", "--budget", "200"));
        assertTrue(some.contains("Due, and beyond the budget"), some);
        assertTrue(some.indexOf("LAID-14 L 1") < some.indexOf("Due, and beyond"), "it is used up first: " + some);
        String json = at.run(0, "reorder", "SHOP", "--budget", "200", "--json").out();
        assertTrue(json.contains("\"beyondBudget\""), json);
        at.run(2, "reorder", "SHOP", "--budget", "much");
    }

    /** Four reels of B cost least by the metre; a budget that pays for one of each rope buys one of each. */
    @Test
    void smallBudget_paysForTheLeastOfEachRope_beforeOneRopeGetsNothing() throws IOException {
        at.reels("R1,BRAID-12,30 m", "R2,LAID-14,1 m");
        at.offers(
                "B,Hawser Yard,BRAID-12,100 m,190 EUR,4: 150 EUR,2 %,7,1", "L,Hawser Yard,LAID-14,100 m,150 EUR,,,7,1");
        String all = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertTrue(all.contains("LAID-14 L 1") && all.contains("BRAID-12 B 4"), all);
        String some = ReorderShop.flat(at.run(0, "reorder", "SHOP", "--budget", "360"));
        assertTrue(some.contains("LAID-14 L 1") && some.contains("BRAID-12 B 1"), some);
        assertTrue(
                some.contains("The least that is paid for it now, since its usual order is above the budget."), some);
        assertFalse(some.contains("beyond the budget"), some);
    }

    /** Rope cut in lumps: what the shop asks of its service is what is asked here, unless something else is typed. */
    @Test
    void service_isThatOfTheShop() throws IOException {
        StringBuilder history = new StringBuilder("order,line,placed,rope,quantity,length,end a,end b\n");
        for (int week = 1; week <= 40; week++) {
            history.append("H-" + week + ",1," + ReorderShop.DAY.minusWeeks(week) + ",BRAID-12,"
                    + (week % 7 == 0 ? 9 : 1) + ",9.8 m,sealed,sealed\n");
        }
        at.write("history.csv", history.toString());
        String settings = Files.readString(at.shop.resolve("shop.json"));
        at.write("shop.json", settings.replaceFirst("\\{", "{\"service\": \"80 %\", "));
        String low = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertEquals(low, ReorderShop.flat(at.run(0, "reorder", "SHOP", "--service", "80")));
        at.write("shop.json", settings.replaceFirst("\\{", "{\"service\": \"99 %\", "));
        String high = ReorderShop.flat(at.run(0, "reorder", "SHOP"));
        assertEquals(high, ReorderShop.flat(at.run(0, "reorder", "SHOP", "--service", "99")));
        assertFalse(high.equals(low), high);
    }

    @Test
    void offerThatComesInTime_goesBeforeACheaperOneThatDoesNot() throws IOException {
        at.offers("CHEAP,Far Works,BRAID-12,100 m,100 EUR,,,70,1", "QUICK,Hawser Yard,BRAID-12,100 m,190 EUR,,,7,1");
        assertTrue(ReorderShop.flat(at.run(0, "reorder", "SHOP")).contains("BRAID-12 QUICK"));
        at.reels("R1,BRAID-12,30 m", "R3,BRAID-12,200 m", "R2,LAID-14,60 m");
        assertTrue(ReorderShop.flat(at.run(0, "reorder", "SHOP")).contains("BRAID-12 CHEAP"));
    }

    /** What nobody can order is named, and what the proposal rests on: the budget of the shop, though more is typed. */
    @Test
    void page_saysWhatCannotBeOrdered_andWhatItRestsOn() throws IOException {
        at.write(
                "offers.csv",
                """
                offer,supplier,rope,length,price,lead days,supply,valid until
                B,Hawser Yard,BRAID-12,100 m,190 EUR,7,,
                OLD,Hawser Yard,BRAID-12,100 m,90 EUR,7,,2026-02-01
                GONE,Hawser Yard,LAID-14,100 m,150 EUR,7,0,
                """);
        String settings = Files.readString(at.shop.resolve("shop.json"));
        at.write(
                "shop.json",
                settings.replaceFirst(
                        "\\{", "{\"service\": \"96 %\", \"budget\": \"500.00 EUR\", \"mostWeeks\": 40, "));
        String told = ReorderShop.flat(at.run(0, "reorder", "SHOP", "--budget", "900"));
        assertTrue(told.contains("BRAID-12: OLD of Hawser Yard is left out: valid until 2026-02-01."), told);
        assertTrue(told.contains("LAID-14: GONE of Hawser Yard is left out: nothing is left of it."), told);
        assertTrue(
                told.contains(
                        "Reels ordered on 2026-03-02, so that 96 % of the rope is there in time; a budget of 500.00"
                                + " EUR, freight included; rope for 40 weeks at the most where an offer allows it."),
                told);
        assertTrue(told.contains("The budget of the shop holds: it is smaller than the 900.00 EUR of --budget."), told);
        assertTrue(told.contains("% interest a year, and each coil"), told);
        assertFalse(ReorderShop.flat(at.run(0, "reorder", "SHOP", "--budget", "400"))
                .contains("of the shop holds"));
        String json = at.run(0, "reorder", "SHOP", "--json").out();
        assertTrue(json.contains("\"leftOut\"") && json.contains("\"budget\": \"500.00 EUR\""), json);
    }
}
