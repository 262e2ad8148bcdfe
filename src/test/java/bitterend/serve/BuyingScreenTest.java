package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which reels to buy, worked out behind the page while people look on. */
final class BuyingScreenTest {
    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    @BeforeEach
    void serve() throws IOException {
        loft = Served.copy("eider-shed", folder);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private Seen over() throws InterruptedException {
        for (int i = 0; i < 300; i++) {
            Seen seen = loft.ada().get("/buying/run");
            if (seen.page().contains("data-done")) {
                return seen;
            }
            Thread.sleep(100);
        }
        throw new AssertionError("not over: " + loft.ada().get("/buying/run").text());
    }

    private static String path(Seen page, String beginning) {
        Matcher way = Pattern.compile("href=\"(" + beginning + "[^\"]*)\"").matcher(page.page());
        assertTrue(way.find(), page.page());
        return way.group(1).replace("&amp;", "&");
    }

    /** The page is that of the command, with the forecast of rope; it is kept, and printed. */
    @Test
    void advice_isWorkedOutKeptAndPrinted() throws Exception {
        assertTrue(loft.ada().get("/buying").text().contains("For the orders in hand"));
        loft.ada().post("/buying", Map.of("what", "advice", "seconds", "1", "budget", "700 EUR", "most", "30"));
        Seen page = over();
        assertTrue(page.text().contains("rope for 30 weeks at the most"), page.text());
        assertTrue(page.text().contains("reels to buy for the orders in hand, 2026-03-02"), page.text());
        assertTrue(page.text().contains("Rope of the days ahead"), page.text());
        Seen again = loft.ada().get("/buying");
        assertTrue(again.text().contains("Worked out before For the orders in hand, 20"), again.text());
        Seen kept = loft.ada().get(path(again, "/buying/kept"));
        assertTrue(kept.text().contains("Rope of the days ahead"), kept.text());
        Seen print = loft.ada().get(path(kept, "/buying/kept/print"));
        assertTrue(print.page().contains("<style>") && print.text().contains("Rope of the days ahead"));
        Seen pdf = loft.ada().get(path(kept, "/buying/kept/pdf"));
        assertTrue(pdf.page().startsWith("%PDF"));
        assertEquals(404, loft.ada().get("/buying/kept?id=nosuch").status());
        assertFalse(Files.exists(loft.file("plans")), "a question writes nothing");
    }

    @Test
    void study_isStartedWithItsOptions_andStopped() throws Exception {
        loft.ada().post("/buying", Map.of("what", "study", "rope", "BRAID-12", "scenarios", "100000", "weeks", "4"));
        Seen running = loft.ada().get("/buying/run");
        assertTrue(running.text().contains("Looking for the reels to buy."), running.text());
        assertTrue(running.text().contains("Stop, and show what there is"), running.text());
        Seen second = loft.ada().post("/buying", Map.of("what", "advice", "seconds", "1"));
        assertEquals(running.field("run"), second.field("run"), "one at a time: it shows what is worked out");
        for (int i = 0; i < 100 && !loft.ada().get("/buying/run").text().contains("of 100000"); i++) {
            Thread.sleep(100);
        }
        assertTrue(loft.ada().get("/buying/run").text().contains("of 100000 scenarios"));
        loft.ada().post("/buying/run/stop", Map.of("run", "another"));
        assertFalse(
                loft.ada().get("/buying/run").page().contains("data-done"), "another run is stopped by its own page");
        Thread.sleep(500);
        loft.ada().post("/buying/run/stop", Map.of("run", running.field("run")));
        Seen page = over();
        assertTrue(page.text().contains("Which reels to keep on the rack"), page.text());
        assertTrue(page.text().contains("By what is there, booked and on order"), page.text());
        assertFalse(page.text().contains("Order soon"), "what is due is worked out in one place");
    }

    @Test
    void whatCannotBeMeant_isSaidAtItsField_andNothingRuns() {
        Seen page = loft.ada().post("/buying", Map.of("what", "study", "scenarios", "3", "weeks", "-1"));
        assertTrue(page.text().contains("found \"3\", expected a whole number from 4 to 100000"), page.text());
        assertTrue(page.text().contains("found \"-1\", expected a number of weeks from 1 to 520"), page.text());
        Seen rope =
                loft.ada().post("/buying", Map.of("what", "study", "scenarios", "4", "weeks", "4", "rope", "<b>x</b>"));
        assertTrue(rope.text().contains("no rope to study has both an offer"), rope.text());
        assertFalse(rope.page().contains("<b>x"), "harmless");
        Seen budget =
                loft.ada().post("/buying", Map.of("what", "advice", "seconds", "1", "budget", "much", "most", "0"));
        assertTrue(budget.text().contains("found \"much\""), budget.text());
        assertTrue(budget.text().contains("found \"0\", expected a number of weeks from 1 to 520"), budget.text());
        Seen time = loft.ada().post("/buying", Map.of("what", "advice", "seconds", "1e9"));
        assertTrue(time.text().contains("found \"1e9\""), time.text());
        assertTrue(loft.ada().get("/buying/run").text().contains("For the orders in hand"), "nothing runs");
    }

    @Test
    void nothingOffered_isSaid() throws IOException {
        Files.delete(loft.file("offers.csv"));
        assertTrue(loft.ada().get("/buying").text().contains("offers.csv names no offer"));
        assertTrue(loft.ada()
                .post("/buying", Map.of("what", "advice", "seconds", "1"))
                .text()
                .contains("Nothing is worked out: there is nothing to choose from"));
    }
}
