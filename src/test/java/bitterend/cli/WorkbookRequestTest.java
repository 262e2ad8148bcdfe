package bitterend.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.workbook.Cell;
import bitterend.exchange.workbook.RawBook;
import bitterend.exchange.workbook.Sheet;
import bitterend.finding.Findings;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables that a command takes may be sheets: a request of the demo, and a list of counts. */
final class WorkbookRequestTest {
    private static final Path LOFT = Path.of("demo-data/gannet-loft");
    private static final Path REQUEST = LOFT.resolve("requests/Q-2604.xlsx");
    private static final Object[][] CELLS = {
        {"Enquiry of the survey ship Turnstone, berth 4"},
        {},
        {"line", "customer", "rope", "length (m)", "end a", "end b", "quantity", "minutes", "note"},
        {
            1,
            "survey ship Turnstone",
            "DN20",
            14.5,
            "double-braid-eye length 700 mm pin 220 mm",
            "sealed",
            6,
            "35 min",
            "berth lines"
        },
        {
            2,
            "survey ship Turnstone",
            "DB12",
            26,
            "double-braid-eye thimble T12",
            "sealed",
            2,
            "30 min",
            "signal halyards"
        },
        {3, "survey ship Turnstone", "CD10", 31.25, "sealed", "sealed", 3, "5 min", "lead lines"},
    };

    /** The workbook of the demo; {@code -Dgolden.rewrite=true} writes it anew. */
    @Test
    void theRequestOfTheDemo_holdsTheseCells() throws IOException {
        if (Boolean.getBoolean("golden.rewrite")) {
            write();
        }
        assertTrue(Files.size(REQUEST) < 20_000);
        Sheet sheet = bitterend.exchange.workbook.Workbook.open(REQUEST, new Findings())
                .orElseThrow()
                .sheets()
                .get(0);
        assertEquals("Enquiry", sheet.name());
        assertEquals(
                Stream.of(CELLS)
                        .filter(row -> row.length > 0)
                        .map(row -> Stream.of(row).map(Object::toString).toList())
                        .toList(),
                sheet.rows().stream().map(Sheet.Row::texts).toList());
        assertEquals(Cell.Kind.NUMBER, sheet.rows().get(2).cells().get(3).kind());
    }

    private static void write() throws IOException {
        try (OutputStream out = Files.newOutputStream(REQUEST);
                Workbook book = new Workbook(out, "Sheets", "1.0")) {
            Worksheet sheet = book.newWorksheet("Enquiry");
            for (int row = 0; row < CELLS.length; row++) {
                for (int column = 0; column < CELLS[row].length; column++) {
                    if (CELLS[row][column] instanceof Number number) {
                        sheet.value(row, column, number);
                    } else {
                        sheet.value(row, column, (String) CELLS[row][column]);
                    }
                }
            }
            sheet.range(0, 0, 0, 5).merge();
        }
    }

    @Test
    void theRequestOfTheDemo_isPricedAsTheSameLinesInCsv(@TempDir Path folder) throws IOException {
        Path csv = folder.resolve("Q-2604.csv");
        StringBuilder text = new StringBuilder();
        for (Object[] row : List.of(CELLS).subList(2, CELLS.length)) {
            text.append(String.join(",", Stream.of(row).map(Object::toString).toList()))
                    .append('\n');
        }
        Files.writeString(csv, text);
        Run sheet = Run.of("quote", LOFT.toString(), REQUEST.toString(), "--time", "100ms", "--customer");
        Run same = Run.of("quote", LOFT.toString(), csv.toString(), "--time", "100ms", "--customer");
        assertEquals(0, sheet.code(), sheet.err());
        assertEquals(same.out(), sheet.out());
        assertTrue(sheet.out().contains("31.25 m finished"), sheet.out());
    }

    @Test
    void counts_mayBeASheet(@TempDir Path shop) throws IOException {
        for (String name : List.of("shop.json", "ropes.json", "orders.csv", "reels.csv")) {
            Files.copy(Path.of("demo-data/eider-shed").resolve(name), shop.resolve(name));
        }
        Run.of("stock", "open", shop.toString());
        String reel = Files.readAllLines(shop.resolve("reels.csv")).get(1).split(",")[0];
        Path counts = RawBook.of("Counts", RawBook.row(4, "reel", "counted") + RawBook.row(5, reel, "12 n"))
                .write(shop.resolve("counts.xlsx"));
        Run wrong = Run.of("stock", "count", shop.toString(), "--file", counts.toString());
        assertEquals(3, wrong.code());
        assertTrue(wrong.err().contains("counts.xlsx, sheet Counts, row 5, counted"), wrong.err());
        RawBook.of("Counts", RawBook.row(4, "reel", "counted") + RawBook.row(5, reel, "12 m"))
                .write(counts);
        Run right = Run.of("stock", "count", shop.toString(), "--file", counts.toString());
        assertEquals(0, right.code(), right.err());
        assertTrue(right.out().contains(reel), right.out());
    }
}
