package bitterend.serve;

import bitterend.exchange.TableText;
import bitterend.work.orders.EditOrders.Edit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A column of the order book that is shown.
 *
 * @param at its place in the file, from 0
 * @param name its name there
 * @param width how many letters it shows
 */
public record BookColumn(int at, String name, int width) {
    /** What its cells may be chosen from, by name of the column. */
    private static final Map<String, String> LISTS =
            Map.of("rope", "ropes", "end a", "ends", "end b", "ends", "customer", "customers");

    private static final List<String> USUAL =
            List.of("order", "line", "customer", "rope", "length", "end a", "end b", "quantity", "due", "note");
    private static final int WIDEST = 34;
    private static final int NARROWEST = 4;
    private static final int EMPTY = 14;

    /** A column that nothing is in yet. */
    BookColumn(int at, String name) {
        this(at, name, EMPTY);
    }

    /** The id of the list that its cells may be chosen from; empty for none. */
    public String list() {
        return LISTS.getOrDefault(name.toLowerCase(Locale.ROOT), "");
    }

    /** Those that everybody fills, and of the others those that somebody uses. */
    static List<BookColumn> shown(Edit edit) {
        TableText table = edit.base().table();
        List<BookColumn> columns = new ArrayList<>();
        List<String> header = table.header();
        for (int column = 0; column < header.size(); column++) {
            String name = header.get(column).strip();
            if (USUAL.contains(name.toLowerCase(Locale.ROOT)) || isUsed(table, column) || isUsed(edit, column)) {
                columns.add(new BookColumn(column, name, width(table, column)));
            }
        }
        return columns;
    }

    /** Letters of the widest cell, within reason. */
    private static int width(TableText table, int column) {
        int width = NARROWEST;
        for (int row = 0; row < table.rows().size(); row++) {
            List<String> cells = table.cells(row);
            width = Math.max(width, column < cells.size() ? cells.get(column).length() : 0);
        }
        return Math.min(width, WIDEST);
    }

    private static boolean isUsed(Edit edit, int column) {
        return edit.added().stream().anyMatch(row -> !row.get(column).isBlank());
    }

    private static boolean isUsed(TableText table, int column) {
        for (int row = 1; row < table.rows().size(); row++) {
            List<String> cells = table.cells(row);
            if (column < cells.size() && !cells.get(column).isBlank()) {
                return true;
            }
        }
        return false;
    }
}
