package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the screen of a reel says when a cut came out otherwise than planned: short rope, a length far off, the last booking. */
final class BenchSurpriseTest {
    @TempDir
    private Path folder = Path.of("");

    private Served loft = nobody();

    @SuppressWarnings("NullAway")
    private static Served nobody() {
        return null;
    }

    @BeforeEach
    void serve() throws IOException {
        loft = Served.withLedger("eider-shed", folder);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private Seen reel() {
        return loft.ada().get("/bench/reel?id=E7");
    }

    private Seen cut(String piece, String what) {
        return loft.ada().post("/bench/reel", Map.of("plan", "1", "reel", "E7", "piece", piece, "what", what));
    }

    private String next() {
        return reel().field("piece");
    }

    /** The rope ends behind a cut: no next cut is shown off a reel that is no more. */
    @Test
    void reelThatEndedShort_showsNoNextCut() throws InterruptedException {
        loft.plans();
        String first = next();
        String second = "E-31/2.1";
        assertTrue(reel().page().contains("data-piece=\"" + second + "\""));
        cut(first, "ends");
        Seen ended = reel();
        assertTrue(
                ended.text().contains("By the ledger this reel has ended; not cut: 2 pieces. Plan again."),
                ended.text());
        assertFalse(ended.page().contains("class=\"nextcut\""), ended.text());
        assertFalse(ended.page().contains(">Cut</button>"), ended.text());
        assertFalse(ended.text().contains("next"), ended.text());
    }

    /** What is taken back is named; that the ledger was begun is nothing of the bench. */
    @Test
    void takingBack_namesWhatWasBooked() throws InterruptedException {
        loft.plans();
        assertFalse(reel().text().contains("Take back"), reel().text());
        String first = next();
        cut(first, "cut");
        assertTrue(reel().text().contains("Take back the last booking: cut " + first), reel().text());
    }

    /** Cut far too short: it is so, and is booked once who cut it says so; no word of the command line is told. */
    @Test
    void lengthFarOff_isBookedOnceItIsSaidToBeSo() throws InterruptedException {
        loft.plans();
        String first = next();
        Map<String, String> far = new HashMap<>(Map.of(
                "plan", "1", "reel", "E7", "piece", first, "what", "measured", "length", "12 m", "booking", "far1"));
        Seen refused = loft.ada().post("/bench/reel", far);
        assertEquals(409, refused.status());
        assertTrue(refused.page().contains("data-so=\"yes\""), refused.page());
        assertTrue(refused.text().contains("12.000 m is more than 5 % off. Nothing was booked."), refused.text());
        assertFalse(refused.text().contains("--"), refused.text());
        far.put("sure", "yes");
        Seen booked = loft.ada().post("/bench/reel", far);
        assertEquals(200, booked.status(), booked.text());
        assertTrue(booked.text().contains("Take back the last booking: cut short " + first), booked.text());
        Seen unread = loft.ada()
                .post(
                        "/bench/reel",
                        Map.of("plan", "1", "reel", "E7", "piece", "E-31/2.1", "what", "measured", "length", "x"));
        assertFalse(unread.page().contains("data-so"), unread.page());
    }

    /** The counter runs on: behind a piece that came out 100 mm short the next cut is 100 mm earlier. */
    @Test
    void readingsBehindALengthThatCameOutOtherwise_areMoved() throws InterruptedException {
        loft.plans();
        String first = next();
        String planned = reading("E-31/2.1");
        BigDecimal length = new BigDecimal(reading(first)).subtract(new BigDecimal("0.100"));
        loft.ada()
                .post(
                        "/bench/reel",
                        Map.of("plan", "1", "reel", "E7", "piece", first, "what", "measured", "length", length + " m"));
        String moved = reading("E-31/2.1");
        assertEquals(new BigDecimal(planned).subtract(new BigDecimal("0.100")).toPlainString(), moved);
        assertTrue(reel().page().contains("<p class=\"reading\">" + moved + "</p>"), reel().text());
        assertTrue(reel().text().contains("Moved: the plan has " + planned + " here"), reel().text());
        assertTrue(reel().page().contains("<span class=\"at\">" + moved + "</span>"), reel().page());
        cut("E-31/2.1", "cut");
        assertTrue(reel().text().contains("Moved:"), "and those behind the next, too");
    }

    /** What the counter reads at a cut that is still to be made. */
    private String reading(String piece) {
        Matcher found = Pattern.compile("data-piece=\"" + Pattern.quote(piece) + "\"[^>]*data-reading=\"([0-9.]+) m\"")
                .matcher(reel().page());
        return found.find() ? found.group(1) : "";
    }
}
