package bitterend.serve;

import bitterend.exchange.TableText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a spreadsheet as somebody pastes them: in the columns of the book, or under a row that names them.
 *
 * @param rows a cell for each column of the book
 * @param unknown names above them that the book does not have; their cells are in no row
 */
record PastedRows(List<List<String>> rows, List<String> unknown) {
    PastedRows {
        rows = List.copyOf(rows);
        unknown = List.copyOf(unknown);
    }

    /** @param mark columns that the row above has in any case, where there is one */
    static PastedRows of(@Nullable String text, List<String> header, List<String> mark) {
        if (text == null || text.isBlank()) {
            return new PastedRows(List.of(), List.of());
        }
        TableText table = TableText.of(text.strip() + "\n");
        List<String> names = plain(header);
        List<String> first = plain(table.header());
        boolean headed = first.containsAll(mark);
        List<List<String>> rows = new ArrayList<>();
        for (int row = headed ? 1 : 0; row < table.rows().size(); row++) {
            rows.add(row(table.cells(row), headed ? first : names, names));
        }
        List<String> unknown = headed
                ? first.stream()
                        .filter(name -> !name.isEmpty() && !names.contains(name))
                        .toList()
                : List.of();
        return new PastedRows(rows, unknown);
    }

    /** @param called what the column of each cell is called */
    private static List<String> row(List<String> read, List<String> called, List<String> names) {
        Map<Integer, String> cells = new TreeMap<>();
        for (int at = 0; at < Math.min(read.size(), called.size()); at++) {
            int column = names.indexOf(called.get(at));
            if (column >= 0) {
                cells.put(column, Sent.oneLine(read.get(at)));
            }
        }
        return whole(cells, names.size());
    }

    /** These cells by column, the others blank. */
    static List<String> whole(Map<Integer, String> cells, int width) {
        List<String> row = new ArrayList<>();
        for (int column = 0; column < width; column++) {
            row.add(cells.getOrDefault(column, ""));
        }
        return row;
    }

    private static List<String> plain(List<String> names) {
        return names.stream().map(name -> name.strip().toLowerCase(Locale.ROOT)).toList();
    }
}
