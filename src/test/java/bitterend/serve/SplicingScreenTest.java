package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cut pieces get their ends: what is typed into the boxes of the card is booked as the command books it. */
final class SplicingScreenTest {
    private static final String SPLICING = "/splicing";

    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    private String piece = "";
    private String finished = "";

    @BeforeEach
    void aPieceIsCut() throws IOException, InterruptedException {
        loft = Served.withLedger("eider-shed", folder);
        loft.plans();
        Seen reel = loft.ada().get("/bench/reel?id=E7");
        piece = reel.field("piece");
        loft.ada()
                .post(
                        "/bench/reel",
                        Map.of(
                                "plan",
                                "1",
                                "reel",
                                "E7",
                                "piece",
                                piece,
                                "booking",
                                reel.field("booking"),
                                "what",
                                "cut"));
        Matcher shown = Pattern.compile("finished ([0-9.]+ m)")
                .matcher(loft.ada().get(SPLICING).text());
        assertTrue(shown.find(), loft.ada().get(SPLICING).text());
        finished = shown.group(1);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private Seen done(String... fields) {
        Map<String, String> form = new HashMap<>(Map.of("piece", piece, "length", finished, "how", "slack"));
        for (int i = 0; i < fields.length; i += 2) {
            form.put(fields[i], fields[i + 1]);
        }
        return loft.ada().post(SPLICING, form);
    }

    @Test
    void doneWithMinutes_isARowAndAnEvent() throws IOException {
        String page = loft.ada().get(SPLICING).page();
        assertTrue(page.contains("name=\"minutes\""), page);
        Seen booked = done("minutes", "75", "said", "passed");
        assertEquals(200, booked.status(), booked.text());
        assertFalse(booked.text().contains(piece), booked.text());
        String rows = Files.readString(loft.file("measured.csv"));
        assertTrue(rows.contains(",Ada,75,"), rows);
        String trace = loft.ada().get("/rack/trace?what=" + piece).text();
        assertTrue(trace.contains("spliced") && trace.contains("in 1 h 15 min"), trace);
    }

    /** The very card that is printed is folded above the pieces of its line; a changed order has none. */
    @Test
    void cardOfAWaitingPiece_isTheOneThatIsPrinted() throws IOException {
        String printed = loft.ada().get("/print/cards").page();
        String page = loft.ada().get(SPLICING).page();
        List<String> cards = Pattern.compile("(?s)<section class=\"card\">.*?</section>")
                .matcher(page)
                .results()
                .map(MatchResult::group)
                .toList();
        assertEquals(1, cards.size(), page);
        assertTrue(cards.get(0).contains("<b>" + piece + "</b>"), cards.get(0));
        assertTrue(printed.contains(cards.get(0).replaceAll("card-tail-[0-9]+-[0-9]+", "card-tail")), cards.get(0));
        assertTrue(page.contains("<summary>Splice card: E-31, line 1</summary>"), page);
        Path orders = loft.file("orders.csv");
        Files.writeString(orders, Files.readString(orders).replaceFirst("28 m", "27 m"));
        String changed = loft.ada().get(SPLICING).page();
        assertFalse(changed.contains("class=\"card\""), changed);
    }

    /** After another plan is put in force a piece has the card of the plan that cut it. */
    @Test
    void cardOfAnEarlierPlan_isStillThere() throws InterruptedException {
        loft.plans();
        assertTrue(loft.ada().get("/").text().contains("Cutting plan 2"), "another plan");
        String page = loft.ada().get(SPLICING).page();
        assertTrue(page.contains("<summary>Splice card: E-31, line 1</summary>"), page);
        assertTrue(page.contains("<td><b>" + piece + "</b></td>"), page);
    }

    /** In the evening what is open is listed with where it is dealt with; a spliced piece is no longer. */
    @Test
    void evening_listsWhatIsStillOpen() {
        assertTrue(loft.ada().get("/").page().contains("href=\"/evening\""));
        int before = loft.events();
        Seen open = loft.ada().get("/evening");
        assertTrue(open.text().contains("Cut, waiting for their ends E-31/1: 1 piece"), open.text());
        assertTrue(open.text().contains("All that the plan cuts today is cut."), open.text());
        assertTrue(open.text().contains("No sheet with pieces to cut is out."), open.text());
        done("said", "passed");
        Seen closed = loft.ada().get("/evening");
        assertTrue(closed.text().contains("No cut piece waits for its ends."), closed.text());
        assertEquals(before + 1, loft.events());
    }

    @Test
    void bareFigure_isInTheUnitBesideItsBox() throws IOException {
        assertTrue(
                loft.ada().get(SPLICING).text().contains("Came out at, in m or as you read it"),
                loft.ada().get(SPLICING).text());
        assertEquals(
                200,
                done("length", finished.replace(" m", ""), "said", "passed").status());
        String rows = Files.readString(loft.file("measured.csv"));
        assertTrue(rows.contains("," + finished + ","), rows);
    }

    @Test
    void whatCannotBeRead_isSaidAndNothingIsBooked() {
        int before = loft.events();
        Seen wrong = done("minutes", "an hour");
        assertEquals(409, wrong.status());
        assertTrue(
                wrong.text()
                        .contains("Those minutes could not be read: write whole minutes from 1 to 9999, such as 75."),
                wrong.text());
        assertEquals(409, done("length", "about 7").status());
        assertEquals(before, loft.events());
        assertEquals(200, done("said", "passed").status(), "without minutes it is booked, too");
        assertEquals(before + 1, loft.events());
    }
}
