package bitterend.exchange.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.workbook.RawBook;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A table on a sheet is read as the same table in a CSV file. */
final class TableSheetTest {
    private static final CsvColumns COLUMNS = new CsvColumns(List.of("order", "length"), List.of("note"));
    private final Path folder;

    TableSheetTest(@TempDir Path folder) {
        this.folder = folder;
    }

    @Test
    void tables_mayBeginAnywhereBelowATitle() throws IOException {
        RawBook book = RawBook.of(
                "Orders",
                RawBook.row(2, "", "Orders of the week") + RawBook.row(5, "", "Order", "Length (m)")
                        + "<row r=\"7\"><c r=\"B7\"><v>1041</v></c><c r=\"C7\"><v>12.5</v></c></row>");
        assertEquals(List.of("sheet Orders, row 7: 1041, 12.5 m"), rows(book));
    }

    @Test
    void ofSeveralSheets_theOneThatFitsIsRead() throws IOException {
        RawBook book = new RawBook()
                .sheet("Notes", "", data(RawBook.row(1, "call the loft")))
                .sheet("Week", "", data(table("1")));
        assertEquals(List.of("sheet Week, row 2: 1, 2 m"), rows(book));
        book.sheet("orders", "", data(table("5")));
        assertEquals(List.of("sheet orders, row 2: 5, 2 m"), rows(book));
        book.sheet("ORDERS ", "", data(table("6")));
        assertEquals(
                List.of(
                        "error: orders.xlsx: these columns in sheets Week, orders, ORDERS : one sheet with them, or the sheet named orders"),
                rows(book));
    }

    @Test
    void aHiddenSheet_isNotReadInSilence() throws IOException {
        RawBook book = new RawBook().sheet("Old", "state=\"hidden\"", data(table("1")));
        assertEquals(
                List.of("error: orders.xlsx: these columns in Old alone, which is hidden: the sheet not hidden"),
                rows(book));
    }

    @Test
    void cells_thatHaveNoValueLeaveTheirRowOut() throws IOException {
        RawBook book = RawBook.of(
                "S",
                RawBook.row(1, "order", "length", "note")
                        + "<row r=\"2\"><c><v>1</v></c><c t=\"e\"><v>#N/A</v></c></row>" + RawBook.row(3, "2", "3 m"));
        assertEquals(
                List.of(
                        "sheet S, row 3: 2, 3 m",
                        "error: orders.xlsx, sheet S, row 2, length: found \"#N/A\", expected a value; this is what a formula shows that went wrong"),
                rows(book));
    }

    /** Where the decimal sign is a comma, a point that somebody typed could part thousands; that of a number does not. */
    @Test
    void typedPoint_isDoubtfulWhereTheDecimalSignIsAComma_thatOfANumberIsNot() throws IOException {
        RawBook.of(
                        "S",
                        RawBook.row(1, "order", "length") + RawBook.row(2, "1", "2,5 m")
                                + RawBook.row(3, "2", "1.500 m")
                                + "<row r=\"4\"><c><v>3</v></c><c s=\"1\"><v>1.125</v></c></row>")
                .formats("General", "0.000\" m\"")
                .write(folder.resolve("orders.xlsx"));
        Findings findings = new Findings();
        InputFile file = InputFile.require(folder, "orders.xlsx", findings)
                .orElseThrow()
                .in(LocalForm.of("de-DE").value().orElseThrow());
        assertEquals(3, new CsvTable(file, COLUMNS, findings).rows().size());
        assertEquals(
                List.of("sheet S, row 3"),
                findings.sorted().stream().map(Finding::place).toList());
    }

    @Test
    void whatHasNoHeading_isTold() throws IOException {
        RawBook book = RawBook.of("S", RawBook.row(1, "order", "length") + RawBook.row(2, "1", "2 m", "", "ask Ben"));
        assertEquals(
                List.of(
                        "sheet S, row 2: 1, 2 m",
                        "error: orders.xlsx, sheet S, row 2, column D: found \"ask Ben\", expected nothing in a column without a heading"),
                rows(book));
    }

    @Test
    void sheetsWithoutTheTable_areToldWhatIsMissing() throws IOException {
        assertEquals(
                List.of(
                        "error: orders.xlsx, sheet S, row 1: found nothing, expected a header row with the names of the columns"),
                rows(RawBook.of("S", "")));
        assertEquals(
                List.of("error: orders.xlsx, sheet S, row 4, length: found nothing, expected a column of this name"),
                rows(RawBook.of("S", RawBook.row(4, "order"))));
    }

    @Test
    void textFiles_areAtMostSoLarge() throws IOException {
        try (RandomAccessFile large =
                new RandomAccessFile(folder.resolve("orders.csv").toFile(), "rw")) {
            large.setLength(100_000_001);
        }
        Findings findings = new Findings();
        assertTrue(InputFile.require(folder, "orders.csv", findings).isEmpty());
        assertEquals(
                "error: orders.csv: found \"100 MB\", expected a file of at most 100 MB",
                findings.sorted().get(0).toString());
    }

    private static String table(String order) {
        return RawBook.row(1, "order", "length") + RawBook.row(2, order, "2 m");
    }

    private static String data(String rows) {
        return "<sheetData>" + rows + "</sheetData>";
    }

    private List<String> rows(RawBook book) throws IOException {
        book.write(folder.resolve("orders.xlsx"));
        Findings findings = new Findings();
        InputFile file = InputFile.require(folder, "orders.xlsx", findings).orElseThrow();
        List<String> rows = new CsvTable(file, COLUMNS, findings)
                .rows().stream()
                        .map(row -> row.place() + ": " + row.text("order").orElse("") + ", "
                                + row.text("length").orElse(""))
                        .toList();
        return Stream.concat(rows.stream(), findings.sorted().stream().map(Finding::toString))
                .toList();
    }
}
