package bitterend.exchange.mapping;

import bitterend.exchange.form.OwnSheet;
import java.util.List;

/** Rows of a sheet that add up those above them. */
final class Sums {
    private Sums() {}

    /** A row of sums says so, and has less than half of its cells filled. */
    static boolean isSum(OwnSheet sheet, int row, List<Column> columns) {
        TradeWords words = TradeWords.builtIn();
        boolean says = sheet.texts(row).stream()
                .anyMatch(cell -> words.meaning("sum", cell.split(" ")[0]).isPresent());
        long filled = columns.stream()
                .filter(column -> !sheet.cell(row, column.at()).isEmpty())
                .count();
        return (says && filled * 2 <= columns.size()) || filled == 0;
    }
}
