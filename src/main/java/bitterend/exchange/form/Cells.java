package bitterend.exchange.form;

import bitterend.exchange.workbook.Cell;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A table cut into cells.
 *
 * @param separator between cells; 0 where the header mixes several
 * @param header which row names the columns, from 0
 * @param rows every row up to the first that cannot be cut; none when the header cannot be used
 * @param sheet what comes before a row in its place: nothing, or {@code sheet Orders, }
 * @param typed by row and column the cells of a sheet that have no value, and those that hold a number with a point in it
 */
record Cells(
        char separator, int header, List<List<String>> rows, String sheet, Map<Integer, Map<Integer, Cell>> typed) {
    /** A header is looked for in so many rows. */
    static final int MOST_ABOVE = 10;

    Cells {
        rows = List.copyOf(rows);
    }

    /** Of a CSV file. */
    Cells(char separator, int header, List<List<String>> rows) {
        this(separator, header, rows, "", Map.of());
    }

    /** Where a row is: {@code row 12}, the first row being row 1. */
    String place(int row) {
        return sheet + "row " + (row + 1);
    }

    /** By column the cells of a row that have no value. */
    Map<Integer, Cell> wrong(int row) {
        Map<Integer, Cell> wrong = new HashMap<>(typed.getOrDefault(row, Map.of()));
        wrong.values().removeIf(cell -> cell.kind() != Cell.Kind.WRONG);
        return wrong;
    }

    /** Whether a cell holds a number, whose point is a decimal one wherever the shop is. */
    boolean isNumber(int row, int column) {
        Cell cell = typed.getOrDefault(row, Map.of()).getOrDefault(column, Cell.BLANK);
        return cell.kind() == Cell.Kind.NUMBER;
    }

    static boolean isBlank(List<String> cells) {
        return cells.stream().allMatch(String::isBlank);
    }
}
