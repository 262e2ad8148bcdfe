package bitterend.serve;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** A short day on which the plug is pulled behind each tap: what was answered is in the files, once, and the day goes on. */
@EnabledIfSystemProperty(named = "browser", matches = ".+")
final class KilledDayIT {
    private static final String REEL = "/bench/reel?id=E7";

    private final ServedLoft loft;

    KilledDayIT(@TempDir Path folder) throws IOException {
        loft = new ServedLoft("eider-shed", folder).withLedger();
    }

    private int events() {
        return loft.access()
                .reading(ledger -> ledger.read(stock -> stock.events().size()));
    }

    private String book() throws IOException {
        return Files.readString(loft.folder().resolve("orders.csv"));
    }

    /** What a tap books is there when the program is started anew, and nothing is booked by the start. */
    private void books(int events, Tablet tablet, Runnable tap) throws IOException, InterruptedException {
        int before = events();
        tap.run();
        assertEquals(before + events, events(), tablet::text);
        loft.killAndStart();
        assertEquals(before + events, events());
    }

    @Test
    void day_goesOnBehindEachRestart() throws IOException, InterruptedException {
        try (loft;
                Browsers browsers = new Browsers();
                Tablet ada = browsers.tablet(loft.start().url(), 1024, 1280)
                        .open("/")
                        .isHeldBy("Ada")) {
            pastes(ada);
            plans(ada);
            books(1, ada, () -> ada.open(REEL).book("Cut"));
            books(1, ada, () -> cameOut(ada));
            books(1, ada, () -> takesBack(ada));
            books(1, ada, () -> ada.open(REEL).book("Cut"));
            books(1, ada, () -> splices(ada));
            counts(ada);
            assertTrue(book().contains("E-70"));
            ada.open("/orders").reads("E-70");
            ada.isWell();
        }
    }

    private void pastes(Tablet ada) throws IOException, InterruptedException {
        ada.open("/book")
                .page()
                .locator("textarea[name=paste]")
                .fill(
                        "Order\tLine\tRope\tLength\tQuantity\tDue\tEnd a\tEnd b\nE-70\t1\tLAID-14\t3 m\t1\t2026-03-02\twhipped\twhipped\n");
        ada.tap("Look at it");
        ada.reads("cut length");
        loft.killAndStart();
        assertFalse(book().contains("E-70"), "looked at only");
        ada.tap("Save");
        assertThat(ada.page().locator("textarea[name=paste]")).hasValue("");
        loft.killAndStart();
        assertEquals(1, book().split("E-70", -1).length - 1);
    }

    /** A plan that nobody has put in force ends with the program, and the page says so. */
    private void plans(Tablet ada) throws IOException, InterruptedException {
        ada.open("/").tap("Plan the day");
        assertThat(ada.button("Put it in force")).isVisible();
        loft.killAndStart();
        ada.tap("Put it in force");
        ada.reads("Nothing was put in force.");
        ada.plans();
        loft.killAndStart();
        ada.open("/").reads("Cutting plan");
    }

    private static void cameOut(Tablet ada) {
        String piece =
                ada.open(REEL).page().locator(".nextcut:not([hidden]) .piece").innerText();
        ada.page().getByLabel("Length it came out at").fill(piece.substring(piece.indexOf(' ') + 1));
        ada.book("Came out at");
    }

    private static void takesBack(Tablet ada) {
        ada.open(REEL);
        ada.book(ada.page()
                .locator("button:has-text('Take back the last booking')")
                .innerText());
    }

    private static void splices(Tablet ada) {
        ada.open("/splicing");
        Locator first = ada.page().locator("li.waits").first();
        String finished = first.locator("p").nth(1).innerText();
        first.getByLabel("Came out at").fill(finished.substring(finished.lastIndexOf("finished ") + 9));
        first.locator("select[name=said]").selectOption("accepted");
        ada.book("Done");
    }

    private void counts(Tablet ada) throws IOException, InterruptedException {
        int before = events();
        ada.open("/count/reel?id=E8").page().locator("input[name=length]").fill("33 m");
        ada.page().waitForResponse(answer -> answer.request().method().equals("POST"), () -> ada.tap("Counted"));
        loft.killAndStart();
        ada.open("/count/result").reads("E8");
        assertEquals(before, events(), "nothing is booked before it is accepted");
        books(1, ada, () -> {
            ada.page()
                    .locator("form[action='/count/result'] input[name=sure]")
                    .all()
                    .forEach(Locator::check);
            ada.tap("Accept the count: book what differs, as one event");
            ada.reads("The count is booked");
        });
    }
}
