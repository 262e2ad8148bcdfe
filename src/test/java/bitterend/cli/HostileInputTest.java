package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Text that turns what is beside it, ids that pass for one another, figures that nobody can mean. */
final class HostileInputTest {
    private static final String TURNED = "Harbour \u202EBoard";
    private final Path folder;

    HostileInputTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void directionMarks_areToldAtReadingAndShownOnEveryPage() throws IOException {
        TestShop shop = TestShop.in(folder);
        replace(shop.path().resolve("ropes.json"), "Polyester double", "Polyester \u202Edouble");
        replace(shop.path().resolve("orders.csv"), "Harbour Board", TURNED);
        replace(shop.path().resolve("reels.csv"), "P22-119", "P22\u2066-119");
        String at = shop.path().toString();
        Run check = Run.of("check", at);
        assertEquals(0, check.code(), check.err());
        String told = check.out() + check.err();
        assertTrue(told.contains("Harbour [U+202E]Board"), told);
        assertTrue(told.contains("ropes.json, /ropes/0, name"), told);
        assertTrue(told.contains("lot: found \"P22[U+2066]-119\""), told);
        Run plan = Run.of("plan", at, "--time", "1s");
        assertFalse(turns(plan.out()), plan.out());
        for (List<String> options : List.of(List.of("--csv"), List.of("--tags"), List.<String>of())) {
            Run sheet = Run.of(
                    Stream.concat(Stream.of("sheet", at), options.stream()).toArray(String[]::new));
            assertEquals(0, sheet.code(), sheet.err());
            String page = Files.readString(Path.of(sheet.out().strip()));
            assertFalse(turns(page), sheet.out());
            // Tables have no words of the customer, and the mark is no part of the lot.
            assertTrue(page.contains(options.contains("--csv") ? "P22-119" : "[U+"), sheet.out());
        }
        Run pdf = Run.of("sheet", at, "--pdf");
        try (PDDocument document = Loader.loadPDF(Path.of(pdf.out().strip()).toFile())) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("[U+202E]"), text);
            assertFalse(turns(text), text);
        }
        Path html = folder.resolve("line.html");
        Run.of("lengths", at, "1001/1", "--html", html.toString());
        assertFalse(turns(Files.readString(html)));
    }

    @Test
    void idsThatPassForOneAnother_areWarnedOf() throws IOException {
        TestShop shop = TestShop.in(folder);
        replace(
                shop.path().resolve("ropes.json"),
                "\"usualReel\": \"220 m\"}",
                "\"usualReel\": \"220 m\"}, {\"id\": \"db12\", \"construction\": \"double braid\", \"fibre\": \"nylon\","
                        + " \"diameter\": \"12 mm\", \"price\": \"2 EUR/m\", \"usualReel\": \"220 m\"}");
        Run check = Run.of(
                "check",
                shop.with("reels.csv", "r-104,DB12,P22-120,90 m,,,,,,").path().toString());
        String told = check.out() + check.err();
        assertEquals(0, check.code(), told);
        assertTrue(
                told.contains("ropes.json, /ropes/1, id: found \"db12\", expected an id that nobody takes for DB12"),
                told);
        assertTrue(told.contains("reels.csv, row 4, reel: found \"r-104\""), told);
    }

    @Test
    void cellThatIsRefused_isNotWarnedOfAsWellAndAllItsUnseenCharactersAreNamed() throws IOException {
        TestShop shop = TestShop.in(folder);
        replace(shop.path().resolve("reels.csv"), ",220 m,", ",220 m\u200F,");
        String told = Run.of("check", shop.path().toString()).out();
        assertEquals(1, told.split("U\\+200F", -1).length - 1, told);
    }

    @Test
    void picturesWithoutAStudy_areRefused() throws IOException {
        Path shop = DemoShop.copy("gannet-loft", folder);
        Run run = Run.of("buy", "" + shop, "--pictures", "" + folder.resolve("pictures"));
        assertEquals(2, run.code(), run.err());
        assertTrue(run.err().contains("add --from-history"), run.err());
    }

    @Test
    void pictures_areNeverWrittenOverOneAnother() {
        Set<String> taken = new HashSet<>();
        Set<String> written = new TreeSet<>();
        for (String name : List.of("A_B-waste.svg", "A_B-waste.svg", "a_b-waste.svg", "A_B-waste-2.svg")) {
            written.add(BuyPapers.free(name, taken).toLowerCase(java.util.Locale.ROOT));
        }
        assertEquals(4, written.size(), written.toString());
    }

    /** Each figure in each cell of every file: told with its place, or borne; never a fault of the program. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "99999999999 EUR/m",
                "999999999999 EUR",
                "30001 EUR/mm",
                "9999999999 EUR/h",
                "9999 min",
                "999999999 km",
                "20 km",
                "0.0001 mm",
                "999999999 kg/mm",
                "999999999999",
                "100000",
                "999999999 %",
                "2199-12-31",
                "1900-01-01",
                "-1",
                "29999 EUR/m"
            })
    void extremeFigures_areLocatedOrBorne(String figure) throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        for (String file : List.of("shop.json", "ropes.json", "orders.csv", "reels.csv", "offers.csv", "history.csv")) {
            Path path = shop.resolve(file);
            String before = Files.readString(path);
            for (String changed : file.endsWith("csv") ? cells(before, figure) : members(before, figure)) {
                Files.writeString(path, changed);
                asked(shop, file, changed);
            }
            Files.writeString(path, before);
        }
    }

    private static void asked(Path shop, String file, String changed) {
        Run check = Run.of("check", shop.toString());
        assertTrue(check.code() == 0 || check.code() == 3 || check.code() == 4, changed + check.out() + check.err());
        boolean sound = check.code() != 3;
        if (sound && (file.endsWith("json") || file.equals("orders.csv"))) {
            Run plan = Run.of("plan", shop.toString(), "--time", "10ms");
            assertTrue(plan.code() == 0 || plan.code() == 4, changed + plan.err());
        } else if (sound && !file.equals("reels.csv")) {
            Run value = Run.of("buy", shop.toString());
            assertTrue(value.code() != 1, changed + value.err());
        }
    }

    /** The table with the figure in one cell of its first row, for each column. */
    private static List<String> cells(String table, String figure) {
        String[] rows = table.split("\n", 3);
        String[] cells = rows[1].split(",", -1);
        return java.util.stream.IntStream.range(0, cells.length)
                .mapToObj(column -> {
                    String[] changed = cells.clone();
                    changed[column] = figure;
                    return rows[0] + "\n" + String.join(",", changed) + "\n" + rows[2];
                })
                .toList();
    }

    /** The document with the figure in one of its first members that hold one. */
    private static List<String> members(String document, String figure) {
        return java.util.regex.Pattern.compile(
                        "(\"(?:price|mass|labour|cutLoss|keepFrom|usualReel|diameter)\": \")([^\"]*)\"")
                .matcher(document)
                .results()
                .limit(8)
                .map(found -> document.substring(0, found.start())
                        + found.group(1)
                        + figure
                        + '"'
                        + document.substring(found.end()))
                .toList();
    }

    private static boolean turns(String text) {
        return text.codePoints()
                .anyMatch(each -> (each >= 0x202A && each <= 0x202E) || (each >= 0x2066 && each <= 0x2069));
    }

    private static void replace(Path file, String old, String text) throws IOException {
        Files.writeString(file, Files.readString(file).replace(old, text));
    }
}
