package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans are numbered and kept, issued once, printed again at any time, and asked without a trace. */
final class PlanNumbersTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");
    private String at = "";

    @BeforeEach
    void openShop() throws IOException {
        shop = TestShop.in(folder).path();
        at = shop.toString();
    }

    @Test
    void everyPlan_keepsItsNumberAndItsFile() throws IOException {
        run(0, "plan", at, "--time", "200ms");
        String first = Files.readString(shop.resolve("plans/1.json"));
        Run second = run(0, "plan", at, "--time", "200ms");
        assertTrue(second.out().startsWith("Cutting plan 2 for "), second.out());
        assertEquals(first, Files.readString(shop.resolve("plans/1.json")));
        assertTrue(Files.readString(shop.resolve("plans/2.json")).contains("\"number\": 2"));
    }

    @Test
    void twoWhoPlanAtOnce_getANumberEach() throws IOException {
        Stream.of(1, 2, 3)
                .map(each -> CompletableFuture.runAsync(() -> run(0, "plan", at, "--time", "200ms")))
                .toList()
                .forEach(CompletableFuture::join);
        for (int number = 1; number <= 3; number++) {
            assertTrue(
                    Files.readString(shop.resolve("plans/" + number + ".json")).contains("\"number\": " + number));
        }
        assertFalse(Files.exists(shop.resolve("plans/4.json")));
    }

    @Test
    void planOfAnOlderVersion_isMovedOverAsItIs() throws IOException {
        String older =
                "{\"format\": \"bitterend/plan/1\", \"engine\": \"bitterend 0.9\", \"seed\": 0, \"time\": \"1 ms\","
                        + " \"inputs\": {}, \"currency\": \"EUR\", \"minorDigits\": 2, \"day\": \"2026-03-02\", \"cost\": \"0 EUR\","
                        + " \"book\": {\"before\": \"0\", \"pieces\": \"0\", \"cutLoss\": \"0\", \"leadTrim\": \"0\", \"flaws\": \"0\","
                        + " \"scrap\": \"0\", \"kept\": \"0\", \"left\": \"0\", \"innerWraps\": \"0\"}, \"draws\": [], \"unplanned\":"
                        + " [], \"bounds\": []}\n";
        Files.writeString(shop.resolve("plan.json"), older);
        Run stale = run(5, "sheet", at);
        assertTrue(stale.err().contains("orders.csv was added"), stale.err());
        assertTrue(Files.exists(shop.resolve("plan.json")), "a question moves nothing");
        Run planned = run(0, "plan", at, "--time", "200ms", "--from", "1");
        assertTrue(planned.out().startsWith("Cutting plan 2 for "), planned.out());
        assertFalse(Files.exists(shop.resolve("plan.json")));
        assertEquals(older, Files.readString(shop.resolve("plans/1.json")));
    }

    @Test
    void preview_saysNotIssuedOnEveryPageAndIssuingIsWrittenDownOnce() throws IOException {
        run(0, "plan", at, "--time", "200ms");
        Map<String, Long> before = files();
        run(0, "sheet", at, "--all", "--pdf");
        run(0, "sheet", at, "--all", "--tags");
        run(0, "sheet", at, "--all", "--csv");
        before.put("sheet.pdf", 0L);
        before.put("tags.html", 0L);
        before.put("sheet.csv", 0L);
        assertEquals(before.keySet(), files().keySet());
        assertMarked("plan 1, not issued");
        assertTrue(Files.readString(shop.resolve("sheet.csv")).contains("\r\n1,no,R-10"));

        Run issued = run(0, "sheet", at, "--all", "--issue", "--who", "Ada", "--pdf");
        assertTrue(issued.err().contains("plan 1 is issued"), issued.err());
        Map<String, Long> after = files();
        Run again = run(0, "sheet", at, "--all", "--issue", "--who", "Ben", "--tags");
        assertTrue(again.err().contains("issued already") && again.err().contains("Ada"), again.err());
        run(0, "sheet", at, "--all", "--csv");
        assertEquals(after.keySet(), files().keySet());
        assertMarked("plan 1");
        assertFalse(Files.readString(shop.resolve("tags.html")).contains("not issued"));
        assertTrue(Files.readString(shop.resolve("sheet.csv")).contains("\r\n1,yes,R-10"));
    }

    private void assertMarked(String mark) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(shop.resolve("sheet.pdf").toFile())) {
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PDFTextStripper text = new PDFTextStripper();
                text.setStartPage(page);
                text.setEndPage(page);
                assertTrue(text.getText(pdf).contains(mark), "page " + page + ":\n" + text.getText(pdf));
            }
        }
        String tags = Files.readString(shop.resolve("tags.html"));
        int pieces = tags.split("aria-label=\"piece ", -1).length - 1;
        assertEquals(11, pieces);
        assertEquals(
                tags.split("class=\"tag[ \"]", -1).length, tags.split("class=\"of-plan\">" + mark + "<", -1).length);
    }

    @Test
    void issuingIsAnEventOfTheLedgerWhereThereIsOne() throws IOException {
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        run(0, "sheet", at, "--all", "--issue");
        assertFalse(Files.exists(shop.resolve("plans/events")));
        run(0, "stock", "verify", at);
        run(0, "sheet", at, "--all", "--csv");
        assertTrue(Files.readString(shop.resolve("sheet.csv")).contains("\r\n1,yes,"));
    }

    @Test
    void sheet_isPrintedAgainWhateverHappenedAndSaysWhat() throws IOException {
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        run(0, "stock", "move", at, "R-105", "bench");
        run(0, "stock", "post", at, "--piece", lastPieceOf("R-105"));
        String orders = Files.readString(shop.resolve("orders.csv"));
        assertTrue(orders.contains("DB12,12.345 m"), orders);
        Files.writeString(
                shop.resolve("orders.csv"),
                orders.replace("DB12,12.345 m", "DB12,13 m")
                        + "1009,1,Port Pilots,DB12,14 m,plain,plain,2,2026-03-03,1\n");
        Files.writeString(shop.resolve("history.csv"), "order,placed,line,rope,length,end a,end b,quantity\n\n");
        for (String paper : new String[] {"--pdf", "--csv", "--tags"}) {
            run(0, "sheet", at, "--all", paper);
        }
        run(0, "sheet", at, "--all");
        String sheet = PageText.of(shop.resolve("sheet.html"));
        assertTrue(sheet.contains("Changed since this was planned"), sheet);
        assertTrue(sheet.contains("reel R-105: posted"), sheet);
        assertTrue(sheet.contains("order 1001 changed: "), sheet);
        assertTrue(sheet.contains("order 1009: 2 pieces are not in this plan"), sheet);
        assertTrue(sheet.contains("reel R-105: moved"), sheet);
    }

    private String lastPieceOf(String reel) throws IOException {
        run(0, "sheet", at, "--all", "--csv");
        return Files.readAllLines(shop.resolve("sheet.csv")).stream()
                .map(line -> line.split(","))
                .filter(cells -> cells[2].equals(reel) && !cells[8].isEmpty())
                .reduce((first, second) -> second)
                .map(cells -> cells[8])
                .orElseThrow();
    }

    /** What lies on the bench is told first, stays where it is, and is planned anew only when it is called back. */
    @Test
    void newPlan_leavesWhatIsIssuedUnlessItIsCalledBack() throws IOException {
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        run(0, "sheet", at, "--all", "--issue");
        String reel = reelOf("1002/1.1");
        Files.writeString(
                shop.resolve("orders.csv"),
                Files.readString(shop.resolve("orders.csv"))
                        + "1009,1,Port Pilots,DB12,14 m,plain,plain,2,2026-03-03,1\n");
        run(0, "stock", "receive", at, "R-106", "DB12", "60 m");
        Run second = run(0, "plan", at, "--time", "200ms", "--seed", "7");
        assertTrue(second.err().contains("issued and not posted:\n  plan 1, reel R-10"), second.err());
        assertTrue(second.err().contains("They stay as they are issued"), second.err());
        assertTrue(second.err().contains("changed since plan 1, which was in force"), second.err());
        assertEquals(reel, reelOf("1002/1.1"));
        Run asked = run(0, "plan", at, "--explain", "1002/1.1");
        assertTrue(plain(asked.out()).contains("Reel " + reel + " is issued on plan 1 with it"), asked.out());

        Run third = run(0, "plan", at, "--time", "200ms", "--withdraw");
        assertTrue(third.err().contains("called back"), third.err());
        assertFalse(run(0, "plan", at, "--time", "200ms").err().contains("issued and not posted"));
        run(0, "stock", "verify", at);
    }

    /** A sheet on the bench is followed as it is: until it is posted or called back its reel serves nobody else. */
    @Test
    void issuedReel_takesNothingMore() throws IOException {
        Files.writeString(
                shop.resolve("reels.csv"),
                "reel,rope,lot,length,full\nR-1,DB12,L1,160 m,no\nR-2,DB12,L2,9 m,no\nR-3,DB12,L3,30 m,no\n");
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        assertEquals("R-1", reelOf("1001/2.1"));
        run(0, "sheet", at, "--all", "--issue");
        Files.writeString(
                shop.resolve("orders.csv"),
                Files.readString(shop.resolve("orders.csv"))
                        + "1009,1,Port Pilots,DB12,40 m,plain,plain,1,2026-03-02,1\n");
        String bar = "reel R-1 is issued on plan 1 and takes nothing more";
        Run second = run(4, "plan", at, "--time", "200ms").withParts(at);
        assertTrue(plain(second.out()).contains(bar), second.out());
        assertTrue(plain(second.out()).contains("--withdraw"), second.out());
        String explained = plain(run(0, "plan", at, "--explain", "1009/1.1").out());
        assertTrue(explained.contains(bar), explained);

        run(0, "stock", "post", at, "--plan", "1", "--piece", firstCutOf(1, "R-1"));
        assertTrue(
                plain(run(4, "plan", at, "--time", "200ms").withParts(at).out()).contains(bar),
                "what is cut in part stays issued");
        run(0, "plan", at, "--time", "200ms", "--withdraw");
        assertEquals("R-1", reelOf("1009/1.1"));
    }

    @Test
    void issuedReel_isFreeOnceItsSheetIsPosted() throws IOException {
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        run(0, "sheet", at, "--all", "--issue");
        run(0, "stock", "post", at, "--all");
        Files.writeString(
                shop.resolve("orders.csv"),
                Files.readString(shop.resolve("orders.csv"))
                        + "1009,1,Port Pilots,DB12,40 m,plain,plain,1,2026-03-02,1\n");
        assertFalse(run(0, "plan", at, "--time", "200ms").err().contains("issued and not posted"));
    }

    private String firstCutOf(int plan, String reel) throws IOException {
        run(0, "sheet", at, "--all", "--plan", Integer.toString(plan), "--csv");
        return Files.readAllLines(shop.resolve("sheet.csv")).stream()
                .map(row -> row.split(","))
                .filter(cells -> cells[2].equals(reel) && cells[7].equals("cut"))
                .map(cells -> cells[8])
                .findFirst()
                .orElseThrow();
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** What was printed is what {@code verify} wants, while the ledger goes on from there. */
    @Test
    void headOfTheLedger_isPrintedOnTheSheetAndCompared() throws IOException {
        run(0, "plan", at, "--time", "200ms");
        run(0, "sheet", at, "--all");
        assertFalse(Files.readString(shop.resolve("sheet.html")).contains("head of the ledger"));
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        run(0, "sheet", at, "--all", "--issue");
        String head = printedHead(Files.readString(shop.resolve("sheet.html")));
        assertTrue(run(0, "stock", "verify", at).out().contains(head), "issuing is in it");
        run(0, "sheet", at, "--all", "--pdf");
        try (PDDocument pdf = Loader.loadPDF(shop.resolve("sheet.pdf").toFile())) {
            assertEquals(head, printedHead(new PDFTextStripper().getText(pdf)));
        }
        Files.copy(shop.resolve("stock.db"), shop.resolve("tuesday.db"));
        run(0, "stock", "move", at, "R-104", "bay 4");
        run(0, "stock", "verify", at, "--head", head);
        run(0, "sheet", at, "--all", "--cards");
        String later = printedHead(Files.readString(shop.resolve("cards.html")));
        Files.move(shop.resolve("tuesday.db"), shop.resolve("stock.db"), StandardCopyOption.REPLACE_EXISTING);
        Run older = run(3, "stock", "verify", at, "--head", later);
        assertTrue(older.err().contains("an older copy was put back"), older.err());
    }

    private static String printedHead(String page) {
        Matcher head =
                Pattern.compile("head of the ledger was ([0-9a-f.]+[0-9a-f])").matcher(plain(page));
        assertTrue(head.find(), page);
        return head.group(1);
    }

    @Test
    void olderPlan_isPostedOffReelsThatNothingChanged() throws IOException {
        Files.writeString(
                shop.resolve("reels.csv"),
                "reel,rope,lot,length,full\nR-1,DB12,L1,150 m,no\nR-2,DB12,L2,150 m,no\nR-3,DB12,L3,150 m,no\n");
        Files.writeString(shop.resolve("pins.csv"), "piece,reel\n1001/1.1,R-1\n1001/2.1,R-2\n1002/1.1,R-3\n");
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        run(0, "plan", at, "--time", "200ms", "--seed", "5");
        run(0, "stock", "count", at, "R-2", "140 m", "--who", "Ada");
        run(0, "stock", "flaw", at, "R-3", "5 m to 6 m: chafed", "--who", "Ben");

        Run all = run(5, "stock", "post", at, "--reel", "R-1", "--reel", "R-2", "--reel", "R-3", "--plan", "1");
        assertTrue(all.err().contains("R-2") && all.err().contains("Ada"), all.err());
        assertTrue(all.err().contains("R-3") && all.err().contains("Ben"), all.err());
        assertTrue(all.err().contains("Nothing has changed of reel R-1: name it with --reel and --plan 1"), all.err());
        for (String changed : List.of("R-2", "R-3")) {
            Run refused = run(5, "stock", "post", at, "--plan", "1", "--reel", changed);
            assertTrue(refused.err().contains("Nothing was booked"), refused.err());
        }
        Run posted = run(0, "stock", "post", at, "--plan", "1", "--reel", "R-1");
        assertTrue(posted.out().contains("plan 1: reel R-1"), posted.out());
        assertTrue(run(0, "stock", "trace", at, "1001/1.1").out().contains("R-1"));
        run(3, "stock", "trace", at, "1001/2.1");
        run(0, "stock", "verify", at);
    }

    /** Two papers for one reel on the bench: the number decides, and nothing is guessed. */
    @Test
    void post_wantsTheNumberWhereTwoPlansCouldBeMeant() throws IOException {
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        Files.writeString(
                shop.resolve("pins.csv"),
                "piece,reel\n1002/1.1," + (reelOf("1002/1.1").equals("R-104") ? "R-105" : "R-104") + "\n");
        run(0, "plan", at, "--time", "200ms");
        Run asked = run(2, "stock", "post", at, "--all");
        assertTrue(asked.err().contains("more than one plan could be meant: 1, 2"), asked.err());
        Run posted = run(0, "stock", "post", at, "--all", "--plan", "2");
        assertTrue(posted.out().contains("plan 2: reel"), posted.out());
        Run refused = run(5, "stock", "post", at, "--all", "--plan", "1");
        assertTrue(refused.err().contains("Nothing was booked"), refused.err());
        run(0, "stock", "post", at, "--all");
    }

    /** Of two plans for one reel the one that issued it is meant. */
    @Test
    void post_takesThePlanThatIssuedTheReel() throws IOException {
        run(0, "stock", "open", at);
        run(0, "plan", at, "--time", "200ms");
        String other = reelOf("1002/1.1").equals("R-104") ? "R-105" : "R-104";
        Files.writeString(shop.resolve("pins.csv"), "piece,reel\n1002/1.1," + other + "\n");
        run(0, "plan", at, "--time", "200ms");
        Run asked = run(2, "stock", "post", at, "--piece", "1002/1.1");
        assertTrue(asked.err().contains("more than one plan could be meant: 1, 2"), asked.err());
        run(0, "sheet", at, "--reel", other, "--issue");
        String posted = run(0, "stock", "post", at, "--piece", "1002/1.1").out();
        assertTrue(posted.contains("plan 2: reel " + other), posted);
    }

    private String reelOf(String piece) throws IOException {
        run(0, "sheet", at, "--all", "--csv");
        return Files.readAllLines(shop.resolve("sheet.csv")).stream()
                .map(line -> line.split(","))
                .filter(cells -> cells[8].equals(piece))
                .map(cells -> cells[2])
                .findFirst()
                .orElseThrow();
    }

    /** A question never writes: the folder is byte for byte as it was; every command there is: AskingCommandsTest. */
    @Test
    void questions_leaveTheFolderAsItWas() throws IOException {
        Path loft = DemoShop.copy("gannet-loft", folder);
        String demo = loft.toString();
        run(0, "stock", "open", demo);
        run(4, "plan", demo, "--time", "500ms");
        Map<String, Long> before = files(loft);
        String out = folder.resolve("out").toString();
        for (String words : new String[] {
            "check SHOP",
            "lengths SHOP",
            "lengths SHOP G-2101/2",
            "plan SHOP --explain G-2101/2.1",
            "plan SHOP --explain G-2101/2.1 --json",
            "plan SHOP --explain 0418",
            "plan SHOP --shares",
            "plan SHOP --shares --json --plan 1",
            "quote SHOP SHOP/requests/Q-2601.csv",
            "buy SHOP",
            "stock list SHOP",
            "stock history SHOP 0418",
            "stock export SHOP",
            "stock verify SHOP"
        }) {
            Run run = Run.of(words.replace("SHOP", demo).split(" "));
            assertEquals(0, run.code(), words + "\n" + run.err());
            assertEquals(before, files(loft), words);
        }
        Run trial = Run.of("plan", demo, "--time", "200ms", "--out", out);
        assertEquals(4, trial.code(), trial.err());
        assertEquals(before, files(loft), "a plan written elsewhere");
        run(0, "sheet", demo);
        before.put("sheet.html", files(loft).get("sheet.html"));
        assertEquals(before, files(loft), "a sheet is the file that was asked for");
    }

    @Test
    void outThatIsNoFileOfItsOwn_isRefusedBeforeAnyWork() throws IOException {
        Map<String, Long> before = files();
        Path other = Files.writeString(folder.resolve("another-shops-orders.csv"), "order,line\n");
        Path dangling = Files.createSymbolicLink(folder.resolve("dangling.json"), folder.resolve("nowhere.json"));
        for (String out : new String[] {
            "",
            dangling.toString(),
            at,
            at + "/orders.csv",
            at + "/plans/1.json",
            at + "/../northgate/shop.json",
            "/dev/null",
            at + "/no such folder/plan.json",
            other.toString()
        }) {
            Run run = run(2, "plan", at, "--out", out);
            assertTrue(run.err().contains("--out: found"), run.err());
            assertEquals("", run.out());
        }
        assertEquals("order,line\n", Files.readString(other));
        assertTrue(Files.isSymbolicLink(dangling), "the link is left as it was");
        assertEquals(before, files());
    }

    @Test
    void planThatCannotBeKept_isPrintedAndTheReaderToldWhatToDo() throws IOException {
        Files.writeString(shop.resolve("plans"), "in the way\n");
        Run run = run(3, "plan", at, "--time", "200ms");
        assertTrue(run.out().startsWith("Cutting plan for 2026-03-02"), run.out());
        assertTrue(run.err().contains("not written to") && run.err().contains("--out FILE"), run.err());
        assertEquals("in the way\n", Files.readString(shop.resolve("plans")));
    }

    private Map<String, Long> files() throws IOException {
        return files(shop);
    }

    private static Map<String, Long> files(Path folder) throws IOException {
        Map<String, Long> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                java.util.zip.CRC32 sum = new java.util.zip.CRC32();
                sum.update(Files.readAllBytes(file));
                files.put(folder.relativize(file).toString(), sum.getValue());
            }
        }
        return files;
    }

    private static Run run(int code, String... words) {
        Run run = Run.of(words);
        assertEquals(code, run.code(), String.join(" ", words) + "\n" + run.out() + run.err());
        return run;
    }
}
