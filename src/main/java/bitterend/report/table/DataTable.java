package bitterend.report.table;

import java.util.List;
import java.util.function.Function;

/**
 * A table of values.
 *
 * @param name what it holds, in a word or two; no two tables of one file have the same
 * @param headings a heading for each column, its unit in brackets: {@code cut length (m)}
 * @param rows a value for each column
 */
public record DataTable(String name, List<String> headings, List<List<Datum>> rows) {
    public DataTable {
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<Datum> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException(row.size() + " values for " + headings.size() + " columns");
            }
        }
    }

    /**
     * A column of a table made of things of one kind.
     *
     * @param heading with its unit in brackets
     * @param value what stands in it for one of the things
     * @param <T> the kind
     */
    public record Column<T>(String heading, Function<T, Datum> value) {}

    /** A row for each thing. */
    public static <T> DataTable of(String name, List<T> things, List<Column<T>> columns) {
        return new DataTable(
                name,
                columns.stream().map(Column::heading).toList(),
                things.stream()
                        .map(thing -> columns.stream()
                                .map(column -> column.value().apply(thing))
                                .toList())
                        .toList());
    }
}
