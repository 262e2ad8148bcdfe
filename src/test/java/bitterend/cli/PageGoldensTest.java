package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bitterend.Golden;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A day of the small demo loft, page by page, as people read it in metric and imperial units. What differs from run to
 * run (the clock, who works at the machine, the identity of the ledger) is blanked out.
 */
final class PageGoldensTest {
    private static final Pattern CLOCK = Pattern.compile("(?<![\\d:])\\d\\d:\\d\\d(?![\\d:])");

    private static final Pattern HEAD = Pattern.compile("head of the ledger: \\S+");

    @TempDir
    private Path folder = Path.of("");

    private String shop = "";

    @Test
    void pagesOfADay_readAsTheGoldenFiles() throws IOException {
        shop = DemoShop.copy("eider-shed", folder).toString();
        orderMoreThanThereIs();
        run(0, "stock", "open", shop, "--who", "Ada");
        page(4, "plan", "plan", shop, "--effort", "reproducible");
        page(0, "show-tables", "show", shop, "tables");
        page(0, "show-week", "show", shop, "week");
        page(0, "show-reasons", "show", shop, "reasons");
        page(0, "show-money", "show", shop, "money");
        page(0, "show-reel", "show", shop, "E7");
        page(0, "explain-piece", "plan", shop, "--explain", "E-31/1.1");
        page(0, "explain-undone", "plan", shop, "--explain", "E-33/1.1");
        page(0, "explain-reel", "plan", shop, "--explain", "E9");
        page(0, "shares", "plan", shop, "--shares");
        page(0, "value", "value", shop);
        page(4, "buy", "buy", shop, "--time", "90s");
        run(0, "stock", "post", shop, "--reel", "E8", "--plan", "1", "--who", "Ada");
        page(0, "stock-list", "stock", "list", shop);
        page(0, "stock-history", "stock", "history", shop, "E8");
        page(0, "stock-trace-piece", "stock", "trace", shop, "E-32/1.1");
        page(0, "stock-trace-lot", "stock", "trace", shop, "--lot", "12");
        page(0, "stock-verify", "stock", "verify", shop);
        page(0, "orders", "orders", shop);
    }

    /** One piece longer than anything to be had, and three that need new reels. */
    private void orderMoreThanThereIs() throws IOException {
        Files.writeString(
                Path.of(shop, "orders.csv"),
                """
                E-33,1,dredger Sanderling,BRAID-12,260 m,,,1,2026-03-04,5,,,
                E-34,1,dredger Sanderling,LAID-14,150 m,,,3,2026-03-05,5,,,
                """,
                StandardOpenOption.APPEND);
    }

    @Test
    void pagesOfAQuote_readAsTheGoldenFiles() throws IOException {
        shop = DemoShop.copy("gannet-loft", folder).toString();
        String filed = folder.resolve("filed.json").toString();
        String request = Path.of(shop, "requests", "Q-2602.json").toString();
        Path orders = Path.of(shop, "orders.csv");
        String headings = Files.readAllLines(orders).get(0) + "\n";
        Files.delete(Path.of(shop, "pins.csv"));
        Files.writeString(orders, headings);
        run(0, "quote", shop, request, "--out", filed);
        page(0, "quote-inside", "quote", shop, request);
        DemoShop.order(
                Path.of(shop),
                "Q-2602,1,sail training brig Whimbrel,MA-35,,31 ft 6 in,,three-strand-eye length 14 in,whipped,,6"
                        + ",2026-03-04,2,,,,,,,,,,from the quote");
        run(0, "stock", "open", shop);
        run(0, "plan", shop, "--effort", "reproducible");
        run(0, "stock", "post", shop, "--all", "--who", "Ada");
        page(0, "quote-compare", "quote", "compare", shop, filed);
    }

    @Test
    void studyOfPastWeeks_readsAsTheGoldenFile() throws IOException {
        shop = DemoShop.copy("gannet-loft", folder).toString();
        page(
                0,
                "study",
                "buy",
                shop,
                "--from-history",
                "--rope",
                "DB12",
                "--scenarios",
                "6",
                "--weeks",
                "4",
                "--threads",
                "1");
    }

    private void page(int code, String name, String... args) {
        for (String units : List.of("metric", "imperial")) {
            List<String> all = new ArrayList<>(List.of(args));
            all.addAll(List.of("--units", units));
            String page = run(code, all.toArray(String[]::new)).out();
            page = CLOCK.matcher(page)
                    .replaceAll("hh:mm")
                    .replace("" + LocalDate.now(ZoneId.systemDefault()), "TODAY     ");
            page = HEAD.matcher(page).replaceAll("head of the ledger: HEAD");
            Golden.check(
                    String.format(Locale.ROOT, "pages/%s-%s.txt", name, units),
                    page.replace(shop, "SHOP").replaceAll("(?m) +$", ""));
        }
    }

    private static Run run(int code, String... args) {
        Run run = Run.of(args);
        assertEquals(code, run.code(), run.err());
        return run;
    }
}
