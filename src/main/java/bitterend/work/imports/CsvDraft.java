package bitterend.work.imports;

import bitterend.exchange.TableText;
import bitterend.exchange.mapping.Change;
import bitterend.exchange.mapping.Understood;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Puts rows of a sheet into a table: a row that is there is known by its key, and only its changed cells are written. */
final class CsvDraft {
    private final List<String> key;

    /** @param key the members that name a row */
    CsvDraft(List<String> key) {
        this.key = List.copyOf(key);
    }

    TableDraft of(TableText there, List<Understood.Row> rows) {
        List<String> more = missing(there, rows);
        TableText table = there.widened(more);
        Map<String, Integer> columns = columns(table);
        Map<String, Integer> known = known(table, columns);
        List<Change> changes = new ArrayList<>();
        Map<String, String> places = new HashMap<>();
        for (Understood.Row row : rows) {
            String name = name(row.members());
            Integer at = known.get(name);
            if (at == null) {
                table = table.plus(cells(columns, row));
                places.put("row " + table.rows().size(), row.place());
                changes.add(Change.of(row, name));
            } else {
                Map<Integer, String> changed = new TreeMap<>();
                List<Change.Cell> shown = changed(table.cells(at), columns, row, changed);
                table = changed.isEmpty() ? table : table.with(at, changed);
                places.put("row " + (at + 1), row.place());
                changes.add(
                        new Change(row.place(), name, shown.isEmpty() ? Change.Kind.SAME : Change.Kind.CHANGED, shown));
            }
        }
        return new TableDraft(table.text(), changes, places, more);
    }

    /** Members of the rows that the table has no column for. */
    private static List<String> missing(TableText table, List<Understood.Row> rows) {
        TreeSet<String> members = new TreeSet<>();
        rows.forEach(row -> members.addAll(row.members().keySet()));
        members.removeAll(columns(table).keySet());
        return List.copyOf(members);
    }

    private static Map<String, Integer> columns(TableText table) {
        Map<String, Integer> columns = new HashMap<>();
        List<String> header = table.plainHeader();
        for (int at = 0; at < header.size(); at++) {
            columns.put(header.get(at), at);
        }
        return columns;
    }

    private Map<String, Integer> known(TableText table, Map<String, Integer> columns) {
        Map<String, Integer> known = new HashMap<>();
        for (int row = 1; row < table.rows().size(); row++) {
            if (!table.isBlank(row)) {
                List<String> cells = table.cells(row);
                Map<String, String> members = new HashMap<>();
                columns.forEach((name, at) ->
                        members.put(name, at < cells.size() ? cells.get(at).strip() : ""));
                known.putIfAbsent(name(members), row);
            }
        }
        return known;
    }

    private String name(Map<String, String> members) {
        return String.join(
                "/",
                key.stream().map(member -> members.getOrDefault(member, "")).toList());
    }

    private static List<String> cells(Map<String, Integer> columns, Understood.Row row) {
        List<String> cells = new ArrayList<>(Collections.nCopies(
                columns.values().stream().mapToInt(at -> at + 1).max().orElse(0), ""));
        row.members().forEach((member, text) -> cells.set(columns.getOrDefault(member, 0), text));
        return cells;
    }

    private static List<Change.Cell> changed(
            List<String> before, Map<String, Integer> columns, Understood.Row row, Map<Integer, String> changed) {
        List<Change.Cell> shown = new ArrayList<>();
        row.members().forEach((member, text) -> {
            int at = columns.getOrDefault(member, 0);
            String was = at < before.size() ? before.get(at).strip() : "";
            if (!Change.isSame(member, was, text)) {
                changed.put(at, text);
                shown.add(new Change.Cell(member, was, text));
            }
        });
        return shown;
    }
}
