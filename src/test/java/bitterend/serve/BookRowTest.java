package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A row of the order book while somebody types in it, and what is said of it beside it. Row 1 is the halyard E-31/1. */
final class BookRowTest {
    @TempDir
    private Path folder = Path.of("");

    @SuppressWarnings("NullAway.Init")
    private Served served;

    @BeforeEach
    void serve() throws IOException {
        served = Served.withLedger("eider-shed", folder);
    }

    @AfterEach
    void end() {
        served.close();
    }

    private int column(String name) throws IOException {
        return List.of(Files.readAllLines(served.file("orders.csv")).get(0).split(","))
                .indexOf(name);
    }

    private Seen typed(Seen book, String column, String text) throws IOException {
        Map<String, String> form = new HashMap<>();
        form.put("digest", book.field("digest"));
        form.put("base", book.field("base"));
        form.put("row", "1");
        form.put("c1." + column(column), text);
        return served.ada().post("/book/row", form);
    }

    /** The halyard is 28 m and cut at 28.640 m: a metre more is cut a metre longer. */
    @Test
    void lengthThatIsTyped_hasItsCutLengthAndItsDerivation_andNothingIsWritten() throws IOException {
        byte[] before = Files.readAllBytes(served.file("orders.csv"));
        Seen book = served.ada().get("/book");
        Seen row = typed(book, "length", "29 m");
        assertEquals(200, row.status());
        assertTrue(row.page().contains("<summary>Row 2: cut length 29.640 m</summary>"), row.page());
        assertTrue(row.page().contains("worked out"), row.page());
        assertFalse(row.page().contains("<h1>Order book"), "a part of a page alone");
        assertTrue(Arrays.equals(before, Files.readAllBytes(served.file("orders.csv"))));
    }

    @Test
    void mistake_isSaidAsItIsTyped() throws IOException {
        Seen book = served.ada().get("/book");
        Seen row = typed(book, "length", "29 cubits");
        assertTrue(row.page().contains("expected a length with its unit"), row.page());
        assertFalse(row.page().contains("<summary>"), row.page());
        Seen script = typed(book, "rope", "<script>alert(1)</script>");
        assertFalse(script.page().contains("<script>"), script.page());
    }

    /** Two of the four lines name a rope that nobody has: said at the top once, and marked in their cells. */
    @Test
    void mistakesOfOneCause_areSaidOnce_andMarkedInTheirCells() throws IOException {
        Path orders = served.file("orders.csv");
        Files.writeString(orders, Files.readString(orders).replace("2.5 m", "2.5"));
        Files.writeString(orders, Files.readString(orders).replace("BRAID-12", "NYLON-99"));
        String page = served.ada().get("/book").page();
        assertTrue(page.contains("2 rows, 2, 3: rope: expected a rope of ropes.json"), page);
        assertEquals(3, page.split("aria-invalid=\"true\"", -1).length - 1, page);
    }

    @Test
    void rowOfNoBook_isAnsweredWithNothing() {
        assertEquals(
                "", served.ada().post("/book/row", Map.of("row", "1")).page().strip());
        assertEquals(
                "", served.ada().post("/book/row", Map.of("row", "x")).page().strip());
    }

    @Test
    void everyLine_saysHowFarItIs_andWhatChangedAfterCutting() throws Exception {
        assertTrue(served.ada().get("/book").page().contains("1 open"));
        served.plans();
        Seen reel = served.ada().get("/bench/reel?id=E7");
        Map<String, String> cut = new HashMap<>(Map.of("plan", "1", "reel", "E7", "what", "cut"));
        cut.put("piece", reel.field("piece"));
        cut.put("booking", reel.field("booking"));
        assertEquals(200, served.ada().post("/bench/reel", cut).status());
        String page = served.ada().get("/book").page();
        assertTrue(page.contains("<td>1 cut</td>"), page);
        assertTrue(page.contains("<td>4 planned</td>"), page);
        Path orders = served.file("orders.csv");
        Files.writeString(orders, Files.readString(orders).replaceFirst("28 m", "31 m"));
        page = served.ada().get("/book").page();
        assertTrue(page.contains("<td>1 short</td>"), page);
        assertTrue(page.contains("Changed after cutting: 1 cut, 1 of them cannot become what is ordered now"), page);
    }

    @Test
    void lineBehindItsDay_isOverdue() throws IOException {
        assertFalse(served.ada().get("/book").page().contains("overdue"));
        Path orders = served.file("orders.csv");
        Files.writeString(orders, Files.readString(orders).replace("2026-03-03", "2026-02-20"));
        String page = served.ada().get("/book").page();
        assertTrue(page.contains("<td>1 open; overdue</td>"), page);
        assertTrue(page.contains("<td>4 open</td>"), page);
    }

    @Test
    void saveOfTheBook_saysWhenAndWhatTheVersionBeforeIsCalled() throws IOException {
        Seen book = served.ada().get("/book");
        Map<String, String> form = new HashMap<>();
        form.put("digest", book.field("digest"));
        form.put("base", book.field("base"));
        form.put("booking", book.field("booking"));
        form.put("what", "save");
        form.put("c1." + column("note"), "halyard");
        Seen saved = served.ada().post("/book", form);
        String version = saved.field("version");
        assertFalse(version.isEmpty());
        assertTrue(
                saved.text().matches(".*Saved at [0-9]{2}:[0-9]{2}[.] The version before it is kept as .*"),
                saved.text());
        assertTrue(saved.page().contains("is kept as " + version), saved.page());
        assertFalse(served.ada().get("/book").text().contains("Saved at"), "only behind a save");
    }

    /** Its own, so that no browser asks in vain. */
    @Test
    void everyPage_hasItsMark() {
        assertTrue(served.ada().get("/").page().contains("<link rel=\"icon\" href=\"/assets/mark.svg"));
        for (String path : List.of("/assets/mark.svg", "/favicon.ico")) {
            Seen mark = served.ada().get(path);
            assertEquals(200, mark.status());
            assertEquals(
                    "image/svg+xml",
                    mark.whole().headers().firstValue("Content-Type").orElse(""));
            assertTrue(mark.page().startsWith("<svg"), mark.page());
        }
    }

    @Test
    void ropesEndsAndCustomers_areChosenFromLists() throws IOException {
        String page = served.ada().get("/book").page();
        assertTrue(page.contains("<datalist id=\"ropes\"><option value=\"BRAID-12\">"), page);
        assertTrue(page.contains("list=\"ends\""), page);
        assertTrue(page.contains("<datalist id=\"customers\">"), page);
    }

    /** One mistake alone far down a long book: said at the top, and led to. */
    @Test
    void singleMistake_isLedToFromTheTop() throws IOException {
        assertFalse(served.ada().get("/book").page().contains("Something is wrong"));
        Path orders = served.file("orders.csv");
        Files.writeString(orders, Files.readString(orders).replaceFirst("LAID-14,6 m", "LAID-99,6 m"));
        String page = served.ada().get("/book").page();
        assertTrue(page.contains("Something is wrong, as is said below each: <a href=\"#row-3\">row 4</a>"), page);
        assertTrue(page.contains("<tr id=\"row-3\" class=\"wrong\""), page);
    }

    /** Rows 5, 6 and 7 of the page are blank: the second is filled, and comes behind the last of the book. */
    @Test
    void newLine_isTypedInABlankRow_andBlankRowsAreNone() throws IOException {
        Seen book = served.ada().get("/book");
        assertTrue(book.page().contains("name=\"c7.0\"") && !book.page().contains("name=\"c8.0\""), book.page());
        Map<String, String> form = new HashMap<>();
        form.put("digest", book.field("digest"));
        form.put("base", book.field("base"));
        form.put("booking", book.field("booking"));
        form.put("row", "6");
        for (String blank : List.of("c5.0", "c5.1", "c7.0")) {
            form.put(blank, "");
        }
        Map<String, String> line = Map.of(
                "order",
                "E-70",
                "line",
                "1",
                "rope",
                "LAID-14",
                "length",
                "4 m",
                "end a",
                "whipped",
                "end b",
                "whipped",
                "quantity",
                "1");
        for (Map.Entry<String, String> cell : line.entrySet()) {
            form.put("c6." + column(cell.getKey()), cell.getValue());
        }
        String row = served.ada().post("/book/row", form).page();
        assertTrue(row.contains("Row 6: cut length 4.0"), row);
        assertTrue(row.contains("innerHTML:#cut-6"), row);
        form.put("what", "save");
        List<String> before = Files.readAllLines(served.file("orders.csv"));
        assertEquals(200, served.ada().post("/book", form).status());
        List<String> after = Files.readAllLines(served.file("orders.csv"));
        assertEquals(before, after.subList(0, before.size()));
        assertEquals(List.of("E-70,1,,LAID-14,4 m,whipped,whipped,1,,,,,"), after.subList(before.size(), after.size()));
    }
}
