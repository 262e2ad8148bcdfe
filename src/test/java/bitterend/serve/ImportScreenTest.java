package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A sheet of the shop's own sent by a browser, looked at, answered, taken over and taken back. */
final class ImportScreenTest {
    private static final String OPEN =
            """
            Order,Rope,Length,End 1,Due,Salesman
            X-1,LAID-14,5,eye splice,02/03/2026,Al
            X-2,LAID-14,7.5,eye splice,03/03/2026,Bea
            """;
    private static final String PLAIN =
            """
            order,rope,length,due
            X-1,LAID-14,5 m,2026-03-09
            """;

    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway")
    private Served loft = null;

    @BeforeEach
    void serve() throws IOException {
        loft = Served.copy("eider-shed", folder);
    }

    @AfterEach
    void end() {
        loft.close();
    }

    private Seen sent(String called, String text) {
        return sent(called, text.getBytes(StandardCharsets.UTF_8));
    }

    private Seen sent(String called, byte[] bytes) {
        return loft.ada().sends("/import", called, bytes, loft.ada().token());
    }

    /** Sends the form of a page: what is asked for, then fields and what is in them. */
    private Seen does(Seen page, String... more) {
        Map<String, String> fields = new HashMap<>(Map.of(
                "id", page.field("id"), "what", more[0], "seen", page.field("seen"), "booking", page.field("booking")));
        for (int at = 1; at < more.length; at += 2) {
            fields.put(more[at], more[at + 1]);
        }
        return loft.ada().post("/import/sheet", fields);
    }

    private static String field(String question) {
        return SheetQuestion.field(question);
    }

    private Seen back(Seen page) {
        return loft.ada().post("/import/back", Map.of("last", page.field("last"), "booking", page.field("booking")));
    }

    /** Every file of the shop with its bytes. */
    private List<String> files() throws IOException {
        List<String> all = new ArrayList<>();
        try (Stream<Path> inside = Files.walk(loft.shop.folder())) {
            for (Path file : inside.filter(Files::isRegularFile).sorted().toList()) {
                all.add(file + Files.readString(file, StandardCharsets.ISO_8859_1));
            }
        }
        return all;
    }

    private String orders() throws IOException {
        return Files.readString(loft.file("orders.csv"));
    }

    @Test
    void workbook_isLookedAt_answered_takenOver_andTakenBackWhole() throws IOException {
        assertTrue(loft.ada().get("/book").page().contains("href=\"/import\""));
        List<String> before = files();
        Seen asked = sent("whimbrel.xlsx", Files.readAllBytes(Path.of("demo-data/whimbrel.xlsx")));
        assertEquals(200, asked.status(), asked.text());
        assertTrue(asked.text().contains("sheet Jobs goes into orders.csv"), asked.text());
        assertTrue(asked.text().contains("2 questions"), asked.text());
        assertTrue(asked.text().contains("Rows: 4 new, 0 changed, 0 as they are, 0 with a mistake"), asked.text());
        assertFalse(asked.text().contains("--answer"), asked.text());
        assertFalse(asked.page().contains("value=\"take\""), "it is asked first");
        Seen one = does(asked, "answer", field("days"), "0");
        assertTrue(one.text().contains("One question"), one.text());
        Seen all = does(one, "answer", field("unit Length"), "0");
        assertTrue(all.page().contains("value=\"take\""), all.text());
        assertEquals(before, files(), "looked at, and no more");
        String orders = orders();
        Seen taken = does(all, "take");
        assertTrue(taken.text().contains("Ada: mappings.json, orders.csv, reels.csv, ropes.json"), taken.text());
        assertTrue(orders().startsWith(orders), orders());
        assertTrue(orders().contains("J-401"), orders());
        try (Stream<Path> versions = Files.list(loft.file("orders-before"))) {
            assertTrue(versions.anyMatch(version -> version.toString().contains("Ada")));
        }
        assertTrue(does(all, "take").text().contains("The last import"), "a second tap");
        assertEquals(404, does(all, "answer").status(), "it is kept no longer");
        Seen back = back(taken);
        assertFalse(back.text().contains("The last import"), back.text());
        assertEquals(orders, orders());
        assertFalse(Files.exists(loft.file("mappings.json")));
        assertEquals(200, back(taken).status(), "a second tap");
    }

    @Test
    void csvWithQuestions_takesChoicesAndTypedAnswers_andIsAskedAnewWhereThatIsWanted() throws IOException {
        Seen asked = sent("own.csv", OPEN);
        assertTrue(asked.page().contains("type=\"radio\""), asked.page());
        assertTrue(asked.text().contains("3 questions"), asked.text());
        assertTrue(asked.text().contains("known by these names: Salesman."), asked.text());
        Seen noted = does(asked, "answer", "column", field("Salesman"), "member", "note");
        assertFalse(noted.text().contains("Left out"), noted.text());
        Seen nonsense = does(noted, "answer", "column", field("Salesman"), "member", "<b>", field("days"), "99");
        assertTrue(nonsense.text().contains("3 questions"), nonsense.text());
        Seen all = does(noted, answers());
        assertTrue(all.text().contains("Rows: 2 new"), all.text());
        Seen anew = does(all, "anew");
        assertTrue(anew.text().contains("3 questions") && anew.text().contains("names: Salesman."), anew.text());
        does(does(does(anew, "answer", "column", field("Salesman"), "member", "note"), answers()), "take");
        assertTrue(orders().contains("X-1,1,,LAID-14,5 m,three-strand-eye length 300 mm,"), orders());
        assertTrue(orders().contains(",Bea"), orders());
        Seen same = sent("own.csv", OPEN);
        assertTrue(same.text().contains("All of it is there as it is in the sheet."), same.text());
        Seen changed = sent("own.csv", OPEN.replace("7.5", "8"));
        assertTrue(changed.text().replace('\u00a0', ' ').contains("length: 7.5 m -&gt; 8 m"), changed.text());
        assertTrue(changed.text().contains("0 new, 1 changed, 1 as they are"), changed.text());
    }

    private static String[] answers() {
        String eye = field("end eye splice") + SheetQuestion.OTHER;
        return new String[] {
            "answer", field("days"), "0", field("unit Length"), "0", eye, "three-strand-eye length 300 mm"
        };
    }

    @Test
    void filesThatChangedSinceItWasLookedAt_areNotWrittenOver() throws IOException {
        Seen looked = sent("own.csv", PLAIN);
        Files.writeString(loft.file("orders.csv"), orders().replace("28 m", "27 m"));
        List<String> before = files();
        Seen refused = does(looked, "take");
        assertEquals(409, refused.status());
        assertTrue(refused.text().contains("Nothing was written: look again."), refused.text());
        assertEquals(before, files());
        assertTrue(does(refused, "take").text().contains("The last import"));
        assertTrue(orders().contains("27 m") && orders().contains("X-1,1"), orders());
    }

    @Test
    void importOfOrders_isNotTakenBack_whenAnotherCameOrAFileChanged() throws IOException {
        Seen first = does(sent("own.csv", PLAIN), "take");
        Seen second = does(sent("own.csv", PLAIN.replace("5 m", "6 m")), "take");
        Seen stale = back(first);
        assertEquals(409, stale.status());
        assertTrue(stale.text().contains("not the one that you looked at"), stale.text());
        Files.writeString(loft.file("orders.csv"), orders() + "\n");
        Seen changed = back(second);
        assertEquals(409, changed.status());
        assertTrue(changed.text().contains("orders.csv changed since the last import"), changed.text());
    }

    @Test
    void whatIsNoSheet_isRefusedWithASentence_andWritesNothing() throws IOException {
        List<String> before = files();
        assertTrue(sent("", "").text().contains("No file came: choose one."));
        Seen picture = sent("cat.png", "x");
        assertEquals(ReelScreen.NOT_BOOKED, picture.status());
        assertTrue(picture.text().contains("expected a workbook (.xlsx) or a table as text"), picture.text());
        Seen broken = sent("own.xlsx", "PK\003\004 nothing more");
        assertEquals(200, broken.status());
        assertTrue(broken.text().contains("sheet.xlsx"), broken.text());
        assertFalse(broken.page().contains("value=\"take\""), broken.page());
        assertFalse(broken.text().contains(System.getProperty("java.io.tmpdir")), broken.text());
        Seen letter = sent("letter.txt", "Dear loft,\nplease send rope.\n");
        assertTrue(letter.text().contains("a row of headings"), letter.text());
        assertEquals(before, files());
    }

    @Test
    void sheetThatIsTooLarge_isRefusedWithASentence() {
        Seen large = sent("own.csv", new byte[21_000_000]);
        assertEquals(413, large.status(), large.text());
        assertTrue(large.text().contains("A sheet of more than 20 MB is not taken."), large.text());
        byte[] most = new byte[20_050_000];
        assertEquals(413, sent("own.csv", most).status());
        assertEquals(200, loft.ada().get("/import").status());
    }

    @Test
    void namesAndCells_areShownAndNeverRun_norMadeAPath() throws IOException {
        List<String> before = files();
        Seen seen = sent(
                "../../etc/<script>alert(1)</script>.csv",
                "Order,Rope,Length,<script>x</script>\nX-1,LAID-14,5 m,\"<img src=x>\"\n");
        assertEquals(200, seen.status(), seen.text());
        assertFalse(seen.page().contains("<script>"), seen.page());
        assertFalse(seen.page().contains("<img src=x"), seen.page());
        assertFalse(seen.page().contains("../"), seen.page());
        assertEquals(before, files());
        try (Stream<Path> left = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            assertTrue(left.filter(file -> String.valueOf(file.getFileName()).startsWith("bitterend-"))
                    .noneMatch(file -> Files.exists(file.resolve("sheet.csv"))));
        }
    }

    @Test
    void fileFromElsewhere_orWithoutAToken_isRefused_andOthersSheetsAreTheirOwn() {
        byte[] bytes = PLAIN.getBytes(StandardCharsets.UTF_8);
        String token = loft.ada().token();
        assertEquals(403, loft.ada().sends("/import", "own.csv", bytes, "x").status());
        assertEquals(
                403,
                loft.ada()
                        .sends("/import", "own.csv", bytes, token, "http://elsewhere.example")
                        .status());
        assertEquals(415, loft.ada().sends("/book", "own.csv", bytes, token).status());
        assertEquals(
                415, loft.ada().sends("/import/sheet", "own.csv", bytes, token).status());
        Seen looked = sent("own.csv", PLAIN);
        Visitor bo = new Visitor(loft.server());
        assertEquals(403, bo.sends("/import", "own.csv", bytes, token).status(), "the token of another");
        assertEquals(404, bo.get("/import/sheet?id=" + looked.field("id")).status(), "the sheet of another");
    }

    @Test
    void whoHasSaidNoName_writesNothing() throws IOException {
        Visitor bo = new Visitor(loft.server());
        Seen looked = bo.sends("/import", "own.csv", PLAIN.getBytes(StandardCharsets.UTF_8), bo.token());
        List<String> before = files();
        Seen taken = bo.post(
                "/import/sheet", Map.of("id", looked.field("id"), "what", "take", "seen", looked.field("seen")));
        assertTrue(taken.text().contains("Say first who you are"), taken.text());
        assertEquals(before, files());
    }
}
