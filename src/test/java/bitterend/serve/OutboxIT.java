package bitterend.serve;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.work.Booking;
import bitterend.work.rack.AskRack;
import bitterend.work.rack.RackDesk;
import bitterend.work.rack.RackWork;
import bitterend.work.rack.WorkReel;
import com.microsoft.playwright.Locator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is ticked at the bench while the network, the server or the reel is not as it should be: nothing is lost or counts twice. */
@EnabledIfSystemProperty(named = "browser", matches = ".+")
final class OutboxIT {
    private static final String REEL = "/bench/reel?id=E7";

    private final Browsers browsers = new Browsers();
    private final ServedLoft loft;

    OutboxIT(@TempDir Path folder) throws IOException {
        loft = new ServedLoft("eider-shed", folder);
        Files.writeString(
                loft.folder().resolve("orders.csv"),
                "E-60,1,,LAID-14,3.5 m,whipped,whipped,,2026-03-02,,,,\n",
                StandardOpenOption.APPEND);
        loft.withLedger();
    }

    @BeforeEach
    void serve() throws IOException {
        loft.start();
    }

    @AfterEach
    void end() throws InterruptedException {
        browsers.close();
        loft.close();
    }

    private Tablet bench(String who) {
        return browsers.tablet(loft.url(), 800, 1280).open("/").isHeldBy(who);
    }

    /** Who, what and which piece, oldest first, of what was booked off the reel. */
    private List<String> booked() {
        AskRack.Found.History history = (AskRack.Found.History) new AskRack(loft.access()).history("E7");
        return history.movements().stream()
                .skip(1)
                .map(movement -> movement.who() + " " + movement.entry().kind().word() + " "
                        + movement.entry().origin().piece())
                .toList();
    }

    /** Bo does something with the reel at the rack. */
    private void work(RackWork work) {
        Booking done = new WorkReel(new RackDesk(loft.access(), act -> act.by("Bo"), "wet")).book(work);
        assertTrue(done instanceof Booking.Booked, done.toString());
    }

    @Test
    void reel_isCutOnWhileNothingCanBeSent() {
        try (Tablet ada = bench("Ada")) {
            ada.plans();
            ada.open(REEL);
            ada.context().setOffline(true);
            ada.ticks();
            ada.ticks();
            assertEquals(2, ada.waiting());
            ada.reads("2 bookings wait to be sent.");
            ada.reads("cut, waits to be sent");
            ada.isNext("E-31/2.2");
            assertEquals(List.of(), booked());
            ada.context().setOffline(false);
            ada.sendsAll();
            assertEquals(List.of("Ada cut E-31/1.1", "Ada cut E-31/2.1"), booked());
            assertThat(ada.page().locator("#said")).containsText("2 booked. Next: E-31/2.2, counter 52.820 m.");
            ada.ticks();
            ada.reads("All pieces of this reel are cut");
            ada.sendsAll();
            assertEquals(3, booked().size());
            ada.isWell();
        }
    }

    /** They are in the page, and go with the cut that is next there; opened once, a card stays so with the next of its line. */
    @Test
    void cardAndTag_goWithTheNextCutWhileNothingCanBeSent() {
        try (Tablet ada = bench("Ada")) {
            ada.plans();
            ada.open(REEL);
            Locator cards = ada.page().locator("details.cardof:visible");
            assertThat(cards).hasCount(1);
            assertThat(cards).containsText("Splice card: E-31, line 1");
            ada.context().setOffline(true);
            ada.ticks();
            assertThat(cards).hasCount(1);
            assertThat(cards).containsText("Splice card: E-31, line 2");
            assertThat(ada.page().locator(".state")).hasText(new String[] {"cut, waits to be sent", "next", ""});
            assertThat(ada.page().locator("#tag")).hasAttribute("href", "/print/tag?piece=E-31%2F2.1");
            cards.locator("summary").click();
            assertThat(cards.locator(".carddrawing")).isVisible();
            ada.context().setOffline(false);
            ada.sendsAll();
            ada.book("Cut");
            ada.isNext("E-31/2.2");
            assertThat(cards.locator(".carddrawing")).isVisible();
            ada.page().locator("#tag").click();
            ada.reads("E-31/2.2");
            ada.page().goBack();
            ada.isNext("E-31/2.2");
            ada.isWell();
        }
    }

    /** What changes the rest of the reel is not cut on behind before the server has said what comes next. */
    @Test
    void cutThatCameOutOtherwise_waitsForTheServer() {
        try (Tablet ada = bench("Ada")) {
            ada.plans();
            ada.open(REEL);
            ada.context().setOffline(true);
            ada.page().getByLabel("Length it came out at").fill("28.7 m");
            ada.tap("Came out at");
            ada.reads("Do not cut on before the next cut is shown");
            assertThat(ada.button("Cut")).isHidden();
            ada.context().setOffline(false);
            ada.sendsAll();
            assertThat(ada.button("Cut")).isVisible();
            ada.isNext("E-31/2.1");
            ada.isWell();
        }
    }

    /** Ada ticks, nothing goes out, Bo takes the tablet, and what is sent then is hers. */
    @Test
    void bookingThatWaited_hasTheNameOfWhoTapped() {
        try (Tablet tablet = bench("Ada")) {
            tablet.plans();
            tablet.open(REEL);
            tablet.page().route("**/bench/reel", way -> way.abort());
            tablet.ticks();
            tablet.isHeldBy("Bo");
            tablet.isNext("E-31/2.1"); // on the page of the same reel, behind what waits
            tablet.page().unroute("**/bench/reel");
            tablet.ticks();
            tablet.sendsAll();
            assertEquals(List.of("Ada cut E-31/1.1", "Bo cut E-31/2.1"), booked());
        }
    }

    /** Bo puts the reel on hold while Ada is out of reach: what she did there is set aside in sight, the rest is booked. */
    @Test
    void refusedBooking_isSetAsideAndTheNextIsSent() {
        try (Tablet ada = bench("Ada");
                Tablet bo = bench("Bo")) {
            ada.plans();
            String other = ada.open("/bench")
                    .page()
                    .locator("a.reeltile:not([href$=E7])")
                    .first()
                    .getAttribute("href");
            ada.open(REEL);
            ada.page().route("**/bench/reel", way -> way.abort());
            ada.ticks();
            ada.ticks();
            ada.open(other);
            String piece = ada.next();
            ada.ticks();
            assertEquals(3, ada.waiting());
            work(new RackWork.Hold("E7"));
            ada.page().unroute("**/bench/reel");
            ada.sendsAll();
            assertThat(ada.page().locator("#refused p")).hasCount(2);
            assertTrue(ada.page().locator("#refused").innerText().contains("Not booked: Ada, E-31/1.1: "), ada.text());
            assertTrue(bo.open("/splicing").shows(piece), bo.text());
            work(new RackWork.Release("E7"));
            ada.page().locator("#refused button").first().click();
            assertThat(ada.page().locator("#refused p")).hasCount(1);
            ada.sendsAll();
            assertTrue(booked().contains("Ada cut E-31/1.1"), booked().toString());
            ada.button("Seen").click();
            assertThat(ada.page().locator("#refused")).isHidden();
            ada.isWell();
        }
    }

    /** A cut is not booked along with the one behind it when it was refused itself. */
    @Test
    void cutBehindARefusedOne_isNotBookedEither() {
        try (Tablet ada = bench("Ada")) {
            ada.plans();
            ada.open(REEL);
            Visitor office = new Visitor(loft.url());
            office.post("/who", Map.of("name", "Bo"));
            Visitor.Seen refused = office.post(
                    "/bench/reel",
                    Map.of("plan", "1", "reel", "E7", "piece", "E-31/2.1", "after", "E-31/1.1", "what", "cut"));
            assertEquals(409, refused.status());
            assertTrue(refused.text().contains("E-31/1.1, is not booked: book that one first"), refused.text());
            assertEquals(List.of(), booked());
        }
    }

    /** Both tick the same cut, one of them out of reach: it counts once, and both go on with the next. */
    @Test
    void twoTablets_tickTheSameReel() {
        try (Tablet ada = bench("Ada");
                Tablet bo = bench("Bo")) {
            ada.plans();
            ada.open(REEL);
            bo.open(REEL);
            bo.context().setOffline(true);
            bo.ticks();
            bo.ticks();
            ada.ticks();
            ada.sendsAll();
            bo.context().setOffline(false);
            bo.sendsAll();
            assertEquals(List.of("Ada cut E-31/1.1", "Bo cut E-31/2.1"), booked());
            ada.isNext("E-31/2.2");
            bo.isNext("E-31/2.2");
            ada.isWell();
            bo.isWell();
        }
    }

    /** The plug is pulled while three are cut: what was tapped is sent when the program is there again, and once. */
    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void serverThatDies_findsWhatWasTapped(boolean reload) throws Exception {
        try (Tablet ada = bench("Ada")) {
            ada.plans();
            ada.open(REEL);
            ada.ticks();
            loft.kill();
            ada.ticks();
            loft.start();
            ada.ticks();
            if (reload) {
                ada.open(REEL);
            }
            ada.sendsAll();
            assertEquals(List.of("Ada cut E-31/1.1", "Ada cut E-31/2.1", "Ada cut E-31/2.2"), booked());
        }
    }

    /** A spoiled piece is off the reel: the next cut there is the one behind it. */
    @Test
    void spoiledPiece_isNotTheNextCutAgain() {
        try (Tablet ada = bench("Ada")) {
            ada.plans();
            ada.open(REEL);
            ada.ticks();
            ada.sendsAll();
            ada.page().getByText("Something else happened").click();
            ada.book("Book it spoiled");
            ada.isNext("E-31/2.1");
        }
    }

    /** The mistake alone is typed anew, and what was refused is done with once that is sent. */
    @Test
    void refusedBoxes_keepWhatWasTyped() {
        try (Tablet ada = bench("Ada")) {
            ada.plans();
            ada.open(REEL);
            ada.ticks();
            ada.sendsAll();
            ada.open("/splicing");
            ada.page().getByLabel("Came out at").fill("28 m");
            ada.page().getByLabel("Minutes it took").fill("an hour");
            ada.page().locator("select[name=said]").selectOption("passed");
            ada.tap("Done");
            ada.reads("Those minutes could not be read");
            assertThat(ada.page().getByLabel("Came out at")).hasValue("28 m");
            assertThat(ada.page().getByLabel("Minutes it took")).hasValue("an hour");
            assertThat(ada.page().locator("select[name=said]")).hasValue("passed");
            ada.page().getByLabel("Minutes it took").fill("60");
            ada.tap("Done");
            ada.reads("No cut piece waits for its ends.");
            assertThat(ada.page().locator("#refused")).isHidden();
        }
    }
}
