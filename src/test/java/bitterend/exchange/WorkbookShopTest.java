package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.workbook.RawBook;
import bitterend.finding.Finding;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A shop whose tables are workbooks is the same shop. */
final class WorkbookShopTest {
    private final Path shop;

    WorkbookShopTest(@TempDir Path shop) {
        this.shop = shop;
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-data/gannet-loft", "demo-data/eider-shed", "src/test/resources/good"})
    void tablesAsWorkbooks_giveTheSameShop(String folder) throws IOException {
        SampleFolder.copy(Path.of(folder), shop);
        ShopReading csv = ShopFolder.read(shop);
        for (Path table : SampleFolder.files(shop)) {
            if (table.toString().endsWith(".csv")) {
                asWorkbook(table);
            }
        }
        ShopReading books = ShopFolder.read(shop);
        assertEquals(
                csv.findings().stream().map(Finding::toString).toList(),
                books.findings().stream()
                        .map(each -> each.toString().replace(".xlsx, sheet Sheet1", ".csv"))
                        .toList());
        Shop one = csv.shop().orElseThrow();
        Shop other = books.shop().orElseThrow();
        assertEquals(plain(one.orders()), plain(other.orders()));
        assertEquals(one.reels(), other.reels());
        assertEquals(one.pins(), other.pins());
        assertEquals(plain(one.supplies()), plain(other.supplies()));
        assertTrue(other.digests().containsKey("orders.xlsx"));
    }

    /** Values as text, without what names a method by where it lies in memory. */
    private static String plain(Object values) {
        return values.toString()
                .replaceAll("Lambda[^,\\]]*|@[0-9a-f]+", "")
                .replace(".xlsx, place=sheet Sheet1, ", ".csv, place=")
                .replace(".xlsx, sheet Sheet1", ".csv");
    }

    /** In place of the CSV file a workbook with its cells as texts. */
    private static void asWorkbook(Path csv) throws IOException {
        TableText table = TableText.of(Files.readString(csv));
        Path book = csv.resolveSibling(csv.getFileName().toString().replace(".csv", ".xlsx"));
        try (OutputStream out = Files.newOutputStream(book);
                Workbook written = new Workbook(out, "test", "1.0")) {
            Worksheet sheet = written.newWorksheet("Sheet1");
            for (int row = 0; row < table.rows().size(); row++) {
                List<String> cells = table.cells(row);
                for (int column = 0; column < cells.size(); column++) {
                    sheet.value(row, column, cells.get(column));
                }
            }
        }
        Files.delete(csv);
    }

    @Test
    void aTableThatIsThereTwice_isAnError() throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, shop);
        RawBook.of("Orders", RawBook.row(1, "order")).write(shop.resolve("orders.xlsx"));
        assertEquals(
                List.of("error: orders.csv: orders.csv and orders.xlsx: one of the two; move the other out of the shop"
                        + " folder"),
                ShopFolder.read(shop).findings().stream().map(Finding::toString).toList());
    }

    @Test
    void rowsThatCannotBeUsed_leaveTheirLinesOutWithTheirPlace() throws IOException {
        SampleFolder.copy(SampleFolder.GOOD, shop);
        asWorkbook(shop.resolve("orders.csv"));
        Path orders = shop.resolve("orders.xlsx");
        assertTrue(ShopFolder.read(shop).shop().isPresent());
        RawBook.of("Orders", RawBook.row(1, "order", "line", "rope") + RawBook.row(3, "1041", "1", "nowhere"))
                .write(orders);
        assertTrue(ShopFolder.read(shop).findings().stream()
                .allMatch(finding ->
                        finding.file().equals("orders.xlsx") && finding.place().startsWith("sheet Orders, row ")));
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void ropeThatCannotBeUsed_stopsNobodyButItsOrders_inAWorkbookAsInACsvFile(boolean book) throws IOException {
        SampleFolder.copy(Path.of("demo-data/eider-shed"), shop);
        for (String name : List.of("ropes.json", "history.csv", "offers.csv")) {
            Files.delete(shop.resolve(name));
        }
        Path ropes = shop.resolve("ropes.csv");
        Files.writeString(
                ropes,
                """
                        id,construction,fibre,diameter,price,usual reel,lay
                        LAID-14,3-strand,polyester,14 mm,1.45 EUR/m,220 m,right ordinary
                        LAID-16,3-strand,polyester,16 mm,soon,220 m,right ordinary
                        """);
        if (book) {
            asWorkbook(ropes);
        }
        Files.writeString(shop.resolve("orders.csv"), "order,line,rope,length\n1,1,LAID-14,4 m\n");
        Files.writeString(shop.resolve("reels.csv"), "reel,rope,length\n1,LAID-14,40 m\n");
        ShopReading reading = ShopFolder.read(shop);
        assertTrue(reading.shop().isPresent(), () -> "" + reading.findings());
        assertTrue(
                reading.findings().stream()
                        .anyMatch(finding -> finding.place().endsWith("row 3")
                                && finding.field().equals("price")),
                () -> "" + reading.findings());
    }

    @Test
    void measuredRows_areAddedToTheCsvFileAlone() throws IOException {
        RawBook.of("S", "").write(shop.resolve("measured.xlsx"));
        assertEquals(
                "error: measured.xlsx: found \"a workbook\", expected the table saved as measured.csv: rows are added to"
                        + " that alone",
                MeasuredRows.problems(shop, new MeasuredRows.Row("1", java.util.Map.of()))
                        .get(0)
                        .toString());
    }

    @Test
    void filesOfTheShop_areItsWorkbooksToo() {
        assertTrue(ShopFiles.has(shop, shop.resolve("reels.xlsx")));
        assertTrue(!ShopFiles.has(shop, shop.resolve("other.xlsx")));
    }
}
