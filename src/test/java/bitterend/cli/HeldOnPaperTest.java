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

/** Rope that is held is said where the reel is fetched, and on the tag that goes back on it. */
final class HeldOnPaperTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void aReelOfWhichMuchIsHeld() throws IOException {
        shop = TestShop.in(folder).path();
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,customer,rope,length,end a,end b,quantity,due,priority
                MON,1,Harbour Board,DB12,30 m,plain,plain,1,2026-03-02,5
                """);
        Files.writeString(
                shop.resolve("reels.csv"),
                """
                reel,rope,length,held
                R1,DB12,90 m,35 m for order MON until 2026-03-06; 20 m for customer Port Pilots until 2026-03-06
                """);
        assertEquals(0, Run.of("plan", "" + shop, "--effort", "reproducible").code());
    }

    @Test
    void fetchList_saysWhatIsHeldAndForWhom() throws IOException {
        assertEquals(0, Run.of("sheet", "" + shop).code());
        String sheet = PageText.of(shop.resolve("sheet.html"));
        assertTrue(
                sheet.contains("35.000 m held for order MON until 2026-03-06, 20.000 m held for customer Port Pilots"),
                sheet);
    }

    /** What the plan cuts for those it is held for is held no longer. */
    @Test
    void tagOfTheReel_saysWhatIsStillHeld() throws IOException {
        assertEquals(0, Run.of("sheet", "" + shop, "--tags").code());
        String tags = PageText.of(shop.resolve("tags.html"));
        assertTrue(tags.contains("4.990 m held for order MON until 2026-03-06"), tags);
        assertTrue(tags.contains("20.000 m held for customer Port Pilots until 2026-03-06"), tags);
        assertFalse(tags.contains("35.000 m held"), tags);
    }
}
