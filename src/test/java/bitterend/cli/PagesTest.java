package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.report.Tape;
import bitterend.report.page.Ink;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** Whatever the command line prints as a page is to be had as HTML and as PDF. */
final class PagesTest {
    @TempDir
    private Path folder = Path.of("");

    /** Commands that answer with a page; the rest book, make files, or list what is wrong with the input. */
    private static final Set<String> PAGES = Set.of(
            "buy",
            "calibrate",
            "check",
            "import",
            "lengths",
            "measure",
            "orders",
            "orders deliver",
            "orders note",
            "plan",
            "quote",
            "quote compare",
            "quote learn",
            "quote list",
            "quote revise",
            "quote show",
            "reorder",
            "show",
            "stock claims",
            "stock count",
            "stock gauge",
            "stock history",
            "stock idle",
            "stock list",
            "stock order",
            "stock receive",
            "stock short",
            "stock trace",
            "stock verify",
            "value");

    @Test
    void everyPage_isOfferedAsHtmlAndPdf() {
        assertEquals(new TreeSet<>(PAGES), having("--paper", "--html", "--pdf", "--json"));
    }

    private static Set<String> having(String... options) {
        Set<String> found = new TreeSet<>();
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
        Terminal quiet = new Terminal(nowhere, nowhere, StandardCharsets.UTF_8, Ink.PLAIN, Tape.DRAWN);
        collect(Main.whole(quiet), "", Set.of(options), found);
        return found;
    }

    private static void collect(CommandLine command, String path, Set<String> options, Set<String> found) {
        if (command.getCommandSpec().optionsMap().keySet().containsAll(options)
                && !command.getCommandSpec().optionsMap().containsKey("--cards")) {
            found.add(path);
        }
        command.getSubcommands().forEach((name, inner) -> collect(inner, (path + " " + name).strip(), options, found));
    }

    @Test
    void page_saysOnPaperWhatItSaysOnTheTerminal() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        assertEquals(0, Run.of("stock", "open", "" + shop).code());
        assertEquals(0, Run.of("plan", "" + shop, "--effort", "reproducible").code());
        same("show", "" + shop);
        for (String part : List.of("tables", "reasons", "money", "E7")) {
            same("show", "" + shop, part);
        }
        assertEquals(
                0,
                Run.of("stock", "post", "" + shop, "--reel", "E7", "--reel", "E8", "--reel", "E10")
                        .code());
        same("plan", "" + shop, "--explain", "E7");
        same("plan", "" + shop, "--shares", "--plan", "1");
        same("orders", "" + shop);
        same("stock", "list", "" + shop);
        same("stock", "history", "" + shop, "E8");
        same("stock", "trace", "" + shop, "E-32/1.1");
        same("stock", "trace", "" + shop, "--lot", "12");
        same("stock", "verify", "" + shop);
        same("reorder", "" + shop);
        Path proposal = Files.writeString(folder.resolve("proposal.csv"), "offer,quantity\nB12-200,2\n");
        same("stock", "order", "" + shop, "" + proposal);
        same("stock", "idle", "" + shop, "--weeks", "2");
        same("stock", "claims", "" + shop);
        Path counted = folder.resolve("count.csv");
        Files.writeString(counted, "reel,counted\nE9,150 m\nE99,12 m\n");
        same("stock", "count", "" + shop, "--file", "" + counted);
        Path came = folder.resolve("came.csv");
        Files.writeString(came, DayInTheShop.CAME);
        same("stock", "receive", "" + shop, "--file", "" + came);
        same("calibrate", "demo-data/gannet-loft");
        same("check", "" + shop);
        same("lengths", "" + shop);
        same("lengths", "" + shop, "E-32/1");
        same("orders", "deliver", "" + shop, "E-32", "--unpassed");
    }

    /** Every word of the terminal's page stands in the HTML, where a hint names no folder, and the PDF is one. */
    private void same(String... words) throws IOException {
        Path html = folder.resolve("page.html");
        Path pdf = folder.resolve("page.pdf");
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of("--html", "" + html, "--pdf", "" + pdf));
        Run run = Run.of(all.toArray(String[]::new));
        assertEquals(0, run.code(), all + run.err());
        String page = Files.readString(html)
                .replaceAll("(?s)<style>.*?</style>", "")
                .replaceAll("<[^>]*>", " ")
                .replace("&lt;", "<")
                .replace("&amp;", "&")
                .replace("&#39;", "'")
                .replace("&#34;", "\"");
        Set<String> printed = new TreeSet<>(Arrays.asList(page.split("\\s+")));
        String shop = folder.resolve("eider-shed").toString();
        for (String word : run.out().split("\\s+")) {
            boolean there = printed.contains(word) || page.contains(word) || page.contains(word.replace(shop, "SHOP"));
            assertTrue(word.matches("-*") || there, word + " of " + all + page);
        }
        assertTrue(run.err().contains("written: " + html), run.err());
        assertTrue(Files.readString(pdf, StandardCharsets.ISO_8859_1).startsWith("%PDF-"), all.toString());
        Files.delete(html);
        Files.delete(pdf);
    }

    @Test
    void page_isNeverWrittenOverAFileOfTheShop() throws IOException {
        Path shop = DemoShop.copy("eider-shed", folder);
        String before = Files.readString(shop.resolve("orders.csv"));
        for (String option : List.of("--html", "--pdf")) {
            Run run = Run.of("plan", "" + shop, option, "" + shop.resolve("orders.csv"));
            assertEquals(2, run.code());
            assertTrue(run.err().contains("expected a file that ends in ." + option.substring(2)), run.err());
        }
        assertEquals(before, Files.readString(shop.resolve("orders.csv")));
        assertFalse(Files.exists(shop.resolve("plans")), "nothing was planned");
    }
}
