package bitterend.serve;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A row of the order book.
 *
 * @param number its row in the file, the header being 0
 * @param cells its cells
 * @param cut the cut length of its pieces; empty while it cannot be made
 * @param wrong what is wrong with it, a sentence each
 * @param fields names of the columns in which it is wrong
 * @param state how far its pieces are
 * @param changed what changed of it after cutting; empty for nothing
 */
public record BookRow(
        int number,
        List<String> cells,
        String cut,
        List<String> wrong,
        Set<String> fields,
        String state,
        String changed) {
    /** A row of a table of which nothing is known but itself. */
    BookRow(int number, List<String> cells, String cut, List<String> wrong, Set<String> fields) {
        this(number, cells, cut, wrong, fields, "", "");
    }

    public BookRow {
        cells = List.copyOf(cells);
        wrong = List.copyOf(wrong);
        fields = Set.copyOf(fields);
    }

    /** The same with what the ledger and the plan say of it. */
    BookRow standing(String how, String after) {
        return new BookRow(number, cells, cut, wrong, fields, how, after);
    }

    /** Whether it is wrong in a column; nothing where it is not, as a page wants it. */
    public @Nullable String isWrongIn(BookColumn column) {
        return fields.contains(column.name().toLowerCase(Locale.ROOT)) ? "true" : null;
    }

    public boolean isWrong() {
        return !wrong.isEmpty();
    }

    /** A cell; empty beyond the last. */
    public String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }
}
