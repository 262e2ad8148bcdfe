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
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The screen of a reel at the bench: who wants the next piece, what else belongs to it, what is said to have changed. */
final class BenchScreenTest {
    private static final String SHEETS = "BRAID-12,11.5 m,double-braid-eye length 90 mm,sealed,2,2026-03-03";

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

    /** Three sheets of one set that no reel holds together, of a lot that two reels have. */
    private void setOnTwoReels() throws IOException {
        Path orders = loft.file("orders.csv");
        Files.writeString(
                orders,
                Files.readString(orders)
                        .replace(SHEETS, SHEETS.replace("11.5 m", "45 m").replace(",2,", ",3,"))
                        .replaceAll("(?m)^E-31,1,.*\\n", ""));
        assertTrue(Files.readString(orders).contains("45 m"));
        assertEquals(
                200,
                loft.ada()
                        .post("/rack/reel", Map.of("about", "E9", "what", "correct", "lot", "71", "note", "misread"))
                        .status());
        loft.ada().post("/rack/reel", Map.of("about", "E9", "what", "count", "length", "100 m", "uncertainty", "0 m"));
    }

    private Seen reel(String id) {
        return loft.ada().get("/bench/reel?id=" + id);
    }

    /** What is said of a piece that is still to be cut. */
    private String of(String reel, String piece) {
        Matcher section = Pattern.compile(
                        "(?s)<section class=\"nextcut\" data-piece=\"" + Pattern.quote(piece) + "\".*?</section>")
                .matcher(reel(reel).page());
        return section.find()
                ? section.group()
                        .replaceAll("<[^>]*>", " ")
                        .replaceAll("\\s+", " ")
                        .strip()
                : "";
    }

    private Seen cut(String reel, String piece) {
        return loft.ada().post("/bench/reel", Map.of("plan", "1", "reel", reel, "piece", piece, "what", "cut"));
    }

    /** The piece that is to be cut next of a reel. */
    private String next(String reel) {
        return reel(reel).field("piece");
    }

    @Test
    void nextCut_saysWhoWantsItAndWhen() throws InterruptedException {
        loft.plans();
        String said = of("E7", "E-31/2.1");
        assertTrue(said.contains("customer sloop Redshank due Tue 2026-03-03 of its line 1 of 2"), said);
        assertTrue(said.contains("note jib sheets, a pair"), said);
        assertTrue(said.contains("Set Redshank sheets, all of one lot E-31/2.2: to be cut off this reel"), said);
        assertTrue(
                of("E7", "E-31/2.2").contains("customer sloop Redshank"),
                "though the cut before it is for the same: " + of("E7", "E-31/2.2"));
        assertFalse(of("E7", "E-31/1.1").contains("Set "), "alone: " + of("E7", "E-31/1.1"));
        cut("E7", "E-31/1.1");
        cut("E7", "E-31/2.1");
        said = of("E7", "E-31/2.2");
        assertTrue(said.contains("E-31/2.1: cut off this reel"), said);
    }

    @Test
    void matesOfASet_areNamedWithTheReelAndLotTheyComeOff() throws Exception {
        setOnTwoReels();
        loft.plans();
        Map<String, String> homes = new HashMap<>();
        for (int i = 1; i <= 3; i++) {
            String piece = "E-31/2." + i;
            homes.put(piece, of("E7", piece).isEmpty() ? "E9" : "E7");
        }
        String lonely = homes.entrySet().stream()
                .filter(home -> home.getValue().equals("E7"))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElseThrow();
        String said = of("E7", lonely);
        assertTrue(said.contains(": to be cut off reel E9, lot 71"), said + homes);
        assertEquals(lonely, next("E7"));
        assertEquals(200, cut("E7", lonely).status());
        String other = homes.keySet().stream()
                .filter(piece -> !piece.equals(lonely))
                .findFirst()
                .orElseThrow();
        said = of("E9", other);
        assertTrue(said.contains(lonely + ": cut off reel E7, lot 71"), said);
        assertTrue(said.contains(": to be cut off this reel"), said);
        loft.ada().post("/bench/reel", Map.of("plan", "1", "reel", "E7", "piece", lonely, "what", "spoiled"));
        said = of("E9", other);
        assertTrue(said.contains(lonely + ": not cut, and not in this plan"), said);
    }

    /** One for each order line of the reel, in the page; open to see is that of the next cut. */
    @Test
    void cardOfTheNextCut_isTheOneThatIsPrinted() throws InterruptedException {
        loft.plans();
        String printed = loft.ada().get("/print/cards").page();
        List<String> cards = cards(reel("E7").page());
        assertEquals(2, cards.size());
        for (String card : cards) {
            assertTrue(printed.contains(card.replaceAll("card-tail-[0-9]+", "card-tail")), card);
        }
        String first = next("E7");
        String page = reel("E7").page();
        assertEquals(List.of(false, true), hidden(page));
        assertTrue(cards.get(0).contains("<b>" + first + "</b>"), cards.get(0));
        cut("E7", first);
        assertEquals(List.of(true, false), hidden(reel("E7").page()), "the card of the line that is cut next");
        assertEquals(2, cards(reel("E7").page()).size());
    }

    /** Its order has changed since: the marks would be of another rope. */
    @Test
    void pieceThatIsOrderedOtherwiseByNow_hasNoCard() throws Exception {
        loft.plans();
        Path orders = loft.file("orders.csv");
        Files.writeString(orders, Files.readString(orders).replace("11.5 m,double", "11.4 m,double"));
        List<String> cards = cards(reel("E7").page());
        assertEquals(1, cards.size());
        assertTrue(cards.get(0).contains("E-31, line 1"), cards.get(0));
    }

    private static List<String> cards(String page) {
        return found("(?s)<section class=\"card\">.*?</section>", page)
                .map(MatchResult::group)
                .toList();
    }

    /** Of each folded card whether it is hidden. */
    private static List<Boolean> hidden(String page) {
        return found("<details class=\"cardof\"[^>]*>", page)
                .map(found -> found.group().contains(" hidden"))
                .toList();
    }

    private static Stream<MatchResult> found(String pattern, String page) {
        return Pattern.compile(pattern).matcher(page).results();
    }

    /** Before it is cut and after, and by which plan it was cut once another is in force. */
    @Test
    void tagOfAPiece_isTheOneOfItsPlanAlsoOnceItIsCut() throws InterruptedException {
        loft.plans();
        String piece = next("E7");
        Seen bench = reel("E7");
        String path = href(bench.page(), "Reprint this tag");
        assertEquals("/print/tag?piece=" + piece.replace("/", "%2F"), path);
        Seen tag = loft.ada().get(path);
        List<String> tags = tags(tag.page());
        assertEquals(1, tags.size(), tag.text());
        assertTrue(tags(loft.ada().get("/print/tags").page()).contains(tags.get(0)), tags.get(0));
        cut("E7", piece);
        assertTrue(
                reel("E7").page().contains("<option selected>" + piece),
                "what was cut last is the one that is offered");
        assertEquals(tags, tags(loft.ada().get(path).page()), "cut, and no other piece by that");
        loft.plans();
        assertTrue(loft.ada().get("/bench").text().contains("plan 2"));
        List<String> later = tags(loft.ada().get(path).page());
        assertEquals(1, later.size());
        assertTrue(later.get(0).contains("<b>" + piece + "</b>") && later.get(0).contains("plan 1"), later.get(0));
        Seen trace = loft.ada().get("/rack/trace?what=" + piece.replace("/", "%2F"));
        assertEquals(path, href(trace.page(), "Reprint its tag"));
    }

    @Test
    void tagOfWhatNoPlanCuts_isRefusedInWords() throws InterruptedException {
        loft.plans();
        for (String piece : new String[] {"E-99%2F1.1", "", "%3Cb%3E"}) {
            Seen none = loft.ada().get("/print/tag?piece=" + piece);
            assertEquals(404, none.status());
            assertTrue(none.text().contains("No plan that is kept cuts that piece, so it has no tag."), none.text());
        }
    }

    private static List<String> tags(String page) {
        return found("(?s)<div class=\"tag [^>]*><div.*?</div>.*?</div>", page)
                .map(MatchResult::group)
                .toList();
    }

    private static String href(String page, String words) {
        return found("href=\"([^\"]*)\">" + words + "</a>", page)
                .map(found -> found.group(1))
                .findFirst()
                .orElse("");
    }

    @Test
    void nextCut_isNamedBesideTheDrawnTape() throws InterruptedException {
        loft.plans();
        List<String> next = List.of("E-31/1.1", "E-31/2.1", "E-31/2.2");
        for (int cuts = 0; cuts <= next.size(); cuts++) {
            String page = reel("E7").page();
            List<String> states = found("<span class=\"state\"[^>]*>([^<]*)</span>", page)
                    .map(found -> found.group(1))
                    .toList();
            for (int i = 0; i < states.size(); i++) {
                assertEquals(i < cuts ? "cut" : i == cuts ? "next" : "", states.get(i), cuts + " cut: " + states);
            }
            assertEquals(next.size(), states.size());
            if (cuts < next.size()) {
                cut("E7", next.get(cuts));
            }
        }
    }

    @Test
    void bareFigure_isInTheUnitBesideItsBox() throws InterruptedException {
        loft.plans();
        assertTrue(
                reel("E7").page().contains("<span class=\"unit\">m</span>"),
                reel("E7").page());
        Map<String, String> measured = Map.of("plan", "1", "reel", "E7", "piece", next("E7"), "what", "measured");
        Map<String, String> typed = new HashMap<>(measured);
        typed.put("length", "28.7");
        assertEquals(200, loft.ada().post("/bench/reel", typed).status());
        String reel = loft.ada().get("/rack/reel?id=E7").text();
        assertTrue(reel.contains("length 33.290 m"), "62 m less 28.7 m and the cut: " + reel);
    }

    @Test
    void tileOfAReelThatHasEndedOrIsOnHold_saysThatItsRestIsPlannedAgain() throws InterruptedException {
        loft.plans();
        String again = "the rest is to be planned again";
        assertFalse(loft.ada().get("/bench").text().contains(again));
        Map<String, String> ends = Map.of("plan", "1", "reel", "E7", "piece", next("E7"), "what", "ends");
        assertEquals(200, loft.ada().post("/bench/reel", ends).status());
        assertTrue(
                loft.ada().get("/bench").text().contains("1 of 3 cut " + again),
                loft.ada().get("/bench").text());
        loft.plans();
        assertFalse(loft.ada().get("/bench").text().contains(again), "planned again");
        String reel = loft.ada().get("/bench").page().replaceFirst("(?s).*?/bench/reel[?]id=([^\"]+)\".*", "$1");
        loft.ada().post("/rack/reel", Map.of("about", reel, "what", "hold", "note", "wet"));
        assertTrue(
                loft.ada().get("/bench").text().contains("cut " + again),
                loft.ada().get("/bench").text());
    }

    /** Who issues the sheets sees that they are out, and has nothing left to press. */
    @Test
    void issuedSheets_areSeenOnTheTilesOfTheirReels() throws Exception {
        Path orders = loft.file("orders.csv");
        Files.writeString(orders, Files.readString(orders).replace("2026-03-03", "2026-03-02"));
        loft.plans();
        String issue = "Issue today's sheets";
        Seen before = loft.ada().get("/bench");
        assertTrue(before.text().contains(issue), before.text());
        assertFalse(before.text().contains("sheet issued"), before.text());
        Seen issued = loft.ada().post("/issue", Map.of());
        assertEquals(200, issued.status(), issued.text());
        Seen after = loft.ada().get("/bench");
        assertFalse(after.text().contains(issue), after.text());
        assertTrue(after.text().contains("Today's sheets are issued."), after.text());
        assertTrue(after.text().contains("sheet issued"), after.text());

        loft.plans();
        String again = loft.ada().get("/bench").text();
        assertTrue(again.contains("sheet of plan 1 issued"), again);
        assertFalse(again.contains(issue), again);
    }

    /** What was cut is seen at the bench; that the reel was carried elsewhere is something else. */
    @Test
    void whatTheBenchCuts_isNoChangeToIt() throws InterruptedException {
        loft.plans();
        assertEquals(200, cut("E7", next("E7")).status());
        Seen seen = reel("E7");
        assertTrue(seen.text().contains("cut") && !seen.page().contains("data-piece=\"\""), seen.text());
        assertFalse(seen.text().contains("Changed:"), seen.text());
        loft.ada().post("/rack/reel", Map.of("about", "E7", "what", "move", "place", "bench 2"));
        assertTrue(
                reel("E7").text().contains("Changed: reel E7: moved to bench 2"),
                reel("E7").text());
        assertFalse(reel("E7").text().contains("posted"), reel("E7").text());
    }
}
