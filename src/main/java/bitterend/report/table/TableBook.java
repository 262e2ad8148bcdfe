package bitterend.report.table;

import bitterend.finding.Unseen;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Tables as a workbook, a sheet each: numbers and days as such, headings bold above rows that scroll below them. Words are words,
 * whatever they begin with.
 */
public final class TableBook {
    private static final int LONGEST_CELL = 32_767;
    private static final int NARROWEST = 8;
    private static final int WIDEST = 40;
    private static final int ALL_KNOWN = 200;

    /** The format reads {@code _x0041_} as the letter of that number; so the line in front is written by its own. */
    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private TableBook() {}

    /** The bytes of the workbook of at least one table. */
    public static byte[] bytes(List<DataTable> tables) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(bytes, "Bitter End", "1.0")) {
            for (DataTable table : tables) {
                write(book.newWorksheet(table.name()), table);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException("writing to memory", impossible);
        }
        return bytes.toByteArray();
    }

    private static void write(Worksheet sheet, DataTable table) {
        for (int column = 0; column < table.headings().size(); column++) {
            sheet.value(0, column, table.headings().get(column));
            sheet.style(0, column).bold().set();
            sheet.width(column, width(table, column));
        }
        sheet.freezePane(0, 1);
        for (int row = 0; row < table.rows().size(); row++) {
            for (int column = 0; column < table.headings().size(); column++) {
                write(sheet, row + 1, column, table.rows().get(row).get(column));
            }
        }
    }

    private static void write(Worksheet sheet, int row, int column, Datum datum) {
        if (datum instanceof Datum.Figure number) {
            sheet.value(row, column, number.value());
            int digits = Math.max(0, number.value().scale());
            sheet.style(row, column)
                    .format(digits == 0 ? "0" : "0." + "0".repeat(digits))
                    .set();
        } else if (datum instanceof Datum.Day day) {
            sheet.value(row, column, day.value());
            sheet.style(row, column).format("yyyy-mm-dd").set();
        } else if (!datum.exact().isEmpty()) {
            sheet.value(row, column, shown(datum.exact()));
        }
    }

    /** Characters that a workbook cannot hold are left out; a text longer than a cell ends with it. */
    private static String shown(String words) {
        StringBuilder shown = new StringBuilder();
        words.codePoints()
                .filter(each -> (each >= ' '
                                && each != 0xfffe
                                && each != 0xffff
                                && Character.getType(each) != Character.SURROGATE)
                        || each == '\n'
                        || each == '\t')
                .limit(LONGEST_CELL)
                .forEach(shown::appendCodePoint);
        return ESCAPE.matcher(Unseen.shownInCell(shown.toString())).replaceAll("_x005F_");
    }

    private static int width(DataTable table, int column) {
        int widest = table.rows().stream()
                .limit(ALL_KNOWN)
                .mapToInt(row -> row.get(column).exact().length())
                .max()
                .orElse(0);
        return Math.min(
                WIDEST,
                Math.max(
                        NARROWEST, Math.max(widest, table.headings().get(column).length()) + 2));
    }
}
