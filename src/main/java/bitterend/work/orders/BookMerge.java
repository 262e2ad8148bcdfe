package bitterend.work.orders;

import bitterend.exchange.TableText;
import bitterend.work.orders.EditOrders.Book;
import bitterend.work.orders.EditOrders.Edit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * An edit of the order book on top of the book as it is by now. A row is known again by its order and line, wherever it is; a
 * changed cell must be what it was when the book was looked at, or what it is to become. A row that was added before is not
 * added again.
 *
 * @param edit the same edit of the book as it is now, with all that was typed: a row that somebody else has taken out meanwhile
 *     is added again
 * @param conflicts where both changed the same, in words, with what the others wrote
 */
record BookMerge(Edit edit, List<String> conflicts) {
    private static final int TWICE = -1;

    BookMerge {
        conflicts = List.copyOf(conflicts);
    }

    /** The book with the edit. */
    TableText table() {
        TableText table = edit.base().table();
        for (Map.Entry<Integer, Map<Integer, String>> changed : edit.changed().entrySet()) {
            table = table.with(changed.getKey(), changed.getValue());
        }
        for (List<String> added : edit.added()) {
            table = table.plus(added);
        }
        return table;
    }

    static BookMerge of(Book now, Edit edit) {
        TableText base = edit.base().table();
        if (!base.header().equals(now.table().header())) {
            return new BookMerge(edit, List.of("the columns of orders.csv are others by now"));
        }
        Edit widened = edit.widened();
        Book there = new Book(now.table().widened(edit.columns()), now.digest());
        return new Merging(widened.base().table(), there.table()).of(there, widened);
    }

    /** One merge while it is made. */
    private static final class Merging {
        private final TableText base;
        private final TableText now;
        private final Keys keys;
        private final Map<String, Integer> rows;
        private final List<String> conflicts = new ArrayList<>();

        Merging(TableText base, TableText now) {
            this.base = base;
            this.now = now;
            keys = Keys.of(base);
            rows = keys.rows(now);
        }

        BookMerge of(Book book, Edit edit) {
            Map<Integer, Map<Integer, String>> changed = new TreeMap<>();
            List<List<String>> added = new ArrayList<>();
            edit.changed().forEach((row, cells) -> {
                int there = row(row);
                if (there == TWICE) {
                    conflicts.add(keys.of(base, row) + ", which is gone or there twice");
                    added.add(typed(base.cells(row), cells));
                } else {
                    changed.put(there, onTop(row, there, cells));
                }
            });
            for (List<String> row : edit.added()) {
                if (!isThere(row)) {
                    added.add(row);
                }
            }
            return new BookMerge(new Edit(book, changed, added), conflicts);
        }

        private int row(int was) {
            return now.equals(base) ? was : rows.getOrDefault(keys.of(base, was), TWICE);
        }

        /** What of the cells is not what it is to be. */
        private Map<Integer, String> onTop(int was, int there, Map<Integer, String> cells) {
            List<String> before = base.cells(was);
            List<String> is = now.cells(there);
            Map<Integer, String> onTop = new TreeMap<>();
            cells.forEach((column, typed) -> {
                String theirs = column < is.size() ? is.get(column) : "";
                if (!theirs.equals(typed)) {
                    onTop.put(column, typed);
                    if (!theirs.equals(before.get(column))) {
                        conflicts.add(keys.of(base, was) + ", " + base.header().get(column) + ", which is \"" + theirs
                                + "\" by now");
                    }
                }
            });
            return onTop;
        }

        private static List<String> typed(List<String> row, Map<Integer, String> cells) {
            List<String> typed = new ArrayList<>(row);
            cells.forEach(typed::set);
            return typed;
        }

        /** Whether a row that is to be added has come into the book since it was looked at; with other cells it is in the way. */
        private boolean isThere(List<String> row) {
            String key = keys.of(row);
            Integer there = rows.get(key);
            if (now.equals(base)
                    || there == null
                    || key.equals("/")
                    || keys.rows(base).containsKey(key)) {
                return false;
            }
            boolean same = there != TWICE && now.cells(there).equals(row);
            if (!same) {
                conflicts.add(key + ", which somebody else has added");
            }
            return same;
        }
    }

    /** Where a table has the order and the line of its rows. */
    private record Keys(int order, int line) {
        static Keys of(TableText table) {
            List<String> names = table.header().stream()
                    .map(name -> name.strip().toLowerCase(Locale.ROOT))
                    .toList();
            return new Keys(names.indexOf("order"), names.indexOf("line"));
        }

        /** The rows of a table by order and line. */
        Map<String, Integer> rows(TableText table) {
            Map<String, Integer> rows = new HashMap<>();
            for (int row = 1; row < table.rows().size(); row++) {
                rows.merge(of(table, row), row, (one, other) -> TWICE);
            }
            return rows;
        }

        /** {@code ORDER/LINE} of a row. */
        String of(TableText table, int row) {
            return of(table.cells(row));
        }

        String of(List<String> cells) {
            return cell(cells, order) + "/" + cell(cells, line);
        }

        private static String cell(List<String> cells, int at) {
            return at < 0 || at >= cells.size() ? "" : cells.get(at).strip();
        }
    }
}
