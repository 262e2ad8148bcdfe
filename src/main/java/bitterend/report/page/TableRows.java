package bitterend.report.page;

import java.util.ArrayList;
import java.util.List;

/** A table while its rows are added. */
public final class TableRows {
    private final List<Column> columns;
    private final List<List<String>> rows = new ArrayList<>();

    public TableRows(Column... columns) {
        this.columns = List.of(columns);
    }

    /** One row; a line feed inside a cell begins a new line of that cell. */
    public void row(String... cells) {
        rows.add(List.of(cells));
    }

    /** The table as it stands. */
    public Block.Table table() {
        return new Block.Table(columns, rows);
    }
}
