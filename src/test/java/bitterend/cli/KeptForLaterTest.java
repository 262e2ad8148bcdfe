package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Urgent work of a later day keeps the reel that it needs, without being reserved, and what that costs is told. */
final class KeptForLaterTest {
    private static final String ORDERS =
            """
            order,line,customer,rope,length,end a,end b,quantity,due,priority
            MON,1,Harbour Board,DB12,30 m,plain,plain,1,2026-03-02,5
            THU,1,Port Pilots,DB12,50 m,plain,plain,1,2026-03-05,1
            """;

    @TempDir
    private Path folder = Path.of("");

    @Test
    void thursdaysUrgentPiece_keepsItsReelOnMonday_thoughTodaysWorkWaitsForIt() throws IOException {
        Path shop = shop("reel,rope,length\nR1,DB12,60 m\n");
        Run plan = Run.of("plan", "" + shop, "--time", "300ms");
        assertEquals(4, plan.code(), plan.err());
        assertTrue(
                flat(plan.out())
                        .contains(
                                "Not broken today, later work needs it: R1 for THU/1.1 on Thu 2026-03-05, so MON/1.1 waits."),
                plan.out());
        String why = flat(Run.of("show", "" + shop, "reasons").out());
        assertTrue(why.contains("MON/1.1") && why.contains("of that rope went to THU/1.1"), why);
        String told = flat(Run.of("plan", "" + shop, "--explain", "R1").out());
        assertTrue(
                told.contains("It is kept for THU/1.1 on 2026-03-05; without that MON/1.1 would be planned, too."),
                told);
        JsonNode json = new ObjectMapper()
                .readTree(Run.of("plan", "" + shop, "--explain", "R1", "--json").out())
                .get("keptFor");
        assertEquals("THU/1.1", json.get("pieces").get(0).asText());
        assertEquals("MON/1.1", json.get("undone").get(0).asText());
    }

    @Test
    void whatItCosts_isSaidInMoney_whereTodaysWorkComesOffAnotherReel() throws IOException {
        Path shop = shop("reel,rope,length,full\nR1,DB12,60 m,no\nR2,DB12,32 m,yes\n");
        assertEquals(0, Run.of("plan", "" + shop, "--time", "300ms").code());
        String told = flat(Run.of("plan", "" + shop, "--explain", "R1").out());
        assertTrue(
                told.matches(
                        ".*kept for THU/1.1 on 2026-03-05; without that the other work in this rope would cost"
                                + " EUR [0-9.]+ less.*|.*without that the other work in this rope would cost [0-9.]+ EUR less.*"),
                told);
        String screen = flat(Run.of("show", "" + shop).out());
        assertTrue(screen.contains("Not broken today, later work needs it: R1 for THU/1.1 on Thu 2026-03-05."), screen);
        String other = Run.of("plan", "" + shop, "--explain", "R2").out();
        assertFalse(other.contains("kept for"), "R2 is cut today: " + other);
    }

    /** Both fit on R1: nothing is kept from today's work. */
    @Test
    void reelWithRoomForBoth_isNotSaidToBeKept() throws IOException {
        Path shop = shop("reel,rope,length\nR1,DB12,90 m\n");
        Run plan = Run.of("plan", "" + shop, "--time", "300ms");
        assertFalse(plan.out().contains("Not broken today"), plan.out());
    }

    /** Work of Tuesday is none of today's: nobody would break the reel today. */
    @Test
    void reelThatNothingOfTodayWouldBreak_isNotNamed() throws IOException {
        Path shop = shop("reel,rope,length,full\nR1,DB12,60 m,no\nR2,DB12,32 m,yes\n");
        Files.writeString(shop.resolve("orders.csv"), ORDERS.replace("2026-03-02", "2026-03-03"));
        assertEquals(0, Run.of("plan", "" + shop, "--time", "300ms").code());
        String screen = flat(Run.of("show", "" + shop).out());
        assertFalse(screen.contains("Not broken today"), screen);
    }

    private Path shop(String reels) throws IOException {
        Path shop = TestShop.in(folder).path();
        Files.writeString(shop.resolve("orders.csv"), ORDERS);
        Files.writeString(shop.resolve("reels.csv"), reels);
        Files.writeString(
                shop.resolve("shop.json"),
                """
                {"format": "bitterend/shop/1", "name": "Northgate Loft", "units": "metric", "currency": "EUR",
                 "day": "2026-03-02", "labour": "48 EUR/h", "horizon": "5 working days"}
                """);
        return shop;
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }
}
