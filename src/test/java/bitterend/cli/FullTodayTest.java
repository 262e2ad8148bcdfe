package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A day whose hours are full cuts nothing ahead that may as well be cut on its own day: a fetch takes 4 min, a cut 3. */
final class FullTodayTest {
    @TempDir
    private Path folder = Path.of("");

    /** One reel today with all 25 pieces: 79 min, of which seven pieces may wait. */
    @Test
    void fullDay_leavesWhatIsDueOnFridayToAnotherReel() throws IOException {
        String shop = shop("R1,DB12,60 m\nR2,DB12,60 m\n", "\"monday\": \"1 h\", \"friday\": \"7 h\"");
        String page = plan(shop, 0);
        assertFalse(page.contains("too full"), page);
        assertTrue(page.contains("all 25 pieces off 2 reels"), page);
        assertTrue(Pattern.compile("today R[12] DB12 18 ").matcher(page).find(), page);
        assertTrue(Pattern.compile("2026-03-06 R[12] DB12 7 ").matcher(page).find(), page);
        assertTrue(Files.readString(Path.of(shop, "plans", "1.json")).contains("\"bounds\""));
        assertEquals(0, Run.of("show", shop).code(), "the gate lets it through");
        String again = plan(shop, 0);
        assertTrue(again.contains("As plan 1 promised"), again);
    }

    @Test
    void dayThatIsNotFull_cutsAheadAsEver() throws IOException {
        String page = plan(shop("R1,DB12,60 m\nR2,DB12,60 m\n", "\"monday\": \"1.5 h\", \"friday\": \"7 h\""), 0);
        assertTrue(page.contains("all 25 pieces off 1 reel"), page);
        assertFalse(page.contains("too full"), page);
    }

    /** There is no other rope for Friday: what is full is told, and no piece is left undone for it. */
    @Test
    void fullDay_leavesNothingUndone() throws IOException {
        String page = plan(shop("R1,DB12,60 m\n", "\"monday\": \"1 h\", \"friday\": \"7 h\""), 0);
        assertTrue(page.contains("all 25 pieces off 1 reel"), page);
        assertTrue(page.contains("too full"), page);
    }

    private static String plan(String shop, int code) {
        Run run = Run.of("plan", shop, "--effort", "reproducible");
        assertEquals(code, run.code(), run.err() + run.out());
        return run.out().replaceAll("\\s+", " ");
    }

    private String shop(String reels, String hours) throws IOException {
        Path shop = TestShop.in(folder).path();
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,customer,rope,length,end a,end b,quantity,due,priority
                MON,1,Harbour Board,DB12,10 m,plain,plain,1,2026-03-02,5
                FRI,1,Port Pilots,DB12,1.5 m,plain,plain,24,2026-03-06,5
                """);
        Files.writeString(shop.resolve("reels.csv"), "reel,rope,length\n" + reels);
        Files.writeString(
                shop.resolve("shop.json"),
                """
                {"format": "bitterend/shop/1", "name": "Northgate Loft", "units": "metric", "currency": "EUR",
                 "day": "2026-03-02", "labour": "48 EUR/h", "horizon": "5 working days", "brake": 0,
                 "benchHours": {HOURS}}
                """
                        .replace("HOURS", hours));
        return shop.toString();
    }
}
