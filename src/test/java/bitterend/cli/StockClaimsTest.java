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

/** Reels that come short, late and in parts, and what is claimed of their suppliers. */
final class StockClaimsTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void open() throws IOException {
        shop = DemoShop.copy("eider-shed", folder);
        Files.writeString(
                shop.resolve("offers.csv"),
                """
                offer,supplier,rope,length,price,tolerance
                B,Hawser Yard,BRAID-12,200 m,400 EUR,1 %
                L,Tarred Hemp,LAID-14,220 m,300 EUR,
                """);
        onOrder("B-9,BRAID-12,200 m,5,2026-03-04,Hawser Yard,380 EUR", "L-4,LAID-14,220 m,1,2026-03-05,Tarred Hemp,");
        run(0, "open");
    }

    private void onOrder(String... rows) throws IOException {
        Files.writeString(
                shop.resolve("on-order.csv"),
                "number,rope,length,quantity,expected,supplier,price\n" + String.join("\n", rows) + "\n");
    }

    private Run run(int code, String command, String... more) {
        List<String> args = new ArrayList<>(List.of("stock", command, shop.toString()));
        args.addAll(List.of(more));
        Run run = Run.of(args.toArray(String[]::new));
        assertEquals(code, run.code(), run.out() + run.err());
        return run;
    }

    private Run receive(String reel, String rope, String length, String order, String day) {
        return run(0, "receive", reel, rope, length, "--on-order", order, "--received", day);
    }

    private static String flat(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void delivery_inParts_leavesTheRemainderOnOrder_andTellsWhatIsShortAndLate() throws IOException {
        Run within = receive("E11", "BRAID-12", "198.5 m", "B-9", "2026-03-04");
        assertTrue(flat(within).contains("1.500 m shorter than was ordered, within the 2.000 m"), within.out());
        assertTrue(flat(within).contains("4 more of order B-9 are still to come"), within.out());
        Run beyond = receive("E12", "BRAID-12", "195 m", "B-9", "2026-03-09");
        assertTrue(
                flat(beyond).contains("5.000 m shorter than was ordered, 3.000 m more than the 2.000 m"), beyond.out());
        assertTrue(flat(beyond).contains("expected on 2026-03-04: this comes 5 days late"), beyond.out());
        String list = Files.writeString(
                        folder.resolve("came.csv"),
                        "reel,rope,length,received\nE13,BRAID-12,200 m,2026-03-09\nE14,BRAID-12,201 m,2026-03-09\n")
                .toString();
        Run compared = run(0, "receive", "--file", list, "--on-order", "B-9");
        assertTrue(flat(compared).contains("B-9: 1 reel of BRAID-12, 200 m."), compared.out());
        assertTrue(flat(compared).contains("this comes 5 days late"), compared.out());
        run(0, "receive", "--file", list, "--on-order", "B-9", "--accept");
        Run last = receive("E15", "BRAID-12", "200 m", "B-9", "2026-03-10");
        assertFalse(last.out().contains("still to come"), last.out());
        assertTrue(run(3, "receive", "E16", "BRAID-12", "200 m", "--on-order", "B-9")
                .err()
                .contains("nothing is to come of an order of reels B-9"));
        run(0, "verify");
    }

    /** It comes on the day of the shop, as everything at its rack is done, whatever the clock says; and that day is told. */
    @Test
    void reelWithoutAStatedDay_cameOnTheDayOfTheShop() throws IOException {
        Run one = run(0, "receive", "E11", "BRAID-12", "200 m", "--on-order", "B-9");
        assertTrue(flat(one).contains("received on 2026-03-02"), one.out());
        assertTrue(flat(run(0, "claims")).contains("Hawser Yard 1 0 0.000 0.000 0.00 EUR 0"), "not late");
        String list = Files.writeString(folder.resolve("came.csv"), "reel,rope,length\nE12,BRAID-12,200 m\n")
                .toString();
        Run some = run(0, "receive", "--file", list, "--on-order", "B-9", "--accept");
        assertTrue(flat(some).contains("received on 2026-03-02"), some.out());
    }

    @Test
    void claim_isWhatWasPaidForBeyondTheTolerance_evenWhenTheOrderIsOutOfTheFile() throws IOException {
        receive("E11", "BRAID-12", "198.5 m", "B-9", "2026-03-04");
        receive("E12", "BRAID-12", "195 m", "B-9", "2026-03-09");
        receive("E13", "LAID-14", "219 m", "L-4", "2026-03-05");
        onOrder("X-1,LAID-14,220 m,1,2026-04-05,Tarred Hemp,");
        String claims = flat(run(0, "claims"));
        // 3 m of 200 m paid with 380 EUR: 5.70 EUR; 1 m of 220 m at the 300 EUR of its offer: 1.36 EUR
        assertTrue(claims.contains("Hawser Yard 2 2 6.500 3.000 5.70 EUR 1"), claims);
        assertTrue(claims.contains("Tarred Hemp 1 1 1.000 1.000 1.36 EUR 0"), claims);
        assertTrue(claims.contains("B-9 E12 BRAID-12 2026-03-09 200.000 195.000 5.000 3.000 5.70 "), claims);
        assertTrue(claims.contains("B-9 BRAID-12 2026-03-04 2026-03-09 5 1"), claims);
        assertFalse(flat(run(0, "claims", "--supplier", "Tarred Hemp")).contains("B-9"));
        String typo = run(2, "claims", "--supplier", "Tarred Hamp").err().replaceAll("\\s+", " ");
        assertTrue(typo.contains("found \"Tarred Hamp\", expected one of Hawser Yard, Tarred Hemp"), typo);
        String march = flat(run(0, "claims", "--since", "2026-03-06", "--until", "2026-03-31"));
        assertTrue(march.contains("Hawser Yard 1 1 5.000 3.000"), march);
        assertFalse(march.contains("L-4"), march);
        String json = run(0, "claims", "--json").out();
        assertTrue(json.contains("\"claim\": \"7.06 EUR\""), json);
        assertTrue(json.contains("\"usuallyLateBy\": \"lateness of the shop\""), json);
        String feet = flat(run(0, "claims", "--units", "imperial"));
        assertTrue(feet.contains("9' 10 1/8\""), feet);
        assertTrue(
                feet.contains("B-9 E12 BRAID-12 2026-03-09 656' 2\" 639' 9\" 16' 5\" 9' 10\" 5.70 "), "a row: " + feet);
    }

    /** 3 m of the 200 m that were ordered, at the 300 EUR that were paid and not at the 380 EUR of the order: 4.50 EUR. */
    @Test
    void claim_isByWhatWasPaid_whereThatIsBooked() {
        run(0, "receive", "E11", "BRAID-12", "195 m", "--on-order", "B-9", "--paid", "300 EUR");
        run(0, "receive", "E12", "BRAID-12", "195 m", "--on-order", "B-9");
        String claims = flat(run(0, "claims"));
        assertTrue(claims.contains("200.000 195.000 5.000 3.000 4.50 "), claims);
        assertTrue(claims.contains("200.000 195.000 5.000 3.000 5.70 "), claims);
        String json = flat(run(0, "claims", "--json"));
        assertTrue(json.contains("\"price\": \"380.00 EUR\", \"paid\": \"300.00 EUR\""), json);
    }

    @Test
    void reelThatIsCountedBeforeItIsCut_isClaimedByTheCount_andTakenBackItIsNot() {
        receive("E11", "BRAID-12", "200 m", "B-9", "2026-03-04");
        run(0, "move", "E11", "shelf");
        run(0, "count", "E11", "196 m");
        assertTrue(flat(run(0, "claims")).contains("E11 BRAID-12 2026-03-04 200.000 196.000 4.000 2.000 3.80 "));
        run(0, "undo", "4");
        assertTrue(flat(run(0, "claims")).contains("Hawser Yard 1 0 0.000 0.000 0.00 EUR 0"));
        run(0, "cut", "E11", "10 m", "--for", "a sloop");
        run(0, "count", "E11", "180 m", "--note", "tape");
        assertTrue(flat(run(0, "claims")).contains("Hawser Yard 1 0 0.000"), "what was cut off is nobody's claim");
        receive("E12", "BRAID-12", "150 m", "B-9", "2026-03-04");
        String twelve = run(0, "history", "E12", "--json").out().replaceAll("(?s).*\"event\": (\\d+).*", "$1");
        assertTrue(flat(run(0, "claims")).contains("E12"));
        run(0, "undo", twelve);
        assertFalse(flat(run(0, "claims")).contains("E12"));
    }

    /** Five deliveries tell how late a supplier usually is: four of them came no later. */
    @Test
    void usualLateness_comesFromDeliveries_onceThereAreEnough() throws IOException {
        String[] came = {"2026-03-05", "2026-03-06", "2026-03-09", "2026-03-09", "2026-03-20"};
        onOrder(
                "B-1,BRAID-12,200 m,1,2026-03-04,Hawser Yard,",
                "B-2,BRAID-12,200 m,1,2026-03-04,Hawser Yard,",
                "B-3,BRAID-12,200 m,1,2026-03-04,Hawser Yard,",
                "B-4,BRAID-12,200 m,2,2026-03-04,Hawser Yard,",
                "B-5,BRAID-12,200 m,1,2026-03-04,Hawser Yard,");
        for (int i = 0; i < 4; i++) {
            receive("E2" + i, "BRAID-12", "200 m", "B-" + (i + 1), came[i]);
        }
        receive("E30", "BRAID-12", "200 m", "B-4", came[3]);
        assertTrue(flat(run(0, "claims")).contains("2 working days, as for all"), "two reels of one day are one");
        receive("E24", "BRAID-12", "200 m", "B-5", came[4]);
        assertTrue(flat(run(0, "claims")).contains("3 working days, by 5 deliveries"));
    }
}
