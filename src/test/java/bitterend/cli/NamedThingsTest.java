package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files and ropes that are named on the command line: what is not there is said with its name and where it was looked for. */
final class NamedThingsTest {
    private final Path shop;

    NamedThingsTest(@TempDir Path folder) throws IOException {
        shop = DemoShop.copy("gannet-loft", folder);
    }

    private Run run(String words) {
        return Run.of(words.replace("SHOP", shop.toString()).split(" "));
    }

    private static String flat(Run run) {
        return run.err().replaceAll("\\s+", " ");
    }

    /** One that is not in the shop folder, where a file of the same name is. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "quote SHOP orders.csv",
                "quote SHOP no/such.json",
                "plan SHOP --from no-such.json",
                "sheet no-such.json --shop SHOP",
                "buy SHOP --merge no-such.json",
                "stock count SHOP --file no-such.csv",
                "stock receive SHOP --file no-such.csv"
            })
    void fileThatIsNotThere_isSaidWithWhereItWasLookedFor(String words) {
        assertEquals(0, run("stock open SHOP").code());
        String typed = words.replaceFirst(".* (\\S+\\.(?:csv|json)).*", "$1");
        Run run = run(words);
        assertEquals(3, run.code(), run.err());
        assertTrue(
                flat(run)
                        .contains("found nothing, expected a file that is there; looked for "
                                + Path.of(typed).toAbsolutePath()),
                run.err());
        assertFalse(run.err().contains("in the shop folder"), run.err());
    }

    @Test
    void ropeThatCannotBeStudied_isNamed_withThoseThatCan() throws IOException {
        Path offers = shop.resolve("offers.csv");
        Files.write(
                offers,
                Files.readAllLines(offers).stream()
                        .filter(row -> !row.contains(",DB12,"))
                        .toList());
        String can = "expected a rope with both an offer and a past: DB10, DN20, TS14, W6";
        for (List<String> each : List.of(
                List.of("NONE", "found \"NONE\", which ropes.json does not name; "),
                List.of("ES32", "found \"ES32\", which has no past in history.csv; "),
                List.of("DB12", "found \"DB12\", which has no offer in offers.csv; "))) {
            Run run = run("buy SHOP --from-history --rope DB10 --rope " + each.get(0));
            assertEquals(3, run.code(), run.err());
            assertTrue(flat(run).contains("error: --rope: " + each.get(1) + can), run.err());
            assertEquals("", run.out());
        }
    }

    @Test
    void ropeThatNobodyKnows_hasNoValue() {
        Run run = run("value SHOP --rope NONE");
        assertEquals(3, run.code(), run.err());
        assertTrue(
                flat(run)
                        .contains(
                                "error: --rope: found \"NONE\", which ropes.json does not name; expected CD10, DB10, "),
                run.err());
        assertEquals(0, run("value SHOP --rope ES32").code());
    }

    /** The page of the sheets alone, as usual, or beside what else is asked for. */
    @Test
    void sheetAsHtml_isWrittenBesideTheOthers() throws IOException {
        assertEquals(4, run("plan SHOP --time 200ms").code());
        Run one = run("sheet SHOP --html");
        assertEquals(shop.resolve("sheet.html") + "\n", one.out());
        String page = Files.readString(shop.resolve("sheet.html"));
        Files.delete(shop.resolve("sheet.html"));
        Run more = run("sheet SHOP --html --pdf --csv");
        assertEquals(
                List.of(
                        "" + shop.resolve("sheet.csv"),
                        "" + shop.resolve("sheet.html"),
                        "" + shop.resolve("sheet.pdf")),
                more.out().lines().toList());
        assertEquals(page, Files.readString(shop.resolve("sheet.html")));
        Run cards = run("sheet SHOP --cards --pdf --html");
        assertEquals(
                List.of("" + shop.resolve("cards.html"), "" + shop.resolve("cards.pdf")),
                cards.out().lines().toList());
        Files.delete(shop.resolve("sheet.html"));
        assertEquals(0, run("sheet SHOP --pdf").code());
        assertFalse(Files.exists(shop.resolve("sheet.html")));
    }
}
