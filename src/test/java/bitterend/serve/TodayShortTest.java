package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the screen of today says before the plan: which rope is short in the days ahead. */
final class TodayShortTest {
    @TempDir
    private Path folder = Path.of("");

    private static Seen whole(Served loft) throws InterruptedException {
        for (int i = 0; i < 200; i++) {
            Seen seen = loft.ada().get("/short");
            if (!seen.text().contains("being worked out")) {
                return seen;
            }
            Thread.sleep(100);
        }
        throw new AssertionError("no forecast");
    }

    @Test
    void ropeThatIsShort_isToldByDayWithWhatWouldHelp() throws Exception {
        try (Served loft = Served.withLedger("eider-shed", folder)) {
            assertTrue(loft.ada().get("/").page().contains("hx-get=\"/short\""), "the page asks for it by itself");
            assertTrue(
                    whole(loft).text().contains("No rope is short"), whole(loft).text());
            int events = loft.events();
            long plans = plans(loft);
            Files.writeString(
                    loft.file("orders.csv"),
                    Files.readString(loft.file("orders.csv")).replace("BRAID-12,28 m", "BRAID-12,250 m"));
            Seen lacking = whole(loft);
            assertTrue(lacking.text().contains("Short: BRAID-12 from"), lacking.text());
            assertEquals(events, loft.events(), "a question writes nothing");
            assertEquals(plans, plans(loft));
        }
    }

    private static long plans(Served loft) throws IOException {
        Path plans = loft.file("plans");
        if (!Files.isDirectory(plans)) {
            return 0;
        }
        try (var files = Files.list(plans)) {
            return files.count();
        }
    }
}
