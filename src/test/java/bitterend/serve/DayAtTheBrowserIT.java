package bitterend.serve;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** A whole day of the large demo loft, in the office and at the bench at once. Runs with {@code mvn verify -Pbrowser}. */
@EnabledIfSystemProperty(named = "browser", matches = ".+")
final class DayAtTheBrowserIT {
    /** As a spreadsheet puts them on the clipboard. */
    private static final String ROWS =
            """
            Order\tLine\tRope\tLength\tQuantity\tDue\tEnd a\tEnd b
            G-2190\t1\tDB10\t7 m\t2\t2026-03-02\tsealed\tsealed
            G-2190\t2\tTS14\t6.5 m\t3\t2026-03-02\twhipped\twhipped
            G-2190\t3\tHM8\t4 m\t2\t2026-03-02\tsealed\tsealed
            """;

    private final Path folder;

    DayAtTheBrowserIT(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void day_isWorkedFromOfficeAndBench() throws IOException, InterruptedException {
        try (ServedLoft loft =
                        new ServedLoft("gannet-loft", folder).withLedger().start();
                Browsers browsers = new Browsers();
                Tablet office = browsers.tablet(loft.url(), 1280, 800);
                Tablet bench = browsers.tablet(loft.url(), 800, 1280)) {
            office.open("/").isHeldBy("Ada");
            bench.open("/bench").isHeldBy("Bo");
            pastes(office, loft);
            office.plans();
            bench.open("/bench");
            List<String> reels = reels(bench);
            assertTrue(reels.size() >= 3, reels.toString());
            cutsAll(bench, reels.get(0));
            String spoiled = endsShort(bench, reels.get(1));
            cutsAll(bench, reels.get(2));
            spoils(bench, reels.get(2));
            office.plans();
            bench.open("/bench");
            assertTrue(reels(bench).size() >= 1, bench.text());
            splices(office);
            counts(office, reels.get(0));
            closes(office, bench, reels.get(0));
            office.open("/orders").reads(spoiled.substring(0, spoiled.indexOf('/')));
            office.isWell();
            bench.isWell();
        }
    }

    /** Evening: nothing is left at the bench, the rack agrees with the books again, and the orders say how far they are. */
    private static void closes(Tablet office, Tablet bench, String counted) {
        bench.open("/bench");
        reels(bench).forEach(reel -> cutsAll(bench, reel));
        bench.open("/bench");
        assertEquals(List.of(), reels(bench), bench.text());
        office.open(counted.replace("/bench/", "/count/"))
                .page()
                .locator("input[name=length]")
                .fill("4.5 m");
        office.page().waitForResponse(answer -> answer.request().method().equals("POST"), () -> office.tap("Counted"));
        office.open("/count/result");
        office.page()
                .locator("form[action='/count/result'] input[name=sure]")
                .all()
                .forEach(Locator::check);
        office.tap("Accept the count: book what differs, as one event");
        office.reads("The count is booked");
        office.open("/orders").reads("cut");
        office.open("/").reads("Cutting plan 2");
    }

    private static void pastes(Tablet office, ServedLoft loft) throws IOException {
        office.open("/book");
        office.page().locator("textarea[name=paste]").fill(ROWS);
        office.tap("Look at it");
        office.reads("cut length");
        assertTrue(!Files.readString(loft.folder().resolve("orders.csv")).contains("G-2190"));
        office.tap("Save");
        assertThat(office.page().locator("textarea[name=paste]")).hasValue("");
        assertTrue(Files.readString(loft.folder().resolve("orders.csv")).contains("G-2190"));
    }

    /** The tiles that must be cut today and are not yet done, by where they lead. */
    private static List<String> reels(Tablet bench) {
        List<String> paths = new ArrayList<>();
        for (Locator tile : bench.page().locator("a.reeltile:not(.done)").all()) {
            paths.add(tile.getAttribute("href"));
        }
        return paths;
    }

    private static void cutsAll(Tablet bench, String reel) {
        bench.open(reel);
        while (bench.button("Cut").count() > 0) {
            bench.book("Cut");
        }
        bench.reads("All pieces of this reel are cut");
    }

    /** The rope ends behind the first piece; the piece that was to be cut next. */
    private static String endsShort(Tablet bench, String reel) {
        bench.open(reel);
        String piece = bench.page().locator(".nextcut:not([hidden]) .piece b").innerText();
        bench.book("The reel ends behind it");
        assertTrue(bench.shows("cut"), bench.text());
        return piece;
    }

    private static void spoils(Tablet bench, String reel) {
        bench.open(reel);
        bench.page().getByText("Something else happened").click();
        bench.book("Book it spoiled");
    }

    private static void splices(Tablet office) {
        office.open("/splicing");
        int waiting = office.page().locator("li.waits").count();
        assertTrue(waiting > 0, office.text());
        Locator first = office.page().locator("li.waits").first();
        String finished = first.locator("p").nth(1).innerText();
        first.getByLabel("Came out at").fill(finished.substring(finished.lastIndexOf("finished ") + 9));
        first.locator("select[name=said]").selectOption("accepted");
        office.book("Done");
        assertEquals(waiting - 1, office.page().locator("li.waits").count());
    }

    private static void counts(Tablet office, String reel) {
        office.open(reel.replace("/bench/", "/rack/"));
        Locator form = office.page().locator("form:has(input[name=what][value=count])");
        office.page()
                .locator("details:has(input[name=what][value=count]) summary")
                .first()
                .click();
        form.locator("input[name=length]").fill("5 m");
        form.locator("button").click();
        assertThat(office.page().locator("dl.known")).containsText("5 m");
    }
}
