package bitterend.serve;

import java.util.List;

/**
 * A row of the order book.
 *
 * @param number its row in the file, the header being 0
 * @param cells its cells
 * @param cut the cut length of its pieces; empty while it cannot be made
 * @param wrong what is wrong with it, a sentence each
 * @param state how far its pieces are
 * @param changed what changed of it after cutting; empty for nothing
 */
public record BookRow(int number, List<String> cells, String cut, List<String> wrong, String state, String changed) {
    /** A row of a table of which nothing is known but itself. */
    BookRow(int number, List<String> cells, String cut, List<String> wrong) {
        this(number, cells, cut, wrong, "", "");
    }

    public BookRow {
        cells = List.copyOf(cells);
        wrong = List.copyOf(wrong);
    }

    /** The same with what the ledger and the plan say of it. */
    BookRow standing(String how, String after) {
        return new BookRow(number, cells, cut, wrong, how, after);
    }

    /** A cell; empty beyond the last. */
    public String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }
}
