package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

/**
 * A Monday and a Tuesday at the bench. On Monday one reel must be cut, with a piece of Wednesday on it; another on Tuesday, a
 * third on Thursday.
 */
final class DayByDayTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void makeShop() throws IOException {
        shop = TestShop.in(folder).path();
        Files.writeString(shop.resolve("ropes.json"), ropes());
        Files.writeString(
                shop.resolve("orders.csv"),
                """
                order,line,customer,rope,length,end a,end b,quantity,due,priority
                2001,1,Harbour Board,DB12,50 m,plain,plain,1,2026-03-02,3
                2002,1,Port Pilots,DB12,20 m,plain,plain,1,2026-03-04,3
                2003,1,Port Pilots,LA8,30 m,plain,plain,1,2026-03-03,3
                2004,1,Harbour Board,TS10,30 m,plain,plain,1,2026-03-05,3
                """);
        Files.writeString(
                shop.resolve("reels.csv"),
                "reel,rope,lot,length,full\nR-1,DB12,L1,100 m,no\nR-2,LA8,L2,100 m,no\nR-3,TS10,L3,100 m,no\n");
        run(0, "stock", "open");
        run(0, "plan", "--effort", "reproducible");
    }

    private static String ropes() {
        String rope = "{\"id\": \"%s\", \"name\": \"Polyester double braid %s\", \"construction\": \"double braid\","
                + " \"fibre\": \"polyester\", \"diameter\": \"12 mm\", \"price\": \"2.45 EUR/m\", \"usualReel\": \"220 m\"}";
        return "{\"format\": \"bitterend/ropes/1\", \"ropes\": ["
                + String.join(
                        ",", rope.formatted("DB12", "12"), rope.formatted("LA8", "8"), rope.formatted("TS10", "10"))
                + "]}";
    }

    /** A command on this shop, whose folder stands behind the words that name the command. */
    private Run run(int code, String... words) {
        int name = words[0].equals("stock") ? 2 : 1;
        String[] args = new String[words.length + 1];
        System.arraycopy(words, 0, args, 0, name);
        args[name] = shop.toString();
        System.arraycopy(words, name, args, name + 1, words.length - name);
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err());
        return run;
    }

    /** The reels of a cut list, each with whether it is issued. */
    private Set<String> reels(String file) throws IOException {
        Set<String> reels = new TreeSet<>();
        Files.readAllLines(shop.resolve(file)).stream()
                .skip(1)
                .map(row -> row.split(","))
                .forEach(cells -> reels.add(cells[2] + " " + cells[1]));
        return reels;
    }

    private Set<String> sheets(String... words) throws IOException {
        String[] all = new String[words.length + 2];
        all[0] = "sheet";
        all[1] = "--csv";
        System.arraycopy(words, 0, all, 2, words.length);
        run(0, all);
        return reels("sheet.csv");
    }

    @Test
    void sheets_areThoseOfToday_withAllThatIsOnThem() throws IOException {
        assertEquals(Set.of("R-1 no"), sheets());
        String csv = Files.readString(shop.resolve("sheet.csv"));
        assertTrue(csv.contains("2001/1.1") && csv.contains("2002/1.1"), csv);
        run(0, "sheet");
        String sheet = PageText.of(shop.resolve("sheet.html"));
        assertTrue(sheet.contains("2 reels more of this plan are not on these sheets"), sheet);
        assertFalse(sheet.contains("A promise"), sheet);
        run(0, "sheet", "--tags");
        String tags = PageText.of(shop.resolve("tags.html"));
        assertTrue(tags.contains("2002/1.1") && !tags.contains("2003/1.1"), tags);
    }

    @Test
    void sheetsOfAnotherDay_areAPromise_inFilesOfTheirOwn() throws IOException {
        run(0, "sheet");
        String today = Files.readString(shop.resolve("sheet.html"));
        run(0, "sheet", "--day", "2026-03-03");
        assertEquals(today, Files.readString(shop.resolve("sheet.html")));
        String sheet = PageText.of(shop.resolve("sheet-2026-03-03.html"));
        assertTrue(sheet.contains("A promise: none of this need be cut before Tue 2026-03-03"), sheet);
        assertTrue(sheet.contains("Promised for Tue 2026-03-03, and planned again by then"), sheet);
        assertTrue(sheet.contains("plan 1, not issued"), sheet);
        assertEquals(Set.of("R-1 no", "R-2 no", "R-3 no"), sheets("--all"));
    }

    @Test
    void dayOrReelThatThePlanDoesNotCut_isRefusedWithThoseItDoes() {
        String day = run(2, "sheet", "--day", "2026-03-04").err();
        assertTrue(day.contains("plan 1 cuts nothing on that day; it cuts on 2026-03-02, 2026-03-03, 2026-03-05"), day);
        String reel = run(2, "sheet", "--reel", "R-9").err();
        assertTrue(reel.contains("--reel R-9: plan 1 does not cut it; it cuts R-1, R-2, R-3"), reel);
        assertTrue(run(2, "sheet", "--all", "--reel", "R-1").err().contains("--all"));
    }

    @Test
    void mondayThenTuesday_whatIsPromisedIsPlannedAnew() throws IOException {
        String issued = run(0, "sheet", "--issue", "--who", "Ada").err();
        assertTrue(issued.contains("plan 1 is issued") && issued.contains("reel R-1"), issued);
        assertEquals(Set.of("R-1 yes"), sheets());
        assertEquals(Set.of("R-1 yes", "R-2 no", "R-3 no"), sheets("--all"));
        run(0, "sheet", "--all");
        assertTrue(PageText.of(shop.resolve("sheet.html")).contains("plan 1, issued in part"));
        run(0, "stock", "post", "--all");
        run(0, "stock", "trace", "2002/1.1");
        run(3, "stock", "trace", "2003/1.1");

        DemoShop.order(shop, "2009,1,Port Pilots,LA8,25 m,plain,plain,1,2026-03-03,1");
        Run tuesday = run(0, "plan", "--day", "2026-03-03", "--effort", "reproducible");
        assertTrue(plain(tuesday.out()).contains("Since plan 1: 2 pieces stay, 1 is new."), tuesday.out());
        assertFalse(tuesday.err().contains("issued and not posted"), tuesday.err());
        assertEquals(Set.of("R-2 no"), sheets());
        assertTrue(Files.readString(shop.resolve("sheet.csv")).contains("2009/1.1"));
        run(0, "sheet", "--issue");
        String posted = run(0, "stock", "post", "--reel", "R-2").out();
        assertTrue(posted.contains("plan 2: reel R-2"), posted);
        run(0, "stock", "verify");
    }

    /** What is on the bench stays there: on Tuesday it is that day's work, though it need not be cut before Thursday. */
    @Test
    void reelOfALaterDay_isIssuedEarlyByItsName() throws IOException {
        run(0, "sheet", "--reel", "R-3", "--issue");
        assertTrue(
                plain(run(0, "orders").out()).contains("2004/1 1 Thu 2026-03-05 Mon 2026-03-02 R-3 issued, cut ahead"));
        assertEquals(Set.of("R-1 no", "R-3 yes"), sheets());
        run(0, "sheet", "--issue");
        assertEquals(Set.of("R-1 yes", "R-3 yes"), sheets());
        run(0, "stock", "post", "--reel", "R-1");
        String tuesday = run(0, "plan", "--day", "2026-03-03", "--effort", "reproducible")
                .err();
        assertTrue(tuesday.contains("plan 1, reel R-3, 1 piece to cut"), tuesday);
        assertEquals(Set.of("R-2 no", "R-3 no"), sheets());
        run(0, "stock", "post", "--all");
        run(0, "stock", "verify");
    }

    @Test
    void sheetsOfAPlanOfYesterday_sayToPlanAgain() throws IOException {
        assertFalse(run(0, "sheet").err().contains("plan again"));
        Path settings = shop.resolve("shop.json");
        Files.writeString(settings, Files.readString(settings).replace("2026-03-02", "2026-03-03"));
        String told = run(0, "sheet").err();
        assertTrue(told.contains("plan 1 is for Mon 2026-03-02, and today is Tue 2026-03-03: plan again"), told);
    }

    /** What rides on rope that is coming has a place and a day, and no sheet. */
    @Test
    void reelOnOrder_isNeverIssued() throws IOException {
        Files.writeString(
                shop.resolve("on-order.csv"), "number,rope,length,quantity,expected\nB-9,TS10,110 m,1,2026-03-05\n");
        DemoShop.order(shop, "2010,1,Port Pilots,TS10,95 m,plain,plain,1,2026-03-09,5");
        run(0, "plan", "--effort", "reproducible");
        String orders = plain(run(0, "orders").out());
        assertTrue(orders.contains("2010/1 1 Mon 2026-03-09 Mon 2026-03-09 B-9:1 rides on order B-9"), orders);
        assertTrue(run(2, "sheet", "--reel", "B-9:1", "--issue").err().contains("B-9:1"));
        run(0, "sheet", "--all", "--issue");
        assertEquals(Set.of("R-1 yes", "R-2 yes", "R-3 yes"), sheets("--all"));
        run(5, "stock", "post", "--reel", "B-9:1");
        assertTrue(plain(run(0, "show", "week").out()).contains("B-9:1 TS10 Thu 2026-03-05 Mon 2026-03-09 1"));
    }

    @Test
    void promisedDay_isIssuedEarlyByItsDate() throws IOException {
        run(0, "sheet", "--day", "2026-03-03", "--csv", "--issue");
        assertEquals(Set.of("R-2 yes"), reels("sheet-2026-03-03.csv"));
        assertTrue(
                run(0, "plan", "--withdraw", "--effort", "reproducible").err().contains("reel R-2"));
        assertEquals(Set.of("R-1 no"), sheets());
    }

    /** Where nothing must be cut today the sheets of the next day are shown, and none of them goes out unasked. */
    @Test
    void dayWithoutWork_showsTheNextAndIssuesNothing() throws IOException {
        Files.writeString(
                shop.resolve("orders.csv"),
                Files.readString(shop.resolve("orders.csv"))
                        .lines()
                        .filter(row -> !row.startsWith("2001"))
                        .reduce("", (rows, row) -> rows + row + "\n"));
        run(0, "plan", "--effort", "reproducible");
        Run told = run(0, "sheet", "--csv", "--issue");
        assertTrue(
                plain(told.err()).contains("these are the sheets of Tue 2026-03-03, a promise until then"), told.err());
        assertTrue(
                plain(told.err()).contains("Nothing was issued: to issue them early, add --day 2026-03-03"),
                told.err());
        assertEquals(Set.of("R-2 no"), reels("sheet.csv"));
        assertFalse(run(0, "plan", "--effort", "reproducible").err().contains("issued and not posted"));
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }

    @Test
    void planThatKeepsItsPromises_saysSoInOneLine() {
        String again = run(0, "plan", "--effort", "reproducible").out();
        assertTrue(plain(again).contains("As plan 1 promised: 4 pieces stay on the same reel and day."), again);
        assertTrue(plain(run(0, "show", "changes").out()).contains("As plan 1 promised"));
    }

    /** A rush order brings the reel of Thursday forward, with what lies on it; the page has each piece and reel. */
    @Test
    void newWork_thatMovesADay_isToldInCountsAndInFull() throws IOException {
        DemoShop.order(shop, "2009,1,Port Pilots,TS10,25 m,plain,plain,1,2026-03-03,1");
        String screen = plain(run(0, "plan", "--effort", "reproducible").out());
        assertTrue(screen.contains("Since plan 1: 4 pieces stay, 1 is new; 1 reel is cut on another day."), screen);
        String page = plain(run(0, "show", "changes").out());
        assertTrue(page.contains("R-3 Thu 2026-03-05 Tue 2026-03-03 2"), page);
        assertTrue(page.contains("2009/1.1 not planned R-3"), page);
        JsonNode json =
                new ObjectMapper().readTree(run(0, "show", "changes", "--json").out());
        assertEquals(4, json.path("kept").asInt());
        assertEquals("2026-03-05", json.path("days").path(0).path("was").asText());
        assertEquals("R-3", json.path("pieces").path(0).path("now").asText());
    }

    @Test
    void orders_sayOnWhichDayEachLineIsCut() throws IOException {
        DemoShop.order(shop, "2010,1,Port Pilots,TS10,95 m,plain,plain,1,2026-02-27,5");
        String page = plain(run(0, "orders").out());
        assertTrue(page.contains("2001/1 1 Mon 2026-03-02 Mon 2026-03-02 R-1"), page);
        assertTrue(page.contains("2002/1 1 Wed 2026-03-04 Mon 2026-03-02 R-1 cut ahead"), page);
        assertTrue(page.contains("2010/1 1 Fri 2026-02-27 not planned late"), page);
        JsonNode piece = new ObjectMapper()
                .readTree(run(0, "orders", "--json").out()).findParents("piece").stream()
                        .filter(each -> each.path("piece").asText().equals("2002/1.1"))
                        .findFirst()
                        .orElseThrow();
        assertEquals("2026-03-04", piece.path("cutBy").asText());
        assertEquals("2026-03-02", piece.path("plannedOn").asText());
        assertEquals("R-1", piece.path("plannedReel").asText());
        assertTrue(piece.path("cutAhead").asBoolean() && !piece.path("late").asBoolean());
        run(0, "stock", "post", "--all");
        assertFalse(plain(run(0, "orders").out()).contains("2002/1 1 Wed"), "what is cut is no work ahead");
    }

    /** Days across, reels down: R-1 is cut today with a piece of Wednesday, and Thursday leaves a piece on no reel. */
    @Test
    void week_showsWhatIsCutAhead_andWhatIsOnNoReel() throws Exception {
        DemoShop.order(shop, "2010,1,Port Pilots,TS10,95 m,plain,plain,1,2026-03-06,5");
        run(4, "plan", "--effort", "reproducible");
        Path html = folder.resolve("week.html");
        Path pdf = folder.resolve("week.pdf");
        String week = run(0, "show", "week", "--html", html.toString(), "--pdf", pdf.toString())
                .out();
        week.lines().filter(line -> !line.contains("bitterend")).forEach(line -> assertTrue(line.length() <= 80, line));
        assertTrue(plain(week).contains("Mon 2026-03-02, today 1 2 1 70.0"), week);
        assertTrue(plain(week).contains("Fri 2026-03-06 0 0 0 0.0 1"), week);
        assertTrue(plain(week).contains("today R-1 DB12 2 1 1"), week);
        assertTrue(week.contains("--day 2026-03-03"), "how the sheets of a day are asked for");
        String page = Files.readString(html);
        Document picture = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(
                        page.substring(page.indexOf("<svg xmlns"), page.lastIndexOf("</svg>") + "</svg>".length()))));
        String drawn = plain(picture.getDocumentElement().getTextContent());
        assertTrue(drawn.contains("today 2 Mar Tue 3 Mar Wed 4 Mar Thu 5 Mar Fri 6 Mar"), drawn);
        assertTrue(drawn.contains("R-1 DB12 1 1 + 1 R-2 LA8 1 R-3 TS10 1 on no reel 1"), drawn);
    }
}
