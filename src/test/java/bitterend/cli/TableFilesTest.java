package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.TableText;
import bitterend.exchange.workbook.Cell;
import bitterend.exchange.workbook.Sheet;
import bitterend.exchange.workbook.Workbook;
import bitterend.finding.Findings;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables that commands write for spreadsheets: values that can be added up, in files that were not there. */
final class TableFilesTest {
    private static final Path SHED = Path.of("demo-data/eider-shed");
    private final Path folder;
    private final Path shop;

    TableFilesTest(@TempDir Path folder) throws IOException {
        this.folder = folder;
        this.shop = Files.createDirectory(folder.resolve("shop"));
        try (Stream<Path> files = Files.list(SHED)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, shop.resolve(file.getFileName()));
            }
        }
    }

    @Test
    void orders_areReadAgainRowForRow() throws IOException {
        Sheet orders = written("Orders", "orders", shop.toString());
        List<List<String>> sheet = orders.rows().stream().map(Sheet.Row::texts).toList();
        TableText csv =
                TableText.of(Files.readString(folder.resolve("table.csv")).substring(1));
        List<List<String>> rows = new ArrayList<>();
        for (int row = 0; row < csv.rows().size(); row++) {
            rows.add(csv.cells(row));
        }
        assertEquals(sheet, rows);
        assertEquals("order", sheet.get(0).get(0));
        assertEquals(Cell.Kind.DATE, orders.rows().get(1).cells().get(2).kind());
        assertEquals(Cell.Kind.NUMBER, orders.rows().get(1).cells().get(4).kind());
    }

    @Test
    void plan_hasEveryCutAndSumsToItsReels() throws IOException {
        Run.of("plan", shop.toString(), "--time", "300ms");
        Sheet cuts = written("Cuts", "show", shop.toString());
        Sheet reels = sheets().get(1);
        assertEquals("Reels", reels.name());
        assertEquals(sum(cuts, "cut length (m)"), sum(reels, "in pieces (m)"));
        assertEquals(cuts.rows().size() - 1, sum(reels, "pieces").intValueExact());
        assertTrue(cuts.rows().size() > 3);
    }

    @Test
    void rack_isThere() throws IOException {
        Run.of("stock", "open", shop.toString());
        Sheet rack = written("Rack", "stock", "list", shop.toString());
        assertTrue(sum(rack, "length (m)").signum() > 0);
    }

    @Test
    void quote_hasItemsThatAddUpToThePrice() throws IOException {
        Sheet quote = written("Quote", "quote", shop.toString(), "--order", "E-31", "--time", "100ms");
        List<String> head = quote.rows().get(0).texts();
        List<String> line = quote.rows().get(1).texts();
        int first = head.indexOf("drawn (m)") + 1;
        BigDecimal items = line.subList(first, head.size() - 2).stream()
                .map(BigDecimal::new)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        assertEquals(0, items.compareTo(new BigDecimal(line.get(head.size() - 1))));
    }

    @Test
    void customersQuote_hasNoInsideFigure() throws IOException {
        Sheet quote = written(
                "Quote",
                "quote",
                shop.toString(),
                "--order",
                "E-31",
                "--time",
                "100ms",
                "--customer",
                "--accept",
                "Ada");
        assertFalse(quote.rows().get(0).texts().toString().contains("margin"));
    }

    @Test
    void studiesAndAdvice_areThere() throws IOException {
        Files.writeString(shop.resolve("reels.csv"), "reel,rope,length\n");
        written("Reels to order", "buy", shop.toString(), "--time", "100ms");
        assertEquals(
                List.of("Reels to order", "Ways to buy", "Rope by rope"),
                sheets().stream().map(Sheet::name).toList());
        Files.delete(folder.resolve("table.xlsx"));
        Files.delete(folder.resolve("table.csv"));
        Sheet ways =
                written("Ways to buy", "buy", shop.toString(), "--from-history", "--scenarios", "4", "--weeks", "2");
        assertTrue(ways.rows().get(0).texts().stream()
                .anyMatch(heading -> heading.startsWith("cost (") && heading.endsWith("/m)")));
    }

    @Test
    void feetAreNumbersToo() throws IOException {
        Run.of("stock", "open", shop.toString());
        assertTrue(sum(written("Rack", "stock", "list", shop.toString(), "--units", "imperial"), "length (ft)")
                        .signum()
                > 0);
    }

    @Test
    void files_areNeverReplaced() throws IOException {
        Path orders = shop.resolve("orders.csv");
        byte[] before = Files.readAllBytes(orders);
        Run run = Run.of("orders", shop.toString(), "--csv", orders.toString());
        assertEquals(2, run.code());
        assertTrue(run.err().contains("which is there already; expected a new file"), run.err());
        assertEquals(
                2,
                Run.of("orders", shop.toString(), "--xlsx", orders.toString()).code());
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(orders)));
    }

    private Sheet written(String name, String... words) throws IOException {
        List<String> all = new ArrayList<>(List.of(words));
        all.addAll(List.of(
                "--xlsx",
                folder.resolve("table.xlsx").toString(),
                "--csv",
                folder.resolve("table.csv").toString()));
        Run run = Run.of(all.toArray(String[]::new));
        assertTrue(run.code() == 0 || run.code() == 4, run.err());
        assertTrue(run.err().contains("written: "), run.err());
        Sheet first = sheets().get(0);
        assertEquals(name, first.name());
        assertTrue(first.rows().size() > 1, () -> "no rows in " + name);
        return first;
    }

    private List<Sheet> sheets() {
        return Workbook.open(folder.resolve("table.xlsx"), new Findings())
                .orElseThrow()
                .sheets();
    }

    private static BigDecimal sum(Sheet sheet, String heading) {
        int column = sheet.rows().get(0).texts().indexOf(heading);
        return sheet.rows().stream()
                .skip(1)
                .map(row -> new BigDecimal(row.cells().get(column).text()))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }
}
