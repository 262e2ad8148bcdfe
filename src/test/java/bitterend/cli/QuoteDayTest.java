package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A request from the quote to the posted plan and back, on the command line, in the demo loft. */
final class QuoteDayTest {
    private static final List<String> INSIDE = List.of(
            "cost",
            "waste",
            "margin",
            "overhead",
            "labour",
            "spoil",
            "scrap",
            "drawn",
            "dual",
            "stable",
            "minutes",
            "setting");

    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @BeforeEach
    void copyDemo() throws IOException {
        Path copy = DemoShop.copy("gannet-loft", folder);
        shop = copy.toString();
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err());
        return run;
    }

    private String request(String name) {
        return Path.of(shop, "requests", name).toString();
    }

    @Test
    void customersPage_readsAsTheGoldenFile() {
        Golden.check(
                "cli/quote-customer.txt",
                run(0, "quote", shop, request("Q-2602.json"), "--customer").out());
    }

    /** Freight by weight is in it: 600 ft of 36.0 lb/100 ft are 97.976 kg, at 0.18 EUR/kg 17.64 EUR a reel. */
    @Test
    void filePage_saysWhatIsDrawnWastedAndCharged() {
        String page = run(0, "quote", shop, request("Q-2602.json")).out();
        for (String words : List.of(
                "not for the customer",
                "rope in the pieces       257.94   42.99",
                "waste and reel handling   32.22    5.37",
                "price                    793.74  132.29",
                "drawn     63.336  10.556",
                "alone     32.22        32.22  32.22",
                "Charged: waste alone, 290.16 EUR",
                "proven the least")) {
            assertTrue(page.contains(words), words + " not in\n" + page);
        }
        page.lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void customersPage_showsNoCostWasteOrMargin() {
        String inside = run(0, "quote", shop, request("Q-2601.csv")).out();
        String page = run(0, "quote", shop, request("Q-2601.csv"), "--customer").out();
        String json = run(0, "quote", shop, request("Q-2601.csv"), "--customer", "--json")
                .out();
        for (String shown : List.of(page, json)) {
            hasNone(INSIDE, shown);
            hasNone(List.of("rounding", "139.8"), shown);
        }
        Matcher items = Pattern.compile("(?m)^(?:rope|waste|labour|setting|spoil|over|margin).*? +([0-9]+\\.[0-9]{2}) ")
                .matcher(inside);
        int found = 0;
        while (items.find()) {
            found++;
            assertFalse(page.contains(" " + items.group(1)), items.group());
        }
        assertTrue(found >= 15, found + " inside figures");
    }

    private static void hasNone(List<String> words, String shown) {
        for (String word : words) {
            assertFalse(shown.toLowerCase(Locale.ROOT).contains(word), word + " in\n" + shown);
        }
    }

    private static void showsNothingOfTheInside(String shown) {
        hasNone(INSIDE, shown);
        hasNone(List.of("whole price", "139.8", "139810"), shown);
        assertTrue(shown.contains("131.59") && shown.contains("2520.68"), shown);
    }

    @Test
    void customersHtmlAndPdf_showNothingOfTheInsideEither() throws IOException {
        Path html = folder.resolve("quote.html");
        Path pdf = folder.resolve("quote.pdf");
        run(
                0,
                "quote",
                shop,
                request("Q-2601.csv"),
                "--customer",
                "--html",
                html.toString(),
                "--pdf",
                pdf.toString(),
                "--paper",
                "Letter");
        String page = Files.readString(html);
        assertFalse(
                Pattern.compile("(src|href)=\"http|url\\(http").matcher(page).find(), "opens without a network");
        showsNothingOfTheInside(page.substring(page.indexOf("<body>")));
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            showsNothingOfTheInside(new PDFTextStripper().getText(document));
        }
    }

    @Test
    void namesOfARequest_areEscaped() throws IOException {
        Path odd = folder.resolve("odd.csv");
        Files.writeString(odd, "line,customer,rope,length\n1,<b>Sons & Co</b>,DB12,5 m\n");
        Path html = folder.resolve("odd.html");
        run(0, "quote", shop, odd.toString(), "--html", html.toString());
        String page = Files.readString(html);
        assertTrue(page.contains("Sons &amp; Co"), "escaped");
        assertFalse(page.contains("<b>Sons"), "escaped");
    }

    @Test
    void quoteIsFollowedThroughPlanAndPostingToTheComparison() throws IOException {
        String filed = folder.resolve("filed.json").toString();
        run(0, "quote", shop, request("Q-2602.json"), "--out", filed);
        DemoShop.order(
                Path.of(shop),
                "Q-2602,1,sail training brig Whimbrel,MA-35,,31 ft 6 in,,three-strand-eye length 14 in,whipped,,6"
                        + ",2026-03-04,2,,,,,,,,,,from the quote");
        run(0, "stock", "open", shop);
        Run before = run(4, "quote", "compare", shop, filed, "--json");
        assertTrue(before.out().contains("\"notCompared\""), before.out());
        assertFalse(before.out().contains("ropes"), "nothing is compared before something is posted");
        assertTrue(before.out().contains("is posted yet"), before.out());
        assertTrue(
                run(3, "quote", "compare", shop, filed, "--order", "NOPE").err().contains("no order NOPE"));
        Run plan = Run.of("plan", shop, "--time", "2s");
        assertTrue(plan.code() == 0 || plan.code() == 4, plan.err());
        assertTrue(run(0, "plan", shop, "--shares").out().contains("What each order caused"));
        Posted.whole(shop, "Ada");
        String page = run(0, "quote", "compare", shop, filed).out();
        Matcher quoted = Pattern.compile("MA-35 +quoted +(\\d+) +(\\S+)").matcher(page);
        Matcher posted = Pattern.compile(" posted +(\\d+) +(\\S+)").matcher(page);
        assertTrue(quoted.find() && posted.find(), page);
        assertEquals("6", quoted.group(1));
        assertEquals("6", posted.group(1));
        assertEquals(quoted.group(2), posted.group(2), "pieces and cut loss are what was quoted");
        assertTrue(page.contains("Labour, setting up apart: 5 h quoted, none booked: it counts as quoted."), page);
        for (String minutes : new String[] {"55", "40"}) {
            run(0, "measure", shop, "Q-2602/1.1", "--came-out", "31 ft 6 in", "--passed", "--minutes", minutes);
        }
        run(0, "measure", shop, "Q-2602/1.2", "--came-out", "31 ft 6 in", "--passed");
        String booked = run(0, "quote", "compare", shop, filed).out().replaceAll("\\s+", " ");
        assertTrue(
                booked.contains(
                        "5 h quoted, 5 h 45 min posted; minutes are booked for 1 of 6 pieces, the others count"),
                booked);
        String json = run(0, "quote", "compare", shop, filed, "--json").out().replaceAll("\\s+", " ");
        assertTrue(
                json.contains("\"minutesQuoted\": 300, \"minutesPosted\": 345, \"minutesBookedForPieces\": 1"), json);
        String trace = run(0, "stock", "trace", shop, "Q-2602/1.1").out().replaceAll("\\s+", " ");
        assertTrue(trace.contains("spliced, 31 ft 6 in, in 55 min"), trace);
    }

    /** Eyes in DB12 are counted at the mean of what was booked for them, not at what splices.json says. */
    @Test
    void minutesOfEnds_areFiledAsTheQuoteCountedThem() throws IOException {
        Path asked = folder.resolve("asked.csv");
        Files.writeString(
                asked,
                "line,rope,length,end a,end b\n1,DB12,12 m,double-braid-eye length 90 mm,double-braid-eye thimble T12\n");
        String json = run(0, "quote", shop, asked.toString(), "--json", "--time", "100ms")
                .out();
        List<Integer> minutes = Pattern.compile("\"minutes\": (\\d+)")
                .matcher(json)
                .results()
                .map(found -> Integer.valueOf(found.group(1)))
                .toList();
        assertEquals(3, minutes.size(), json);
        assertEquals(minutes.get(0), minutes.get(1) + minutes.get(2), "the line and its two ends");
    }

    /** The demo loft has offers and past weeks: three views of the waste, none of them the same. */
    @Test
    void threeViewsOfTheWaste_standSideBySide() {
        String page = run(0, "quote", shop, request("Q-2601.csv")).out();
        String rope = page.substring(page.indexOf("DN20, double braid nylon"));
        assertTrue(
                Pattern.compile("alone +41\\.90 +41\\.90 +41\\.90 ")
                        .matcher(rope)
                        .find(),
                rope);
        assertTrue(
                Pattern.compile("marginal +-?[0-9]+\\.[0-9]{2} +").matcher(rope).find(), rope);
        assertTrue(Pattern.compile("usual +.* 25 weeks").matcher(rope).find(), rope);
        assertTrue(rope.contains("Stable: "), rope);
    }

    @Test
    void cheaperLengthWithinTheLeeway_isTold() {
        Run run = run(0, "quote", shop, request("Q-2603.csv"), "--time", "500ms");
        assertTrue(
                run.out()
                        .replaceAll("\\s+", " ")
                        .contains("Line 1: 36.2 m costs about 12 times the waste of 35.6 m (51.22 EUR against 4.28"),
                run.out());
    }

    @Test
    void orderOfTheBook_isPricedWithoutAFile() {
        Run run = run(0, "quote", shop, "--order", "G-2101", "--time", "500ms");
        assertTrue(run.out().contains("ketch Brambling"), run.out());
        assertTrue(run(3, "quote", shop, "--order", "nobody").err().contains("no order nobody"));
    }

    @Test
    void faultyRequest_isLocatedAndNothingIsPriced() throws IOException {
        Path bad = folder.resolve("bad.csv");
        Files.writeString(
                bad,
                "line,rope,length,fewest,quantity,most,hardware\n1,DB12,5 m,9,4,5,dear\n2,DB13,5,,,,\n1,DB12,900 m,,,,\n");
        Run run = run(3, "quote", shop, bad.toString());
        assertEquals("", run.out());
        assertTrue(run.err().contains("bad.csv, row 2, fewest"), run.err());
        assertTrue(run.err().contains("bad.csv, row 2, hardware"), run.err());
        assertTrue(run.err().contains("bad.csv, row 3, rope"), run.err());
        assertTrue(run.err().contains("bad.csv, row 4, line"), run.err());
    }

    @Test
    void pieceLongerThanTheReelsBought_isRefused() throws IOException {
        Path bad = folder.resolve("long.csv");
        Files.writeString(bad, "line,rope,length\n1,DB12,900 m\n");
        Run run = run(3, "quote", shop, bad.toString());
        assertTrue(run.err().contains("no longer than the longest reel"), run.err());
    }

    @Test
    void lineThatIsLeftOut_isSaidOnce_andNotAboveTheCustomersPage() throws IOException {
        Path mixed = folder.resolve("mixed.csv");
        Files.writeString(
                mixed,
                "line,rope,length,end a,end b\n1,DB12,5 m,sealed,sealed\n2,DB13,5 m,,\n3,DB12,900 m,sealed,sealed\n");
        Run run = run(4, "quote", shop, mixed.toString(), "--customer", "--accept", "Ann");
        assertEquals(2, run.err().split("left out: ", -1).length - 1, run.err());
        assertFalse(run.out().contains("left out: "), run.out());
        assertTrue(run.err().contains("that can be had, ") && run.err().contains(" m\n"), run.err());
    }

    @Test
    void quoteWithoutARequest_isABadCommandLine() {
        assertTrue(run(2, "quote", shop).err().contains("--help"));
        assertTrue(run(2, "quote").err().contains("--help"));
    }
}
