package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

    /** Also on a day with room; without hours of the bench nothing is said of them. */
    @Test
    void minutesOfToday_areSaidWhereTheBenchHasHours() throws Exception {
        try (Served loft = Served.withLedger("eider-shed", folder)) {
            loft.plans();
            assertFalse(
                    loft.ada().get("/").text().contains("Today at the bench"),
                    loft.ada().get("/").text());
            Path settings = loft.file("shop.json");
            Files.writeString(
                    settings,
                    Files.readString(settings).replaceFirst("\\{", "{ \"benchHours\": {\"monday\": \"14 h\"},"));
            loft.plans();
            String today = loft.ada().get("/").text();
            assertTrue(
                    today.matches(".*Today at the bench: fetching [0-9]+ min, cutting [0-9]+ min, splicing .*, of 14 h"
                            + " there[.].*"),
                    today);
        }
    }

    /** Once on the page: what is for today in the list, the rest behind it with its day. */
    @Test
    void whatToSpliceFirst_isSaidOnce_andOfOtherDaysWithTheDay() throws Exception {
        try (Served loft = Served.withLedger("eider-shed", folder)) {
            loft.plans();
            String today = loft.ada().get("/").page();
            assertEquals(2, today.split("Splice and measure first", -1).length - 1, "a heading and its name");
            assertTrue(
                    today.matches(
                            "(?s).*<h2>Splice and measure first</h2>\\s*<details><summary>2 not for today</summary>"
                                    + "<ul><li>Tue 2026-03-03, E-31/1.1: double-braid-eye on BRAID-12; .*"),
                    today);
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
