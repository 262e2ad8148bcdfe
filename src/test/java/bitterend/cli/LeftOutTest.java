package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.PageText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with one order, one line of a request, one rope or one thimble never stops the others. */
final class LeftOutTest {
    @TempDir
    private Path folder = Path.of("");

    private Path shop = Path.of("");

    @BeforeEach
    void aShop() throws IOException {
        shop = TestShop.in(folder)
                .with("orders.csv", "1003,1,Hollow Quay,LA14,6 m,three-strand-eye thimble T14,whipped,2,2026-03-05,3")
                .with("reels.csv", "R-200,LA14,L-9,80 m,,,,counted,,no")
                .path();
        edit(
                "ropes.json",
                "\"usualReel\": \"220 m\"}",
                "\"usualReel\": \"220 m\"},\n  {\"id\": \"LA14\", \"construction\": \"3-strand\", \"lay\": \"right ordinary\", \"fibre\": \"polyester\","
                        + " \"diameter\": \"14 mm\", \"layLength\": \"50 mm\", \"price\": \"1.80 EUR/m\", \"usualReel\": \"110 m\"}");
        Files.writeString(
                shop.resolve("thimbles.json"),
                """
                {"format": "bitterend/thimbles/1", "thimbles": [
                  {"id": "T14", "name": "thimble for 14 mm", "groove": "150 mm", "throatToBearing": "64 mm",
                   "ropeFrom": "12 mm", "ropeTo": "14 mm"},
                  {"id": "T20", "name": "thimble for 20 mm", "groove": "220 mm", "throatToBearing": "90 mm",
                   "ropeFrom": "18 mm", "ropeTo": "20 mm"}]}
                """);
        assertEquals(0, run("check").code(), run("check").out());
    }

    @Test
    void headOfTheCards_namesLinesWithoutOne() throws IOException {
        edit("thimbles.json", "150 mm", "150");
        assertEquals(4, run("plan", "--effort", "reproducible").code());
        String page = PageText.of(Path.of(run("sheet", "--all", "--cards").out().strip()));
        assertInOrder(page, "<b>No card:</b> Left out: orders.csv, row ", "T14", "<section");
    }

    /** A question at the end of what is left out stands for its full stop. */
    @Test
    void guessAtTheEnd_hasNoStopBehindIt() throws IOException {
        edit("orders.csv", "1003,1,Hollow Quay,LA14", "1003,1,Hollow Quay,LA15");
        assertTrue(run("plan", "--effort", "reproducible")
                .withParts(shop.toString())
                .out()
                .replaceAll("\\s+", " ")
                .contains("did you mean LA14? "));
    }

    @Test
    void lengths_endAsAPlanDoes_andSayWhyALineHasNone() throws IOException {
        edit("thimbles.json", "150 mm", "150");
        Run list = run("lengths");
        assertEquals(4, list.code(), list.err());
        assertTrue(list.out().contains("1001/1"), list.out());
        Run line = Run.of("lengths", shop.toString(), "1003/1");
        assertEquals(3, line.code(), line.err());
        assertInOrder(
                line.err(),
                "error: order line 1003/1 is left out, so it has no cut length:",
                "left out: orders.csv, row ");
        Run unknown = Run.of("lengths", shop.toString(), "1003/77");
        assertEquals(2, unknown.code(), unknown.err());
        assertTrue(unknown.err().contains("there is no order line 1003/77"), unknown.err());
    }

    /** The row first, then the orders that need it; everything else is planned. */
    @ParameterizedTest
    @CsvSource({
        "thimbles.json, 150 mm, 150, 'thimbles.json, /thimbles/0, groove'",
        "thimbles.json, 12 mm, 16 mm, 'thimbles.json, /thimbles/0, ropeTo'",
        "ropes.json, 14 mm, 14 mn, 'ropes.json, /ropes/1, diameter'",
        "ropes.json, 50 mm, 0 mm, 'ropes.json, /ropes/1, layLength'",
        "ropes.json, 1.80 EUR/m, 1.80 USD/m, 'ropes.json, /ropes/1, price'"
    })
    void rowThatSomeOrdersNeed_leavesThoseOut(String file, String was, String is, String place) throws IOException {
        edit(file, '"' + was + '"', '"' + is + '"');
        Run check = run("check");
        assertEquals(4, check.code(), check.out() + check.err());
        Run plan = run("plan", "--time", "200ms");
        assertEquals(4, plan.code(), plan.err());
        assertInOrder(
                plan.out(),
                "Left out with errors: orders.csv row 5; "
                        + place.replaceAll(", [^,]*$", "").replace(",", ""),
                "Planned: all 11 pieces");
        assertInOrder(
                Run.of("show", shop.toString(), "reasons").out().replaceAll("\\s+", " "),
                "Left out: " + place,
                "Left out: orders.csv, row 5");
        assertInOrder(plan.err(), "left out: " + place, "left out: orders.csv, row 5");
        assertFalse(plan.out().contains("1003/1.1"), plan.out());
        Run sheet = run("sheet", "--all");
        assertEquals(0, sheet.code(), sheet.err());
        assertEquals(4, run("quote", ofOneCustomer(shop.resolve("orders.csv"))).code());
    }

    @Test
    void rowThatNoOrderNeeds_isAWarning() throws IOException {
        edit("thimbles.json", "\"220 mm\"", "\"220\"");
        Run check = run("check");
        assertEquals(0, check.code(), check.out() + check.err());
        assertTrue(check.out().contains("warning: thimbles.json, /thimbles/1, groove"), check.out());
        Run plan = run("plan", "--time", "200ms");
        assertEquals(0, plan.code(), plan.err());
        assertTrue(plan.out().contains("Planned: all 13 pieces"), plan.out());
    }

    /** A plan that was made before the mistake came still prints what it can, and no command fails by itself. */
    @Test
    void rowThatBreaksAfterPlanning_isToldAtEveryUse() throws IOException {
        assertEquals(0, run("stock", "open").code());
        assertEquals(0, run("plan", "--time", "200ms").code());
        edit("ropes.json", "\"14 mm\"", "\"14 mn\"");
        for (String[] words : new String[][] {
            {"sheet"},
            {"sheet", "--tags"},
            {"stock", "post", "--all"},
            {"orders"},
            {"plan", "--time", "100ms"},
            {"plan", "--explain", "1003/1.1"},
            {"plan", "--shares"},
            {"buy"},
            {"stock", "list"}
        }) {
            Run run = run(words);
            assertTrue(run.code() != 1, String.join(" ", words) + run.err());
        }
    }

    @Test
    void brokenFile_stillStops() throws IOException {
        edit("thimbles.json", "\"thimbles\":", "\"thimbles\"");
        assertEquals(3, run("plan").code());
    }

    @Test
    void allRopesBroken_stillStop() throws IOException {
        edit("ropes.json", "\"14 mm\"", "\"14 mn\"");
        edit("ropes.json", "\"12 mm\"", "\"12 mn\"");
        assertEquals(3, run("plan").code());
    }

    /** Of two rows with one id nobody knows which is right. */
    @Test
    void idOfTwoRows_isNeither() throws IOException {
        edit("thimbles.json", "\"T20\"", "\"T14\"");
        assertEquals(4, run("check").code());
    }

    @Test
    void leftOutOrders_standInThePlanAsJsonAndOnTheSheet() throws IOException {
        TestShop test = new TestShop(shop).with("orders.csv", "1004,1,Harbour Board,DB12,five,plain,plain,1,,");
        Run plan = run("plan", "--time", "200ms", "--json");
        assertEquals(4, plan.code(), plan.err());
        assertTrue(plan.out().contains("\"leftOut\""), plan.out());
        assertTrue(plan.out().contains("\"place\": \"row 6\""), plan.out());
        assertEquals(0, run("sheet", "--all").code());
        String html = PageText.of(test.path().resolve("sheet.html"));
        assertTrue(html.contains("orders.csv, row 6, length"), "the sheet does not say what was left out");
        assertEquals(0, run("sheet", "--all", "--pdf").code());
        try (PDDocument pdf = Loader.loadPDF(shop.resolve("sheet.pdf").toFile())) {
            assertTrue(
                    new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ").contains("orders.csv, row 6, length"));
        }
    }

    @Test
    void impossibleLineOfARequest_leadsThePage_andTheOthersArePriced() throws IOException {
        Path request = folder.resolve("request.csv");
        Files.writeString(
                request,
                """
                line,customer,rope,length,end a,end b,quantity
                1,pilot boat,DB12,12 m,plain,plain,2
                2,pilot boat,DB12,five,plain,plain,2
                3,pilot boat,LA14,0.1 m,three-strand-eye thimble T14,whipped,1
                """);
        Run quote = run("quote", request.toString());
        assertEquals(4, quote.code(), quote.err());
        assertTrue(quote.err().contains("left out: request.csv, row 3, length"), quote.err());
        assertFalse(quote.out().contains("left out:"), quote.out());
        assertInOrder(quote.out(), "Caution: line 2", "row 3", "Caution: line 3", "row 4", "Line 1");
        Run customer = run("quote", request.toString(), "--customer");
        assertEquals(4, customer.code(), customer.err());
        Path out = folder.resolve("filed.json");
        Run json = run("quote", request.toString(), "--json", "--out", out.toString());
        assertEquals(4, json.code(), json.err());
        assertTrue(json.err().contains("row 3, length"), json.err());
    }

    /** The rows of a file as what one customer asks for, since a quote is for one. */
    private String ofOneCustomer(Path rows) throws IOException {
        Path request = folder.resolve("request.csv");
        Files.writeString(request, Files.readString(rows).replaceAll("(?m)^([0-9]+,[0-9]+),[^,]*", "$1,pilot boat"));
        return request.toString();
    }

    private void edit(String name, String was, String is) throws IOException {
        Path file = shop.resolve(name);
        String text = Files.readString(file);
        assertTrue(text.contains(was), name + " has no " + was);
        int at = text.indexOf(was);
        Files.writeString(file, text.substring(0, at) + is + text.substring(at + was.length()));
    }

    private static void assertInOrder(String text, String... parts) {
        int at = 0;
        for (String part : parts) {
            int found = text.indexOf(part, at);
            assertTrue(found >= 0, part + " is not there, or not in this order:\n" + text);
            at = found;
        }
    }

    private Run run(String... words) {
        java.util.List<String> args = new java.util.ArrayList<>(java.util.List.of(words));
        args.add(words[0].equals("stock") ? 2 : 1, shop.toString());
        return Run.of(args.toArray(String[]::new));
    }
}
