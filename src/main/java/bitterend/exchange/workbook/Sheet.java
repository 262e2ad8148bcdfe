package bitterend.exchange.workbook;

import bitterend.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/**
 * One sheet of a workbook.
 *
 * @param name its name on the tab
 * @param hidden whether its tab is hidden
 * @param rows those with something in them, from above
 * @param told what a reader of it should know, with the row that it is about
 */
public record Sheet(String name, boolean hidden, List<Row> rows, List<Told> told) {
    public Sheet {
        rows = List.copyOf(rows);
        told = List.copyOf(told);
    }

    /**
     * A row with something in it.
     *
     * @param number its number, the first row of the sheet being 1
     * @param cells from column A to the last with something in it
     */
    public record Row(int number, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        /** Its cells as text. */
        public List<String> texts() {
            return cells.stream().map(Cell::text).toList();
        }
    }

    /**
     * What a reader should know.
     *
     * @param row the last row it is about: a title's merged cells do not matter to who reads the table below; for the whole
     *     sheet a number above all
     * @param finding located
     */
    public record Told(int row, Finding finding) {}

    /** What concerns the rows from this one on. */
    public List<Finding> toldFrom(int row) {
        List<Finding> all = new ArrayList<>();
        told.stream().filter(each -> each.row() >= row).map(Told::finding).forEach(all::add);
        return all;
    }

    /** Where a row of it is, as findings say: {@code sheet Orders, row 12}. */
    public String place(int row) {
        return place() + ", row " + row;
    }

    /** Where the whole of it is. */
    public String place() {
        return place(name);
    }

    static String place(String name) {
        return "sheet " + name;
    }

    /** The letters of a column, the first being 1: {@code C}, {@code AA}. */
    public static String letters(int column) {
        StringBuilder letters = new StringBuilder();
        for (int left = column; left > 0; left = (left - 1) / 26) {
            letters.insert(0, (char) ('A' + (left - 1) % 26));
        }
        return letters.toString();
    }
}
