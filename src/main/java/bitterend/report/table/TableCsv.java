package bitterend.report.table;

import bitterend.finding.Formula;
import bitterend.finding.Unseen;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A table as a CSV file: UTF-8 with the mark that spreadsheets know it by, commas, a decimal point, days as
 * {@code 2026-03-02}. Words that a spreadsheet would run as a formula have a {@code '} in front.
 */
public final class TableCsv {
    private static final String MARK = "\ufeff";

    private TableCsv() {}

    public static String text(DataTable table) {
        StringBuilder csv = new StringBuilder(MARK);
        csv.append(table.headings().stream().map(TableCsv::words).collect(Collectors.joining(",", "", "\r\n")));
        for (List<Datum> row : table.rows()) {
            csv.append(row.stream().map(TableCsv::cell).collect(Collectors.joining(",", "", "\r\n")));
        }
        return csv.toString();
    }

    private static String cell(Datum datum) {
        return datum instanceof Datum.Text text ? words(text.words()) : datum.exact();
    }

    private static String words(String words) {
        String safe = Formula.marked(Unseen.shownInCell(words));
        boolean quoted =
                safe.chars().anyMatch(letter -> ",;\t\"\r\n".indexOf(letter) >= 0) || !safe.equals(safe.strip());
        return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
    }
}
