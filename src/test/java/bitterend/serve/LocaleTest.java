package bitterend.serve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.serve.Visitor.Seen;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is typed on the page by the locale of the shop; files keep their own form. */
final class LocaleTest {
    @TempDir
    private Path folder = Path.of("");

    private Served at(String locale) throws IOException {
        Served loft = Served.withLedger("eider-shed", folder);
        Path settings = loft.file("shop.json");
        Files.writeString(
                settings, Files.readString(settings).replaceFirst("\\{", "{\n  \"locale\": \"" + locale + "\","));
        return loft;
    }

    private static Map<String, String> row(Seen book, String due, String length, String what) {
        Map<String, String> typed = new HashMap<>();
        typed.put("digest", book.field("digest"));
        typed.put("booking", book.field("booking"));
        typed.put("paste", "order\tline\trope\tlength\tend a\tdue\nE-60\t1\tLAID-14\t" + length + "\twhipped\t" + due);
        typed.put("what", what);
        return typed;
    }

    @Test
    void orderBook_takesDaysAndCommasOfThePlaceAndSavesTheFormOfTheFile() throws IOException {
        try (Served loft = at("de-DE")) {
            Seen book = loft.ada().get("/book");
            Seen two = loft.ada().post("/book", row(book, "5.3.2026", "1.500 m", "save"));
            assertEquals(422, two.status());
            assertTrue(
                    two.text()
                            .contains(
                                    "length: found \"1.500 m\", expected a figure that means one thing: 1500, or 1,500"),
                    two.text());
            Seen looked = loft.ada().post("/book", row(book, "5.3.2026", "3,5 m", "look"));
            assertTrue(
                    looked.page().contains("value=\"2026-03-05\"")
                            && looked.page().contains("value=\"3.5 m\""),
                    "echoed in one form: " + looked.text());
            assertEquals(
                    200,
                    loft.ada()
                            .post("/book", row(book, "5.3.2026", "3,5 m", "save"))
                            .status());
            String orders = Files.readString(loft.file("orders.csv"));
            assertTrue(orders.contains("E-60,1,,LAID-14,3.5 m,whipped") && orders.contains("2026-03-05"), orders);
        }
    }

    /** What the page itself has shown is taken as it showed it: looked at first, a length of whole millimetres is saved. */
    @Test
    void lengthThatWasLookedAt_isSavedAsItWasShown() throws IOException {
        try (Served loft = at("de-DE")) {
            Seen looked = loft.ada().post("/book", row(loft.ada().get("/book"), "5.3.2026", "7,125 m", "look"));
            Map<String, String> form = new HashMap<>();
            Matcher fields =
                    Pattern.compile("name=\"([a-z0-9.]+)\" value=\"([^\"]*)\"").matcher(looked.page());
            while (fields.find()) {
                form.put(fields.group(1), fields.group(2));
            }
            assertTrue(form.containsValue("7.125 m"), looked.page());
            form.put("what", "save");
            Map<String, String> otherwise = new HashMap<>(form);
            otherwise.replaceAll((name, text) -> name.startsWith("c") && text.equals("7.125 m") ? "7.126 m" : text);
            assertEquals(422, loft.ada().post("/book", otherwise).status(), "typed anew it could mean two things");
            Seen saved = loft.ada().post("/book", form);
            assertEquals(200, saved.status(), saved.text());
            assertTrue(Files.readString(loft.file("orders.csv")).contains("E-60,1,,LAID-14,7.125 m,whipped"));
        }
    }

    /** What could be 1.5 m or 1500 m is cut to neither, and a day that is none is said to be so once. */
    @Test
    void cellThatCouldMeanTwoThings_hasNoCutLength_andOneSentence() throws IOException {
        try (Served loft = at("de-DE")) {
            Seen book = loft.ada().get("/book");
            Seen two = loft.ada().post("/book", row(book, "5.3.2026", "1.500 m", "look"));
            assertFalse(two.text().contains("1.580 m") || two.page().contains("\">1.5"), two.page());
            Seen day = loft.ada().post("/book", row(book, "31.2.2026", "3,5 m", "look"));
            assertEquals(1, day.text().split("due: found", -1).length - 1, day.text());
        }
    }

    /** An end holds lengths among its words, and names with points in them that are no figures. */
    @Test
    void endsOfTheOrderBook_takeCommasAmongTheirWords() throws IOException {
        try (Served loft = at("de-DE")) {
            Seen book = loft.ada().get("/book");
            Map<String, String> typed = row(book, "", "3,5 m", "save");
            typed.put(
                    "paste",
                    typed.getOrDefault("paste", "").replace("whipped", "three-strand-eye length 0,35 m pin 99,5 mm"));
            assertEquals(200, loft.ada().post("/book", typed).status());
            String orders = Files.readString(loft.file("orders.csv"));
            assertTrue(orders.contains("LAID-14,3.5 m,three-strand-eye length 0.35 m pin 99.5 mm"), orders);
            typed = row(loft.ada().get("/book"), "", "3,5 m", "save");
            typed.put(
                    "paste",
                    typed.getOrDefault("paste", "")
                            .replace("E-60", "E-61")
                            .replace("whipped", "three-strand-eye length 1.350 mm"));
            Seen two = loft.ada().post("/book", typed);
            assertEquals(422, two.status());
            assertTrue(two.text().contains("expected a figure that means one thing: 1350, or 1,350"), two.text());
        }
    }

    /** What came out, a flaw, the sound rope of a spoiled piece, what is left, and the finished length. */
    @Test
    void benchAndSplicing_takeThemToo() throws Exception {
        try (Served loft = at("de-DE")) {
            loft.plans();
            Seen two = loft.ada().post("/bench/reel", tick("E-31/1.1", "measured", "length", "29.350 m"));
            assertEquals(409, two.status());
            assertTrue(
                    two.text()
                            .contains(
                                    "That length could not be read: found \"29.350 m\", expected a figure that means one"
                                            + " thing: 29350, or 29,350 with the decimal sign of this place. Nothing was booked."),
                    two.text());
            assertEquals(
                    200,
                    loft.ada()
                            .post("/bench/reel", tick("E-31/1.1", "measured", "length", "29,35 m"))
                            .status());
            String history = loft.ada().get("/rack/reel?id=E7").text();
            assertTrue(history.contains("length 32.640 m"), "62 m less 29.35 m and the cut: " + history);
            two = loft.ada().post("/bench/reel", tick("", "flaw", "flaw", "1.500 m: chafed"));
            assertTrue(two.text().contains("That flaw could not be read: found \"1.500 m: chafed\""), two.text());
            Seen waits = loft.ada().post("/splicing", Map.of("piece", "E-31/1.1", "length", "28,02 m", "how", "slack"));
            assertEquals(200, waits.status(), waits.text());
            String measured = Files.readString(loft.file("measured.csv"));
            assertTrue(measured.contains("28.02 m"), measured);
            two = loft.ada().post("/bench/reel", tick("E-31/1.1", "spoiled", "length", "2.500 m"));
            assertTrue(two.text().contains("2500, or 2,500"), two.text());
            assertEquals(
                    200,
                    loft.ada()
                            .post("/bench/reel", tick("", "flaw", "flaw", "1,5 m to 1,75 m: chafed"))
                            .status());
            assertTrue(loft.ada().get("/rack/reel?id=E7").text().contains("chafed"));
        }
    }

    private static Map<String, String> tick(String piece, String what, String field, String typed) {
        return Map.of("plan", "1", "reel", "E7", "piece", piece, "what", what, field, typed);
    }

    @Test
    void rackAndCount_takeThemToo() throws IOException {
        try (Served loft = at("de-DE")) {
            Map<String, String> hold = new HashMap<>(
                    Map.of("about", "E9", "what", "reserve", "order", "E-31", "length", "50,5 m", "until", "9.3.2026"));
            assertEquals(200, loft.ada().post("/rack/reel", hold).status());
            String page = loft.ada().get("/rack/reel?id=E9").text();
            assertTrue(page.contains("50.500 m held for order E-31 until 2026-03-09"), page);
            hold.put("until", "9.3.");
            Seen wrong = loft.ada().post("/rack/reel", hold);
            assertTrue(
                    wrong.text().contains("found \"9.3.\", expected a day with its year, such as 31.12.2026"),
                    wrong.text());
            loft.ada().post("/count/reel", Map.of("reel", "E7", "what", "count", "length", "60,5"));
            assertTrue(loft.ada().get("/count/reel?id=E7").text().contains("Counted: 60.5 m"));
        }
    }

    @Test
    void monthAndDay_goByTheCountry() throws IOException {
        try (Served loft = at("en-US")) {
            loft.ada()
                    .post(
                            "/rack/reel",
                            Map.of(
                                    "about",
                                    "E9",
                                    "what",
                                    "reserve",
                                    "order",
                                    "E-31",
                                    "length",
                                    "50 m",
                                    "until",
                                    "3/9/2026"));
            assertTrue(loft.ada().get("/rack/reel?id=E9").text().contains("until 2026-03-09"));
        }
    }

    /** What was typed stays in its form, so that it is read the same when it is sent again. */
    @Test
    void quote_takesThemToo() throws IOException {
        try (Served loft = at("de-DE")) {
            String lines = "line\trope\tlength\tquantity\tdue\n1\tLAID-14\t12,5 m\t2\t05.03.2026";
            Seen looked = loft.ada().post("/quotes", Map.of("what", "look", "number", "Q-7", "paste", lines));
            assertFalse(looked.text().contains("expected"), looked.text());
            assertTrue(looked.text().contains("12.5") && looked.page().contains("value=\"12,5 m\""), looked.page());
            Seen two = loft.ada().post("/quotes", Map.of("what", "draw", "paste", lines.replace("12,5 m", "1.500 m")));
            assertTrue(
                    two.text().contains("length: found \"1.500 m\", expected a figure that means one thing"),
                    two.text());
            assertEquals(1, two.text().split("length: found", -1).length - 1, two.text());
            assertFalse(loft.ada().get("/quotes/run").page().contains("data-done"), "nothing is drawn up");
        }
    }

    @Test
    void withoutALocale_theFormsOfTheFilesAloneAreUnderstood() throws IOException {
        try (Served loft = Served.withLedger("eider-shed", folder)) {
            Seen book = loft.ada().get("/book");
            Seen looked = loft.ada().post("/book", row(book, "5.3.2026", "3,5 m", "look"));
            assertTrue(looked.text().contains("length: found \"3,5 m\", expected"), looked.text());
            assertTrue(
                    looked.text().contains("due: found \"5.3.2026\", expected a day such as 2026-03-02"),
                    looked.text());
        }
    }

    @Test
    void unknownPlace_isAnErrorOfTheSettings() throws IOException {
        try (Served loft = at("nowhere")) {
            assertTrue(loft.ada().get("/").text().contains("expected a place such as de-DE"));
        }
    }
}
