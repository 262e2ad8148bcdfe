package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.Golden;
import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;
import picocli.CommandLine;

/** The command line as its user meets it: words in, text and an exit code out. */
final class CommandLineTest {
    private final Path folder;

    CommandLineTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "init --help",
                "import --help",
                "check --help",
                "lengths --help",
                "sheet --help",
                "measure --help",
                "calibrate --help",
                "plan --help",
                "quote --help",
                "quote list --help",
                "quote show --help",
                "quote revise --help",
                "quote sent --help",
                "quote accept --help",
                "quote decline --help",
                "quote back --help",
                "quote compare --help",
                "quote learn --help",
                "buy --help",
                "value --help",
                "orders --help",
                "orders deliver --help",
                "orders note --help",
                "stock --help"
            })
    void help_readsAsTheGoldenFileWithinEightyColumns(String words) {
        Run run = Run.of(words.split(" "));
        assertEquals(0, run.code());
        run.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        Golden.check("cli/" + words.replace(" ", "").replace("--", "-") + ".txt", run.out());
    }

    /** People say help in front as well as behind. */
    @Test
    void help_isSaidInFrontToo() {
        assertEquals(Run.of("--help"), Run.of("help"));
        assertEquals(Run.of("plan", "--help"), Run.of("help", "plan"));
        assertEquals(Run.of("stock", "cut", "--help"), Run.of("help", "stock", "cut"));
    }

    /** Whatever the command line knows stands in its help, and has a help of its own. */
    @Test
    void help_namesEveryCommandThatTheCommandLineKnows() {
        List<String> names =
                new ArrayList<>(Main.commandLine(quiet()).getSubcommands().keySet());
        CommandLine whole = Main.whole(quiet());
        assertTrue(names.size() > 10, names.toString());
        List<List<String>> paths = new ArrayList<>(List.of(List.of()));
        for (int at = 0; at < paths.size(); at++) {
            List<String> path = paths.get(at);
            CommandLine command = whole;
            for (String name : path) {
                command = Objects.requireNonNull(command.getSubcommands().get(name));
            }
            List<String> words = new ArrayList<>(path);
            words.add("--help");
            Run run = Run.of(words.toArray(String[]::new));
            assertEquals(0, run.code(), words + run.err());
            run.out().lines().forEach(line -> assertTrue(line.length() <= 80, words + line));
            for (String name : command.getSubcommands().keySet()) {
                assertTrue(run.out().contains("\n  " + name), words + " does not name " + name);
                List<String> inner = new ArrayList<>(path);
                inner.add(name);
                paths.add(inner);
            }
        }
    }

    private static Terminal quiet() {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        return new Terminal(nowhere, nowhere, StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "plam",
                "plan",
                "plan a b",
                "plan a --jsn",
                "plan a --day tomorrow",
                "plan a --units feet",
                "plan a --time soon",
                "lengths"
            })
    void badCommandLine_exitsWithTwoAndSaysWhereHelpIs(String words) {
        Run run = Run.of(words.isEmpty() ? new String[0] : words.split(" "));
        assertEquals(2, run.code());
        assertEquals("", run.out());
        assertTrue(run.err().contains("--help"), run.err());
        assertFalse(run.err().contains("Exception"), run.err());
    }

    @Test
    void misspeltCommand_isSuggested() {
        assertTrue(Run.of("plam", "x").err().contains("Did you mean plan?"));
    }

    @Test
    void folderThatIsNoShop_exitsWithThreeAndNamesIt() {
        Run run = Run.of("plan", folder.resolve("nowhere").toString());
        assertEquals(3, run.code());
        assertTrue(run.err().contains("nowhere"), run.err());
        assertEquals("", run.out());
    }

    @Test
    void plan_isWrittenIntoTheShopFolder() throws IOException {
        Path shop = TestShop.in(folder).path();
        Run run = Run.of("plan", shop.toString(), "--time", "1s");
        assertEquals(0, run.code(), run.err());
        assertTrue(Files.readString(shop.resolve("plans/1.json")).contains("bitterend/plan/2"));
        assertTrue(
                run.out().startsWith("Cutting plan 1 for 2026-03-02, Northgate Loft\nPlanned: all 11 pieces"),
                run.out());
        run.out().replace(shop.toString(), "SHOP").lines().forEach(line -> assertTrue(line.length() <= 80, line));
    }

    @Test
    void planAsJson_isTheFile() throws IOException {
        Path shop = TestShop.in(folder).path();
        Path out = folder.resolve("elsewhere.json");
        Run run = Run.of("plan", shop.toString(), "--json", "--time", "1s", "--out", out.toString());
        assertEquals(Files.readString(out), run.out());
        assertFalse(Files.exists(shop.resolve("plans")));
    }

    @Test
    void planThatCannotPlaceAPiece_exitsWithFourAndIsWritten() throws IOException {
        TestShop shop = TestShop.in(folder).with("orders.csv", "1003,1,Harbour Board,DB12,400 m,plain,plain,1,,");
        Run run = Run.of("plan", shop.path().toString(), "--time", "1s");
        assertEquals(4, run.code());
        assertTrue(run.out().contains("Not planned: 1003/1.1, 400.000 m of DB12. Receive"), run.out());
        Run reasons = Run.of("show", shop.path().toString(), "reasons");
        assertTrue(reasons.out().contains("What would help"), reasons.out());
        assertTrue(Files.exists(shop.path().resolve("plans/1.json")));
    }

    @Test
    void reasonOfAnUnplannedPiece_isToldInTheUnitsOfThePage() throws IOException {
        TestShop shop = TestShop.in(folder).with("orders.csv", "1003,1,Harbour Board,DB12,400 m,plain,plain,1,,");
        String path = shop.path().toString();
        assertTrue(onOneLine(Run.of("plan", path, "--time", "1s")).contains("Receive at least 400.000 m of DB12"));
        String metric = onOneLine(Run.of("show", path, "reasons"));
        assertTrue(metric.contains("receive at least 400.000 m of DB12"), metric);
        Run screen = Run.of("plan", path, "--time", "1s", "--units", "imperial");
        assertTrue(onOneLine(screen).contains("Receive at least 1312 ft 4 1/16 in of DB12"), screen.out());
        String imperial = onOneLine(Run.of("show", path, "reasons", "--units", "imperial"));
        assertTrue(imperial.contains("receive at least 1312 ft 4 1/16 in of DB12"), imperial);
        assertTrue(
                Files.readString(shop.path().resolve("plans/2.json")).contains("receive at least 400.000 m of DB12"));
    }

    @Test
    void errors_areAllToldAndNothingIsWritten() throws IOException {
        TestShop shop = TestShop.in(folder)
                .with("orders.csv", "1003,1,Harbour Board,DB99,12 m,plain,plain,1,,")
                .with("reels.csv", "R-106,DB12,P1,-3 m,,,,metered,,no");
        Run plan = Run.of("plan", shop.path().toString());
        assertEquals(3, plan.code());
        assertEquals("", plan.out());
        assertTrue(plan.err().contains("DB99") && plan.err().contains("-3 m"), plan.err());
        assertFalse(Files.exists(shop.path().resolve("plans/1.json")));
        Run check = Run.of("check", shop.path().toString());
        assertEquals(3, check.code());
        assertTrue(check.out().contains("DB99") && check.out().contains("-3 m"), check.out());
    }

    @Test
    void orderThatCannotBeMade_leavesItselfOutAndNoOther() throws IOException {
        TestShop shop = TestShop.in(folder)
                .with(
                        "orders.csv",
                        "1003,1,Harbour Board,DB12,0.6 m,double-braid-eye length 200 mm,"
                                + "double-braid-eye length 200 mm,1,,")
                .with("orders.csv", "1003,2,Harbour Board,DB12,five,plain,plain,1,,");
        Run plan = Run.of("plan", shop.path().toString(), "--time", "1s");
        assertEquals(4, plan.code(), plan.err());
        String page = onOneLine(plan);
        int leads = page.indexOf("Left out with errors: orders.csv row 5; orders.csv row 6.");
        assertTrue(leads > 0 && leads < page.indexOf("Planned: all 11 pieces"), page);
        String reasons = onOneLine(Run.of("show", shop.path().toString(), "reasons"));
        assertTrue(reasons.contains("Left out: orders.csv, row 5, length"), reasons);
        assertTrue(reasons.contains("a finished length of at least 0.904 m"), reasons);
        assertTrue(reasons.contains("Left out: orders.csv, row 6, length"), reasons);
        assertTrue(plan.err().contains("0 errors, 2 lines left out"), plan.err());
        assertEquals(4, Run.of("check", shop.path().toString()).code());
    }

    @Test
    void setWithALineLeftOut_isLeftOutWhole() throws IOException {
        TestShop shop = TestShop.in(folder);
        Files.writeString(
                shop.path().resolve("orders.csv"),
                """
                order,line,rope,length,end a,set
                1,1,DB12,12 m,plain,pair
                1,2,DB12,0.3 m,double-braid-eye length 200 mm,pair
                1,3,DB12,5 m,plain,
                """);
        Run plan = Run.of("plan", shop.path().toString(), "--time", "1s");
        assertEquals(4, plan.code(), plan.err());
        String page = onOneLine(plan);
        assertTrue(page.contains("Left out with errors: orders.csv row 2; orders.csv row 3."), page);
        assertTrue(page.contains("Planned: all 1 piece"), page);
    }

    @Test
    void check_saysWhatIsThere() throws IOException {
        Run run = Run.of("check", TestShop.in(folder).path().toString());
        assertEquals(0, run.code());
        Golden.check("cli/check.txt", run.out());
    }

    @Test
    void idsStandAsAPersonSortsThem_onThePlanTheListAndTheRack() throws IOException {
        TestShop shop = TestShop.in(folder)
                .with("orders.csv", "1003,10,Harbour Board,DB12,210 m,plain,plain,1,,")
                .with("orders.csv", "1003,9,Harbour Board,DB12,210 m,plain,plain,1,,")
                .with("reels.csv", "R-10,DB12,P1,220 m,,,,nominal,,yes")
                .with("reels.csv", "R-9,DB12,P2,220 m,,,,nominal,,yes");
        String path = shop.path().toString();
        assertInOrder(Run.of("lengths", path), "1003/9", "1003/10");
        assertInOrder(Run.of("plan", path, "--time", "1s"), "R-9 ", "R-10 ");
        assertInOrder(Run.of("show", path, "tables"), "Reel R-9:", "Reel R-10:");
        assertEquals(0, Run.of("stock", "open", path).code());
        assertInOrder(Run.of("stock", "list", path), "R-9 ", "R-10 ", "R-104 ");
    }

    private static String onOneLine(Run run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static void assertInOrder(Run run, String... parts) {
        int from = 0;
        for (String part : parts) {
            from = run.out().indexOf(part, from) + 1;
            assertTrue(from > 0, part + " is not where it should be:\n" + run.out() + run.err());
        }
    }

    @Test
    void lengths_listEveryLineAndDeriveOne() throws IOException {
        String shop = TestShop.in(folder).path().toString();
        Golden.check("cli/lengths.txt", Run.of("lengths", shop).out().replace(shop, "SHOP"));
        Golden.check("cli/lengths-1001-1.txt", Run.of("lengths", shop, "1001/1").out());
        Golden.check(
                "cli/lengths-1001-1-imperial.txt",
                Run.of("lengths", shop, "1001/1", "--units", "imperial").out());
    }

    @Test
    void derivationAsAPage_isWellFormedAndAddsUp() throws Exception {
        Path page = folder.resolve("page.html");
        Run run = Run.of("lengths", "demo-data/eider-shed", "E-32/1", "--html", page.toString());
        assertEquals(0, run.code(), run.err());
        String html = Files.readString(page).replace("<!DOCTYPE html>", "");
        String text = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(html)))
                .getDocumentElement()
                .getTextContent()
                .replace((char) 160, (char) 32);
        assertTrue(text.contains("finished length 6 m") && text.contains("6.720 m"), text);
    }

    @Test
    void sheetOfAPlanThatWasTamperedWith_isRefused() throws IOException {
        TestShop shop = TestShop.in(folder);
        assertEquals(0, Run.of("plan", shop.path().toString(), "--time", "1s").code());
        Path plan = shop.path().resolve("plans/1.json");
        String sound = Files.readString(plan);
        String tampered = sound.replaceFirst("\"to\" ?: ?\"([0-9]+) mm\"", "\"to\": \"1$1 mm\"");
        assertFalse(sound.equals(tampered));
        Files.writeString(plan, tampered);
        Run run = Run.of("sheet", shop.path().toString());
        assertEquals(3, run.code());
        assertTrue(run.err().contains("not sound"), run.err());
        assertFalse(Files.exists(shop.path().resolve("sheet.html")));
    }

    @Test
    void unknownOrderLine_exitsWithTwoAndShowsOne() throws IOException {
        Run run = Run.of("lengths", TestShop.in(folder).path().toString(), "1001");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("1001/1"), run.err());
    }

    @Test
    void jsonAnswers_carryTheirFormat() throws IOException {
        String shop = TestShop.in(folder).path().toString();
        assertTrue(Run.of("check", shop, "--json").out().contains("\"bitterend/findings/1\""));
        assertTrue(Run.of("lengths", shop, "--json").out().contains("\"bitterend/lengths/1\""));
    }

    @Test
    void planThatCannotBeWritten_isToldWithoutATrace() throws IOException {
        Path shop = TestShop.in(folder).path();
        Run run = Run.of(
                "plan",
                shop.toString(),
                "--out",
                folder.resolve("no/such/folder/plan.json").toString());
        assertEquals(2, run.code(), "seen before the work");
        assertFalse(run.err().contains("best "), run.err());
        assertEquals(
                List.of(),
                run.err().lines().filter(line -> line.startsWith("\tat")).toList());
        assertTrue(run.err().contains("no/such/folder"), run.err());
    }
}
