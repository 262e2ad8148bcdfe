package bitterend.work.orders;

import bitterend.exchange.TableText;
import bitterend.work.orders.EditOrders.Edit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * An edit of the order book in the book as it is by now. A row is known again by its order and line, wherever it is; a changed
 * cell must be what it was when the book was looked at.
 *
 * @param table the book with what goes
 * @param conflicts what does not, in words: rows that are gone, cells that somebody else has changed
 */
record BookMerge(TableText table, List<String> conflicts) {
    private static final int TWICE = -1;

    BookMerge {
        conflicts = List.copyOf(conflicts);
    }

    static BookMerge of(TableText now, Edit edit) {
        TableText base = edit.base().table();
        Keys keys = Keys.of(base);
        Map<String, Integer> rows = rows(now);
        List<String> conflicts = new ArrayList<>();
        TableText result = now;
        for (Map.Entry<Integer, Map<Integer, String>> changed : edit.changed().entrySet()) {
            String key = keys.of(base, changed.getKey());
            int row = now.equals(base) ? changed.getKey() : rows.getOrDefault(key, TWICE);
            List<String> others =
                    others(base, changed.getKey(), now, row, changed.getValue().keySet());
            others.forEach(column -> conflicts.add(key + ", " + column));
            if (others.isEmpty()) {
                result = result.with(row, changed.getValue());
            }
        }
        for (List<String> added : edit.added()) {
            result = result.plus(added);
        }
        return new BookMerge(result, conflicts);
    }

    private static Map<String, Integer> rows(TableText table) {
        Keys keys = Keys.of(table);
        Map<String, Integer> rows = new HashMap<>();
        for (int row = 1; row < table.rows().size(); row++) {
            rows.merge(keys.of(table, row), row, (one, other) -> TWICE);
        }
        return rows;
    }

    /** The columns in which the row is not as it was; one word for a row that is gone. */
    private static List<String> others(TableText base, int was, TableText table, int row, Collection<Integer> columns) {
        if (row == TWICE || !base.header().equals(table.header())) {
            return List.of("which is gone or there twice");
        }
        List<String> before = base.cells(was);
        List<String> now = table.cells(row);
        return columns.stream()
                .filter(column -> column >= now.size() || !now.get(column).equals(before.get(column)))
                .map(column -> base.header().get(column))
                .toList();
    }

    /** Where a table has the order and the line of its rows. */
    private record Keys(int order, int line) {
        static Keys of(TableText table) {
            List<String> names = table.header().stream()
                    .map(name -> name.strip().toLowerCase(Locale.ROOT))
                    .toList();
            return new Keys(names.indexOf("order"), names.indexOf("line"));
        }

        /** {@code ORDER/LINE} of a row. */
        String of(TableText table, int row) {
            List<String> cells = table.cells(row);
            return cell(cells, order) + "/" + cell(cells, line);
        }

        private static String cell(List<String> cells, int at) {
            return at < 0 || at >= cells.size() ? "" : cells.get(at).strip();
        }
    }
}
