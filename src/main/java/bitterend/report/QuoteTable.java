package bitterend.report;

import bitterend.report.QuoteBlock.Column;
import java.util.ArrayList;
import java.util.List;

/** A table while its rows are added. */
final class QuoteTable {
    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    QuoteTable(Column... columns) {
        this.columns = List.of(columns);
    }

    void row(String... cells) {
        rows.add(List.of(cells));
    }

    QuoteBlock block() {
        return QuoteBlock.table(columns, rows);
    }
}
