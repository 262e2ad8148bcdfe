package bitterend.serve;

import java.util.List;

/**
 * A row of the order book.
 *
 * @param number its row in the file, the header being 0
 * @param cells its cells
 * @param cut the cut length of its pieces; empty while it cannot be made
 * @param wrong what is wrong with it, a sentence each
 */
public record BookRow(int number, List<String> cells, String cut, List<String> wrong) {
    public BookRow {
        cells = List.copyOf(cells);
        wrong = List.copyOf(wrong);
    }

    /** A cell; empty beyond the last. */
    public String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }
}
