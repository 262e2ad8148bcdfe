package bitterend.exchange.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.LimitsPage;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Each limit on a workbook: just within it is read, just beyond it is refused in a sentence. docs/limits.md lists them. */
final class LimitsTest {
    private final Path file;

    LimitsTest(@TempDir Path folder) {
        this.file = folder.resolve("orders.xlsx");
    }

    @Test
    void theTableOfTheDocs_hasEveryLimit() {
        Map.of(
                        "bytes of a workbook", Limits.MOST_BYTES,
                        "parts of a workbook", (long) Limits.MOST_PARTS,
                        "sheets of a workbook", (long) Limits.MOST_SHEETS,
                        "bytes of a workbook, unpacked", Limits.MOST_UNPACKED,
                        "times its packed size that a part unpacks to", Limits.MOST_RATIO,
                        "rows of a sheet", (long) Limits.MOST_ROWS,
                        "filled cells of a sheet", (long) Limits.MOST_CELLS,
                        "texts that cells share", (long) Limits.MOST_TEXTS,
                        "cells in a row", (long) Limits.MOST_COLUMNS,
                        "characters in a cell of a workbook", (long) Limits.LONGEST_CELL)
                .forEach((limit, most) -> assertEquals(LimitsPage.most(limit), most, limit));
        assertEquals(4_000_000, Limits.ANY_RATIO);
    }

    @Test
    void files_areAtMostSoLarge() throws IOException {
        try (RandomAccessFile large = new RandomAccessFile(file.toFile(), "rw")) {
            large.setLength(Limits.MOST_BYTES + 1);
        }
        assertEquals("20 MB", refused());
    }

    @Test
    void whatIsUnpacked_isAtMostSoMuch() throws IOException {
        StringBuilder rows = new StringBuilder();
        Random random = new Random(1);
        while (rows.length() < 24_000_000) {
            rows.append("<!-- ")
                    .append(random.nextInt())
                    .append(" ".repeat(500))
                    .append("-->");
        }
        RawBook book = new RawBook();
        for (int sheet = 0; sheet < 5; sheet++) {
            book.sheet("S" + sheet, "", rows + "<sheetData/>");
        }
        book.write(file);
        assertTrue(Files.size(file) < Limits.MOST_BYTES);
        List<Sheet> sheets = open();
        assertEquals(List.of(), sheets.get(0).told());
        assertEquals("more than 100 MB when unpacked", only(sheets.get(4)).found());
    }

    @Test
    void aPart_unpacksAtMostToSoManyTimesItsSize() throws IOException {
        RawBook.of("S", " ".repeat((int) Limits.ANY_RATIO - 1_000)).write(file);
        assertEquals(List.of(), open().get(0).told());
        RawBook.of("S", " ".repeat((int) Limits.ANY_RATIO + 1_000)).write(file);
        assertEquals(
                "xl/worksheets/sheet1.xml unpacks to more than 200 times its size",
                only(open().get(0)).found());
    }

    @Test
    void rows_columnsAndCellsHaveTheirEnd() throws IOException {
        assertWithin(RawBook.row(Limits.MOST_ROWS, "x"));
        assertBeyond("more than 100000 rows", RawBook.row(Limits.MOST_ROWS + 1, "x"));
        assertWithin("<row><c r=\"IV1\"><v>1</v></c></row>");
        assertBeyond("something in column IW", "<row><c r=\"IW1\"><v>1</v></c></row>");
        assertBeyond("more than 1000000 filled cells", full(4_000) + RawBook.row(4_001, "x"));
        assertEquals(4_000, open().get(0).rows().size(), "those within are read");
        assertWithin("<row><c t=\"str\"><v>" + "x".repeat(Limits.LONGEST_CELL) + "</v></c></row>");
        assertBeyond(
                "a text of more than 32767 characters in xl/worksheets/sheet1.xml",
                "<row><c t=\"str\"><v>" + "x".repeat(Limits.LONGEST_CELL + 1) + "</v></c></row>");
    }

    @Test
    void emptyCellsWithAStyle_countForNothing() throws IOException {
        assertWithin(IntStream.rangeClosed(1, 200_000)
                .mapToObj(row -> "<row r=\"" + row + "\"><c r=\"XFD" + row + "\" s=\"1\"/></row>")
                .reduce(new StringBuilder(), StringBuilder::append, StringBuilder::append)
                .toString());
    }

    @Test
    void textsSheetsAndParts_haveTheirEnd() throws IOException {
        RawBook.of("S", "")
                .texts(IntStream.rangeClosed(0, Limits.MOST_TEXTS)
                        .mapToObj(each -> "<t>" + each + "</t>")
                        .toArray(String[]::new))
                .write(file);
        assertEquals("more than 500000 texts", refused());
        RawBook sheets = new RawBook();
        IntStream.rangeClosed(0, Limits.MOST_SHEETS).forEach(each -> sheets.sheet("S" + each, "", ""));
        sheets.write(file);
        assertEquals("101 sheets", refused());
        RawBook parts = RawBook.of("S", "");
        IntStream.rangeClosed(0, Limits.MOST_PARTS).forEach(each -> parts.part("p" + each, ""));
        parts.write(file);
        assertEquals("2005 parts", refused());
    }

    @Test
    void merges_areToldUpToAPoint() throws IOException {
        StringBuilder merges = new StringBuilder();
        for (int row = 1; row <= 100; row++) {
            merges.append("<mergeCell ref=\"A" + row + ":B" + row + "\"/>");
        }
        new RawBook()
                .sheet(
                        "S",
                        "",
                        "<sheetData>" + RawBook.row(100, "x") + "</sheetData><mergeCells>" + merges + "</mergeCells>")
                .write(file);
        assertEquals(Limits.MOST_MERGED, open().get(0).told().size());
    }

    private static String full(int rows) {
        StringBuilder full = new StringBuilder();
        for (int row = 1; row <= rows; row++) {
            full.append("<row r=\"").append(row).append("\">");
            for (int column = 1; column <= Limits.MOST_CELLS / rows; column++) {
                full.append("<c r=\"")
                        .append(Sheet.letters(column))
                        .append(row)
                        .append("\"><v>")
                        .append(row * column)
                        .append("</v></c>");
            }
            full.append("</row>");
        }
        return full.toString();
    }

    private void assertWithin(String rows) throws IOException {
        RawBook.of("S", rows).write(file);
        assertEquals(List.of(), open().get(0).told());
    }

    private void assertBeyond(String found, String rows) throws IOException {
        RawBook.of("S", rows).write(file);
        assertEquals(found, only(open().get(0)).found());
    }

    private static Finding only(Sheet sheet) {
        assertEquals(1, sheet.told().size());
        return sheet.told().get(0).finding();
    }

    private List<Sheet> open() {
        Findings findings = new Findings();
        return Workbook.open(file, findings)
                .orElseThrow(() -> new AssertionError(findings.sorted()))
                .sheets();
    }

    private String refused() {
        Findings findings = new Findings();
        assertTrue(Workbook.open(file, findings).isEmpty());
        return findings.sorted().get(0).found();
    }
}
