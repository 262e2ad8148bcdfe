package bitterend.report.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.TableText;
import bitterend.exchange.workbook.Cell;
import bitterend.exchange.workbook.Sheet;
import bitterend.exchange.workbook.Workbook;
import bitterend.finding.Findings;
import bitterend.finding.Unseen;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is written for a spreadsheet is read again as it was. */
final class TablesTest {
    private static final int TABLES = 60;
    private static final String LETTERS = "aZ09 ,;\"'=+-@\t\n&<>_x000A_øß\u202e日";
    private final Path file;

    TablesTest(@TempDir Path folder) {
        this.file = folder.resolve("table.xlsx");
    }

    @Test
    void workbooks_areReadAgainAsTheyWere() throws IOException {
        long seed = Long.getLong("seed", 20261129);
        Random random = new Random(seed);
        for (int round = 0; round < TABLES; round++) {
            DataTable table = table(random);
            byte[] book = TableBook.bytes(List.of(table));
            String place = "seed " + seed + ", round " + round;
            assertEquals(exact(table), ours(book), place);
        }
    }

    @Test
    void csv_isReadAgainAsItWasButForTheGuard() {
        Random random = new Random(7);
        for (int round = 0; round < TABLES; round++) {
            DataTable table = table(random);
            TableText read = TableText.of(TableCsv.text(table).substring(1));
            for (int row = 0; row < table.rows().size(); row++) {
                List<String> cells = read.cells(row + 1);
                for (int column = 0; column < cells.size(); column++) {
                    Datum datum = table.rows().get(row).get(column);
                    boolean words = datum instanceof Datum.Text;
                    String cell = cells.get(column);
                    assertEquals(
                            Unseen.shownInCell(datum.exact()),
                            words && cell.startsWith("'") && !datum.exact().startsWith("'") ? cell.substring(1) : cell);
                    assertTrue(!words || cell.isEmpty() || "=+-@\t".indexOf(cell.charAt(0)) < 0, cell);
                }
            }
        }
    }

    @Test
    void words_thatBeginAFormulaAreWords() throws IOException {
        DataTable table = new DataTable(
                "T",
                List.of("note", "length (m)"),
                List.of(List.of(new Datum.Text("=HYPERLINK(\"x\")"), new Datum.Figure(new BigDecimal("-12.340")))));
        assertEquals("\ufeffnote,length (m)\r\n\"'=HYPERLINK(\"\"x\"\")\",-12.340\r\n", TableCsv.text(table));
        Cell cell = sheet(TableBook.bytes(List.of(table))).rows().get(1).cells().get(0);
        assertEquals(new Cell(Cell.Kind.TEXT, "=HYPERLINK(\"x\")", ""), cell);
    }

    @Test
    void numbersAndDays_areNoWords() throws IOException {
        DataTable table = new DataTable(
                "T",
                List.of("a", "b"),
                List.of(List.of(new Datum.Figure(new BigDecimal("12.340")), new Datum.Day(LocalDate.of(2026, 3, 2)))));
        List<Cell> cells = sheet(TableBook.bytes(List.of(table))).rows().get(1).cells();
        assertEquals(Cell.Kind.NUMBER, cells.get(0).kind());
        assertEquals(new Cell(Cell.Kind.DATE, "2026-03-02", ""), cells.get(1));
    }

    private static DataTable table(Random random) {
        int columns = 1 + random.nextInt(6);
        List<List<Datum>> rows = new ArrayList<>();
        for (int row = random.nextInt(20); row > 0; row--) {
            rows.add(IntStream.range(0, columns)
                    .mapToObj(column -> datum(random, column))
                    .toList());
        }
        return new DataTable(
                "Table",
                IntStream.range(0, columns).mapToObj(each -> "column " + each).toList(),
                rows);
    }

    private static Datum datum(Random random, int column) {
        return switch (column % 3) {
            case 0 -> Datum.of(words(random));
            case 1 -> new Datum.Figure(
                    BigDecimal.valueOf(random.nextInt(2_000_000_000) - 1_000_000_000, random.nextInt(6)));
            default -> new Datum.Day(LocalDate.of(1990, 1, 1).plusDays(random.nextInt(40_000)));
        };
    }

    private static String words(Random random) {
        if (random.nextInt(10) == 0) {
            return "_x0041_ and _x004g_";
        }
        StringBuilder words = new StringBuilder();
        for (int length = random.nextInt(12); length > 0; length--) {
            words.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        }
        return words.toString();
    }

    /** Every value as text, numbers without the zeros at their end, nothing for a blank; blank rows at the end left out. */
    private static List<List<String>> exact(DataTable table) {
        List<List<String>> rows = new ArrayList<>();
        table.rows().forEach(row -> rows.add(row.stream().map(TablesTest::exact).toList()));
        while (!rows.isEmpty() && rows.get(rows.size() - 1).stream().allMatch(String::isEmpty)) {
            rows.remove(rows.size() - 1);
        }
        return rows;
    }

    private static String exact(Datum datum) {
        return datum instanceof Datum.Figure number
                ? plain(number.value())
                : datum.exact().isBlank() ? "" : Unseen.shownInCell(datum.exact());
    }

    private static String plain(BigDecimal number) {
        return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
    }

    private Sheet sheet(byte[] book) throws IOException {
        Files.write(file, book);
        Findings findings = new Findings();
        Sheet sheet = Workbook.open(file, findings).orElseThrow().sheets().get(0);
        assertEquals(List.of(), findings.sorted());
        assertEquals(List.of(), sheet.told());
        return sheet;
    }

    private List<List<String>> ours(byte[] book) throws IOException {
        Sheet sheet = sheet(book);
        int columns = sheet.rows().get(0).cells().size();
        List<List<String>> rows = new ArrayList<>();
        for (Sheet.Row row : sheet.rows().subList(1, sheet.rows().size())) {
            while (rows.size() < row.number() - 2) {
                rows.add(IntStream.range(0, columns).mapToObj(any -> "").toList());
            }
            rows.add(IntStream.range(0, columns)
                    .mapToObj(
                            at -> at < row.cells().size() ? row.cells().get(at).text() : "")
                    .toList());
        }
        return rows;
    }
}
