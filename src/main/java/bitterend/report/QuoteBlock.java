package bitterend.report;

import java.util.List;

/**
 * One block of a quote's page, whatever it is printed on.
 *
 * @param kind what it is
 * @param words its words; empty for a table
 * @param columns of a table
 * @param rows of a table, a cell for each column
 */
public record QuoteBlock(Kind kind, String words, List<Column> columns, List<List<String>> rows) {
    public QuoteBlock {
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException(row.size() + " cells for " + columns.size() + " columns");
            }
        }
    }

    /** What a block is. */
    public enum Kind {
        HEADING,
        PARAGRAPH,
        CAUTION,
        TABLE
    }

    /**
     * A column of a table.
     *
     * @param title may hold a line feed
     * @param figure whether it holds figures, set to the right
     */
    public record Column(String title, boolean figure) {
        static Column words(String title) {
            return new Column(title, false);
        }

        static Column figure(String title) {
            return new Column(title, true);
        }
    }

    static QuoteBlock of(Kind kind, String words) {
        return new QuoteBlock(kind, words, List.of(), List.of());
    }

    static QuoteBlock table(List<Column> columns, List<List<String>> rows) {
        return new QuoteBlock(Kind.TABLE, "", columns, rows);
    }

    public boolean isHeading() {
        return kind == Kind.HEADING;
    }

    public boolean isCaution() {
        return kind == Kind.CAUTION;
    }

    public boolean isTable() {
        return kind == Kind.TABLE;
    }

    /** Its table as text. */
    TextTable text() {
        TextTable table = new TextTable(columns.stream()
                .map(column -> column.figure()
                        ? TextTable.Column.figure(column.title())
                        : TextTable.Column.words(column.title()))
                .toArray(TextTable.Column[]::new));
        rows.forEach(row -> table.row(row.toArray(String[]::new)));
        return table;
    }
}
