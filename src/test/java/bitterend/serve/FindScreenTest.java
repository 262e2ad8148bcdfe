package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One box opens what has a number, typed or read off the code of a tag. */
final class FindScreenTest {
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

    private Seen found(String what) {
        return loft.ada().get("/find?what=" + URLEncoder.encode(what, StandardCharsets.UTF_8));
    }

    private String opened(String what) {
        return found(what).whole().uri().toString().replaceAll("^http://[^/]*", "");
    }

    /** A tag outlives what it was printed for: ordered, planned, cut, it opens what is to be known of its piece. */
    @Test
    void codeOfAPiece_opensItsOrderThenItsReelThenItsTrace() throws Exception {
        String code = "piece E-31/1.1 reel E7 lot 7 cut 16950 mm plan 1, not issued";
        assertEquals("/orders?order=E-31", opened(code));
        assertTrue(
                found(code).text().contains("E-31") && !found(code).text().contains("E-32"),
                found(code).text());
        loft.plans();
        assertEquals("/bench/reel?id=E7", opened(code));
        Seen reel = loft.ada().get("/bench/reel?id=E7");
        String piece = reel.field("piece");
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
        Seen trace = found("piece " + piece + " reel E7 lot 7 cut 1 mm plan 1");
        assertEquals(200, trace.status());
        assertTrue(trace.text().contains("Piece " + piece), trace.text());
        assertEquals("/rack/trace?what=" + piece.replace("/", "%2F"), opened(piece), "typed as well");
    }

    @Test
    void codesOfReelsAndCoils_openTheReel() {
        for (String code : new String[] {
            "reel E8; rope LAID-14; lot 12",
            "reel E8; stays: 6.310 m; plan 1",
            "coil off E8; kept: 6.340 m; plan 1, not issued",
            "rest of the reel E8; measure; keep if 2.000 m or more; plan 1",
            "E8",
            "e8",
            "reel e8"
        }) {
            assertEquals("/rack/reel?id=E8", opened(code), code);
        }
    }

    @Test
    void orderLotAndPlan_areOpenedByTheirNumbers() throws Exception {
        assertEquals("/orders?order=E-32", opened("e-32"));
        loft.plans();
        assertEquals("/plans?number=1", opened("plan 1"));
        assertTrue(found("plan 1").text().contains("Cutting plan 1 for 2026-03-02"));
        assertTrue(
                found("12").text().contains("lot") || opened("12").startsWith("/rack/trace?lot="),
                found("12").text());
        Seen some = found("E-3");
        assertTrue(some.text().contains("E-31 order") && some.text().contains("E-32/2.3 piece"), some.text());
    }

    @Test
    void whatNobodyKnows_isSaid_andHarmless() {
        assertTrue(found("nosuch").text().contains("Nothing is called that."));
        assertTrue(found("").text().contains("Nothing is called that."));
        for (String hostile : new String[] {
            "piece <script>x</script>/1.1 reel 3",
            "reel //example.org",
            "plan 999999999999",
            "reel " + "x".repeat(5_000),
            "reel \u202e\r\nE8"
        }) {
            Seen seen = found(hostile);
            assertEquals(200, seen.status(), hostile);
            assertFalse(seen.page().contains("<script>x"), seen.page());
        }
        assertTrue(loft.ada().get("/plans?number=77").text().contains("There is no such plan"));
    }
}
