package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import bitterend.stock.Event;
import bitterend.stock.LoftAddress;
import bitterend.store.LoftServer;
import bitterend.work.rack.BeginLedger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reels that go from one loft to another of a server, sent on the page of the one and booked in on the page of the other. */
final class OnTheWayTest {
    private static final String REEL = "/rack/reel";
    private static final String ARRIVE = "/rack/arrive";

    @TempDir
    private Path folder = Path.of("");

    private String hereName = "";
    private String thereName = "";

    @SuppressWarnings("NullAway")
    private Served here = null;

    @SuppressWarnings("NullAway")
    private Served there = null;

    @BeforeEach
    void serve() throws IOException {
        LoftAddress one = LoftServer.shared().newLoft();
        LoftAddress other = LoftServer.shared().newLoft();
        hereName = one.loft();
        thereName = other.loft();
        here = begun(one, "here");
        there = begun(other, "there");
    }

    private Served begun(LoftAddress loft, String name) throws IOException {
        Served served = Served.on(loft, "eider-shed", Files.createDirectory(folder.resolve(name)));
        served.shop.read().found().ifPresent(now -> new BeginLedger(served.shop).begin(now.shop(), "Bo"));
        return served;
    }

    @AfterEach
    void end() {
        here.close();
        there.close();
    }

    private Seen sent(String reel, String loft) {
        return here.ada().post(REEL, Map.of("about", reel, "what", "leave", "how", "send", "loft", loft, "note", ""));
    }

    private Seen arrived(String reel, String as, String booking) {
        return there.ada()
                .post(
                        ARRIVE,
                        Map.of("about", reel, "what", "arrive", "reel", as, "note", "by van", "booking", booking));
    }

    private static Seen undone(Served loft, String reel, long event) {
        return loft.ada().post(REEL, Map.of("about", reel, "what", "undo", "event", Long.toString(event)));
    }

    private static Event last(Served loft) {
        return loft.shop.reading(
                ledger -> ledger.read(stock -> stock.events().get(stock.events().size() - 1)));
    }

    private static String rack(Served loft) {
        return loft.ada().get("/rack").text();
    }

    @Test
    void reelThatWasSent_isOnTheWayOnBothPagesAndComesIn() {
        String form = here.ada().get(REEL + "?id=E10").page();
        assertTrue(form.contains("<option value=\"" + thereName + "\">"), "the lofts of the server are offered");
        assertEquals(200, sent("E10", thereName).status());
        assertEquals(thereName, last(here).fact("sent to"));
        String way = "to loft " + thereName + ", by event " + last(here).number() + " here";
        assertTrue(rack(here).contains(way), rack(here));
        assertTrue(
                rack(there)
                        .contains("from loft " + hereName + ", by its event "
                                + last(here).number()),
                rack(there));

        Seen known = arrived("E10", "E10", "first-page-0001");
        assertEquals(422, known.status());
        assertTrue(known.text().contains("Nothing was booked."), known.text());
        assertTrue(known.page().contains("value=\"by van\""), "what was typed stays");

        Seen booked = arrived("E10", "T10", "first-page-0001");
        assertEquals(200, booked.status(), booked.text());
        assertTrue(booked.page().contains(REEL + "?id=T10"), booked.page());
        Event came = last(there);
        assertEquals("Ada", came.act().who());
        assertEquals("by van", came.act().note());
        assertEquals(last(here).hash(), came.fact("sent by link"));
        assertEquals(hereName, came.fact("sent by"));
        assertTrue(came.fact(Event.ASKED).startsWith(ARRIVE), came.fact(Event.ASKED));
        assertFalse(rack(here).contains("On the way"), rack(here));
        assertFalse(rack(there).contains("On the way"), rack(there));
        assertTrue(rack(there).contains("T10"), rack(there));
    }

    @Test
    void arrivalThatIsSentTwice_isBookedOnce() {
        sent("E10", thereName);
        int before = there.events();
        assertEquals(200, arrived("E10", "T10", "tapped-twice-01").status());
        assertEquals(200, arrived("E10", "T10", "tapped-twice-01").status());
        assertEquals(before + 1, there.events());
        Seen other = arrived("E10", "T11", "another-page-01");
        assertEquals(422, other.status());
        assertTrue(other.text().contains("no reel E10 is on the way to this loft. Nothing was booked."), other.text());
    }

    @Test
    void eachSide_isTakenBackWhileTheOtherAllowsIt() {
        sent("E10", thereName);
        long sent = last(here).number();
        arrived("E10", "T10", "first-page-0001");
        long came = last(there).number();
        Seen refused = undone(here, "E10", sent);
        assertEquals(422, refused.status());
        assertTrue(
                refused.text().contains("it came in at loft " + thereName + " with event " + came + " there"),
                refused.text());

        assertEquals(200, undone(there, "T10", came).status());
        assertTrue(rack(there).contains("Arrived: reel E10 from loft " + hereName), rack(there));
        assertTrue(rack(here).contains("Not sent after all: reel E10 to loft " + thereName), rack(here));
        assertEquals(200, undone(here, "E10", sent).status());
        assertFalse(rack(there).contains("On the way"), rack(there));
        assertFalse(rack(here).contains("On the way"), rack(here));
        assertTrue(rack(here).contains("E10"), rack(here));
    }

    @Test
    void nameThatIsNoLoftOfTheServer_isANote() {
        assertEquals(200, sent("E10", "North Quay").status());
        assertEquals("", last(here).fact("sent to"));
        assertEquals(200, here.ada().get("/rack").status());
        assertFalse(rack(here).contains("On the way"), rack(here));
        Seen own = sent("E9", hereName);
        assertEquals(422, own.status());
        assertTrue(own.text().contains("is this one"), own.text());
    }
}
