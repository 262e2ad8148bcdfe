package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import bitterend.stock.Event;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is done with reels on the page: by the same work as the commands, with what is wrong at its field. */
final class RackScreenTest {
    private static final String REEL = "/rack/reel";

    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    @BeforeEach
    void serve() throws IOException {
        loft = Served.withLedger("eider-shed", folder);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private Seen deed(String reel, String what, String... fields) {
        Map<String, String> form = new HashMap<>(Map.of("about", reel, "what", what));
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return loft.ada().post(REEL, form);
    }

    private Event last() {
        return loft.shop.reading(
                ledger -> ledger.read(stock -> stock.events().get(stock.events().size() - 1)));
    }

    private String reel(String id) {
        return loft.ada().get(REEL + "?id=" + id).text();
    }

    @Test
    void rack_showsWhatIsToBeKnownAndWhatItIsWorth() {
        Seen rack = loft.ada().get("/rack");
        assertTrue(rack.text().contains("flaw 9.500 m to 9.800 m +/- 0.100 m (chafed)"), rack.text());
        assertTrue(rack.text().matches(".*E8 LAID-14 12 33.5 m hook 2 .*EUR.*"), rack.text());
    }

    @Test
    void rackOfALoftByItself_saysNothingOfTheWay() {
        assertFalse(loft.ada().get("/rack").text().contains("On the way"));
        Seen none = loft.ada().post("/rack/arrive", Map.of("about", "E99", "what", "arrive", "reel", "E99"));
        assertEquals(422, none.status());
        assertTrue(none.text().contains("no reel E99 is on the way to this loft. Nothing was booked."), none.text());
    }

    /** On a phone its rows are no table any more: what is lot and what is place is then said beside it. */
    @Test
    void rackOnAPhone_saysWhatIsWhatWithoutItsHeadings() {
        String page = loft.ada().get("/rack").page();
        assertTrue(page.contains("data-label=\"lot\">71</td>"), page);
        assertTrue(page.contains("data-label=\"place\">hook 1</td>"), page);
        assertTrue(page.contains("<table class=\"list rack\" role=\"table\">"), "and still read out as one");
    }

    @Test
    void pageOfAReel_hasFlawsValueAndHistory() {
        String page = reel("E8");
        assertTrue(page.contains("flaws flaw 9.500 m to 9.800 m +/- 0.100 m (chafed)"), page);
        assertTrue(page.contains("received 2025-06-18"), page);
        assertTrue(page.matches(".*worth on the rack today [0-9.]+ EUR.*"), page);
        assertTrue(page.contains("Bo E8 received"), page);
        assertEquals(404, loft.ada().get(REEL + "?id=nosuch").status());
    }

    @Test
    void reelThatCameIn_isBookedWithItsPapersAndItsLabelIsPrinted() {
        Map<String, String> form = new HashMap<>(Map.of(
                "what",
                "receive",
                "reel",
                "E20",
                "rope",
                "LAID-14",
                "length",
                "110 m",
                "lot",
                "16",
                "tolerance",
                "1.5 %"));
        form.put("useBy", "31.12.");
        Seen wrong = loft.ada().post("/rack/receive", form);
        assertEquals(422, wrong.status());
        assertTrue(wrong.text().contains("found \"31.12.\", expected a day such as 2026-03-02"), wrong.text());
        assertTrue(wrong.page().contains("value=\"110 m\""), "what was typed stays");
        form.put("reel", "E7");
        assertTrue(
                loft.ada().post("/rack/receive", form).text().contains("there is a reel E7 already"), "told beside it");
        form.put("reel", "E20");
        form.put("useBy", "2028-12-31");
        form.put("rope", "LAID-15");
        assertTrue(loft.ada().post("/rack/receive", form).text().contains("there is no rope LAID-15 in ropes.json"));
        form.put("rope", "LAID-14");
        Seen booked = loft.ada().post("/rack/receive", form);
        assertEquals(200, booked.status(), booked.text());
        assertEquals("Ada", last().act().who());
        assertTrue(reel("E20").contains("110 m, nominal, at worst 1.650 m less"), reel("E20"));
        assertTrue(reel("E20").contains("use by 2028-12-31"));
        loft.ada()
                .post(
                        REEL,
                        Map.of("about", "E20", "what", "undo", "event", "" + last().number(), "note", "wrong reel"));
        form.put("tolerance", "much");
        Seen undone = loft.ada().post("/rack/receive", form);
        assertFalse(undone.text().contains("there is a reel E20 already"), "it was taken back whole");
        form.put("tolerance", "1.5 %");
        form.put("booking", "again");
        assertEquals(200, loft.ada().post("/rack/receive", form).status());
        String label = loft.ada().get("/print/label?id=E20").page();
        assertTrue(label.contains("<b>E20</b>") && label.contains("lot 16") && label.contains("2028-12-31"));
        assertTrue(loft.ada().get("/print/labels").page().contains("E8"));
    }

    @Test
    void correction_wantsAReasonAndChangesWhatWasTypedAlone() {
        Seen page = loft.ada().get(REEL + "?id=E7");
        String[] form = {
            "rope",
            "BRAID-12",
            "lot",
            "72",
            "received",
            "2025-11-03",
            "useBy",
            "",
            "certificate",
            "",
            "number",
            "",
            "reelNote",
            "",
            "note",
            ""
        };
        Seen without = deed("E7", "correct", form);
        assertEquals(422, without.status());
        assertTrue(without.text().contains("say why it is corrected"), without.text());
        form[form.length - 1] = "misread";
        assertEquals(200, deed("E7", "correct", form).status());
        assertTrue(reel("E7").contains("lot: 71 to 72") || reel("E7").contains("lot 72"), reel("E7"));
        assertTrue(reel("E7").contains("misread"), reel("E7"));
        assertFalse(page.text().contains("misread"));
    }

    @Test
    void metres_areHeldForAnOrderUntilADayAndLetGo() {
        Seen no = deed("E9", "reserve", "length", "50 m");
        assertTrue(no.text().contains("say whom it is kept for"), no.text());
        assertTrue(
                deed("E9", "reserve", "order", "E-31", "length", "50 m").text().contains("say the last day"));
        Seen held = deed("E9", "reserve", "order", "E-31", "length", "50 m", "until", "2026-03-09");
        assertEquals(200, held.status(), held.text());
        assertTrue(reel("E9").contains("50.000 m held for order E-31 until 2026-03-09"), reel("E9"));
        assertEquals(200, deed("E9", "letgo", "name", "E-31").status());
        assertFalse(reel("E9").contains("held 50.000 m"), reel("E9"));
    }

    @Test
    void reel_isSplitWoundOverAndTakenBackWhole() {
        assertTrue(deed("E9", "split", "length", "300 m", "to", "E21").text().contains("only a part of reel E9"));
        assertEquals(200, deed("E9", "split", "length", "80 m", "to", "E21").status());
        long split = last().number();
        assertTrue(reel("E21").contains("80 m, metered"), reel("E21"));
        assertEquals(200, deed("E9", "rewind").status());
        Seen built = deed("E9", "undo", "event", Long.toString(split));
        assertEquals(422, built.status(), "a later event is built on it");
        assertEquals(
                200, deed("E9", "undo", "event", Long.toString(last().number())).status());
        assertEquals(
                200,
                deed("E9", "undo", "event", Long.toString(split), "note", "other reel")
                        .status());
        assertTrue(reel("E9").contains("length 200 m"), reel("E9"));
        assertEquals("other reel", last().act().note());
    }

    @Test
    void lot_isTracedToItsReelsAndAPieceToItsLot() {
        String lot = loft.ada().get("/rack/trace?lot=12").text();
        assertTrue(lot.contains("on the rack:") && lot.contains("E8"), lot);
        assertEquals(404, loft.ada().get("/rack/trace?what=nosuch").status());
    }

    @Test
    void deedThatIsSentTwice_isBookedOnce() {
        int before = loft.events();
        Map<String, String> move =
                Map.of("about", "E7", "what", "move", "place", "bay 3", "booking", "abcdefgh12345678-move");
        assertEquals(200, loft.ada().post(REEL, move).status());
        assertEquals(200, loft.ada().post(REEL, move).status());
        assertEquals(before + 1, loft.events());
        assertTrue(loft.ada().get(REEL + "?id=E7").text().contains("place bay 3"));
    }
}
