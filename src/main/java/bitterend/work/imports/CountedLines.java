package bitterend.work.imports;

import bitterend.exchange.mapping.Change;
import bitterend.exchange.mapping.Table;
import bitterend.exchange.mapping.Understood;
import bitterend.finding.Finding;
import java.util.List;
import java.util.Set;

/**
 * Lines of orders of a sheet that numbers none: they are counted from the top of their order, so that a line that is gone from
 * the sheet gives its number to the next one.
 */
final class CountedLines {
    private static final Set<String> WHAT_IS_CUT = Set.of("rope", "length", "legs");

    private CountedLines() {}

    /** Warns of lines that would be other pieces than they are in the book. */
    static List<Finding> told(Understood understood, Table table, List<Change> changes) {
        boolean numbered =
                understood.columns().stream().anyMatch(column -> column.member().equals("line"));
        return table != Table.ORDERS || numbered
                ? List.of()
                : changes.stream()
                        .filter(change -> change.kind() == Change.Kind.CHANGED
                                && change.cells().stream()
                                        .map(Change.Cell::member)
                                        .anyMatch(WHAT_IS_CUT::contains))
                        .map(change -> Finding.warning(
                                understood.file(),
                                change.place(),
                                "line",
                                change.name(),
                                "a column of line numbers: without one lines are counted from the top of their order,"
                                        + " and this one is another piece in the book"))
                        .toList();
    }
}
