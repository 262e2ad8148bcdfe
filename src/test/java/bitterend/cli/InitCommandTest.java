package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A new shop folder, as its first user meets it. */
final class InitCommandTest {
    private final Path shop;

    InitCommandTest(@TempDir Path folder) {
        this.shop = folder.resolve("mole-end");
    }

    private Run init(String... options) {
        return Run.of(Stream.concat(Stream.of("init", shop.toString()), Stream.of(options))
                .toArray(String[]::new));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> inside = Files.list(shop)) {
            return inside.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--units metric",
                "--units imperial --currency USD",
                "--example",
                "--example --units imperial --currency USD --labour 60",
                "--example --currency JPY --labour 4500",
                "--example --currency KWD --labour 12.250"
            })
    void newShop_isAcceptedByCheckPlanSheetAndStock(String options) {
        assertEquals(0, init(options.split(" ")).code());
        Run check = Run.of("check", shop.toString());
        assertEquals(0, check.code(), check.out());
        assertTrue(options.contains("--example") || check.out().endsWith("0 errors, 0 warnings.\n"), check.out());
        Run plan = Run.of("plan", shop.toString(), "--time", "1s");
        assertEquals(0, plan.code(), plan.err());
        assertEquals(options.contains("--example"), plan.out().contains("Planned: all 7 pieces"), plan.out());
        assertEquals(0, Run.of("sheet", shop.toString()).code());
        assertEquals(0, Run.of("stock", "open", shop.toString()).code());
    }

    /**
     * A shop says which tools its bench has; a fid of 1/2 in rope is 11 in by the inch tool (US Coast Guard Auxiliary
     * training page) and 21 diameters, 266.7 mm, by a metric one.
     */
    @ParameterizedTest
    @CsvSource({
        "--units metric, metric, 266.7 mm",
        "--units metric --bench-tools inch, inch, 279.4 mm",
        "--units imperial, inch, 279.4 mm",
        "--units imperial --bench-tools metric, metric, 266.7 mm"
    })
    void benchTools_decideTheFid(String options, String tools, String tail) throws IOException {
        Run run = init(options.split(" "));
        assertEquals(0, run.code(), run.err());
        assertTrue(
                run.out().contains("splicers measure with " + tools + " tools; if not: \"benchTools\": \""), run.out());
        assertTrue(Files.readString(shop.resolve("shop.json")).contains("\"benchTools\": \"" + tools + "\""));
        assertEquals(tail, tailOf("1/2 in"));
    }

    /** Own fids come before table and rule: 95 mm and 165 mm are a tail of 260 mm, where 21 diameters would be 252. */
    @Test
    void whatIsNotSaid_isAskedForByAPerson_whoTypesFidsOfTheirOwn() throws IOException {
        Run run = Run.answering(
                List.of(
                        "cubits",
                        "",
                        "euro",
                        "",
                        "Bavaria",
                        "de-DE",
                        "furlongs",
                        " Inch ",
                        "12 mm 260 mm",
                        "12 mm: 95 mm + 165 mm",
                        "1/2 in: 4 in + 7.25 in",
                        "",
                        "string",
                        "laid, wire"),
                "init",
                shop.toString());
        assertEquals(0, run.code(), run.err());
        for (String expected : List.of(
                "Expected metric or imperial.",
                "Expected the code of a currency, such as EUR.",
                "Expected a place such as de-DE, en-GB or en-US.",
                "Expected kinds of rope of these, with commas between them: laid, braid,")) {
            assertTrue(run.err().contains(expected), run.err());
        }
        assertTrue(Files.readString(shop.resolve("shop.json")).contains("\"locale\": \"de-DE\""));
        assertTrue(Files.readString(shop.resolve("ropes.csv")).contains("\nWIRE-8,wire steel 8 mm,wire,steel,8 mm,"));
        assertTrue(run.err().contains("metric or inch tools? [metric] Expected metric or inch."), run.err());
        assertTrue(run.err().contains("Expected a rope with the short and the long section of its fid"), run.err());
        assertTrue(Files.readString(shop.resolve("shop.json")).contains("\"benchTools\": \"inch\""));
        assertEquals("260 mm", tailOf("12 mm"));
        assertEquals("285.75 mm", tailOf("1/2 in"));
    }

    @Test
    void bench_isAskedOnlyWhereNothingIsSaidAndSomebodyAnswers() throws IOException {
        assertEquals(
                0,
                Run.answering(List.of("inch", "", ""), "init", shop.toString(), "--json")
                        .code());
        assertTrue(Files.readString(shop.resolve("shop.json")).contains("\"benchTools\": \"metric\""));
        Path other = shop.resolveSibling("other");
        Run said = Run.answering(
                List.of("inch"),
                "init",
                "" + other,
                "--fid",
                "12 mm: 95 mm + 165 mm",
                "--units",
                "metric",
                "--currency",
                "EUR",
                "--locale",
                "de-DE",
                "--ropes",
                "braid,hmpe");
        assertEquals("", said.err());
        assertTrue(Files.readString(other.resolve("splices.json")).contains("\"long\": \"165 mm\""));
        Run nobody = init("--fid", "12 mm");
        assertEquals(2, nobody.code());
        assertTrue(nobody.err().contains("such as 12 mm: 95 mm + 165 mm"), nobody.err());
        Path third = shop.resolveSibling("third");
        Run silent = Run.answering(List.of("", "", "", "", "", ""), "init", "" + third);
        assertEquals(0, silent.code());
        assertFalse(Files.exists(third.resolve("splices.json")));
    }

    /** Every kind of rope to begin with is one that the program can use. */
    @ParameterizedTest
    @ValueSource(strings = {"metric", "imperial"})
    void everyKindOfRope_isSound(String units) {
        assertEquals(
                0,
                init("--units", units, "--ropes", "laid,braid,plaited,hmpe,wire,webbing")
                        .code());
        Run check = Run.of("check", shop.toString());
        assertEquals(0, check.code(), check.out() + check.err());
        assertTrue(check.out().endsWith("0 errors, 0 warnings.\n"), check.out());
    }

    private String tailOf(String diameter) throws IOException {
        Files.writeString(
                shop.resolve("ropes.csv"),
                """
                id,construction,fibre,diameter,price,usual reel,keep from
                DB,double braid,polyester,%s,2 EUR/m,200 m,2 m
                """
                        .formatted(diameter));
        Files.writeString(
                shop.resolve("orders.csv"),
                "order,line,rope,length,end a,end b,quantity\n1,1,DB,12 m,double-braid-eye length 300 mm,sealed,1\n");
        String lengths = Run.of("lengths", shop.toString(), "1/1", "--json").out();
        String tail = lengths.substring(lengths.indexOf("\"end A: tail\""));
        return tail.replaceAll("(?s).*?\"amount\": \"([^\"]*)\".*", "$1");
    }

    @Test
    void example_canBeBoughtForAtOnce() {
        assertEquals(0, init("--example").code());
        Run buy = Run.of("buy", shop.toString());
        assertEquals(0, buy.code(), buy.err());
    }

    @Test
    void whatIsWritten_readsAsTheGoldenFiles() throws IOException {
        Run run = init("--name", "Mole End");
        assertEquals(0, run.code(), run.err());
        run.out()
                .lines()
                .forEach(
                        line -> assertTrue(line.replace(shop.toString(), "SHOP").length() <= 80, line));
        Golden.check("cli/init.txt", run.out().replace(shop.toString(), "SHOP"));
        for (String name : names()) {
            Golden.check("cli/init/" + name, Files.readString(shop.resolve(name)));
        }
    }

    @Test
    void shop_isCalledAsItsFolderUnlessNamed() throws IOException {
        assertEquals(0, init().code());
        assertTrue(Files.readString(shop.resolve("shop.json")).contains("\"name\": \"mole-end\""));
    }

    @Test
    void emptyFolder_isTaken() throws IOException {
        Files.createDirectory(shop);
        assertEquals(0, init().code());
        assertEquals(List.of("about-the-files.txt", "orders.csv", "reels.csv", "ropes.csv", "shop.json"), names());
    }

    @Test
    void folderWithSomethingInIt_isRefusedAndLeftAsItWas() throws IOException {
        Files.createDirectory(shop);
        Files.writeString(shop.resolve("reels.csv"), "mine");
        Files.writeString(shop.resolve("notes.txt"), "mine too");
        Run run = init();
        assertEquals(3, run.code());
        assertEquals("", run.out());
        assertEquals(
                "error: " + shop + ": found \"notes.txt and 1 more\", expected a folder that is empty or not there\n"
                        + "Nothing was written.\n",
                run.err());
        assertEquals("mine", Files.readString(shop.resolve("reels.csv")));
        assertEquals(List.of("notes.txt", "reels.csv"), names());
    }

    @Test
    void fileOfThatName_isRefused() throws IOException {
        Files.writeString(shop, "mine");
        Run run = init();
        assertEquals(3, run.code());
        assertTrue(run.err().contains("found \"a file\""), run.err());
        assertEquals("mine", Files.readString(shop));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--currency euro", "--currency XXX", "--units feet", "--labour 12,50", "--labour 1.005"})
    void optionThatCannotBeRead_exitsWithTwoAndMakesNoFolder(String options) {
        Run run = init(options.split(" "));
        assertEquals(2, run.code());
        assertFalse(run.err().contains("Exception"), run.err());
        assertFalse(Files.exists(shop));
    }

    @Test
    void settingThatNoShopMayHave_exitsWithThreeAndMakesNoFolder() {
        Run run = init("--name", "two\nlines", "--labour", "-3");
        assertEquals(3, run.code());
        assertTrue(run.err().contains("name") && run.err().contains("labour"), run.err());
        assertFalse(Files.exists(shop));
    }

    @Test
    void folderThatCannotBeMade_isToldWithoutATrace() throws IOException {
        Files.writeString(shop, "a file where a folder should be");
        Run run = Run.of("init", shop.resolve("inside").toString());
        assertEquals(3, run.code());
        assertTrue(run.err().startsWith("error: cannot read or write"), run.err());
    }

    @Test
    void newShopAsJson_namesTheFolder() {
        Run run = init("--json");
        assertEquals(0, run.code());
        assertTrue(run.out().contains("\"bitterend/written/1\"") && run.out().contains("mole-end"), run.out());
    }
}
