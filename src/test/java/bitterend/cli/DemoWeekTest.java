package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The week of the large demo loft: a delivery on Wednesday that work of Friday rides on, a shortage on Thursday. */
final class DemoWeekTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void week_hasADeliveryAndAShortage() throws IOException {
        String shop = DemoShop.copy("gannet-loft", folder).toString();
        String screen = flat(Run.of("plan", shop, "--time", "2s").out());
        assertTrue(
                screen.contains("Rides on rope on order: G-2112 on P-88, expected 2026-03-04, 2 working days before"),
                screen);
        assertTrue(screen.contains("Not planned: G-2104/2.1, G-2104/2.2, each 64.290 m of ES32."), screen);
        String week = Run.of("show", shop, "week").out();
        assertTrue(
                Pattern.compile("Thu 2026-03-05 .* 2\n").matcher(week).find(),
                "two pieces of Thursday on no reel: " + week);
        assertTrue(
                Pattern.compile("P-88:1 +DN20 +Wed 2026-03-04 +Fri 2026-03-06 +4")
                        .matcher(week)
                        .find(),
                week);
        assertTrue(week.contains("is too full by"), "bench hours: " + week);
    }

    private static String flat(String page) {
        return page.replaceAll("\\s+", " ");
    }
}
