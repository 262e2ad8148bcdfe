package bitterend.exchange.mapping;

import bitterend.exchange.form.OwnSheet;
import bitterend.exchange.form.Readings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A sheet that is a table of the shop itself, as it was sent out or copied: it has the very columns of the file, and its cells
 * are read as those of the file are, letter by letter. Nothing in it is met with anything, so that what did not change stays.
 */
final class OwnForm {
    private final OwnSheet sheet;
    private final int head;

    private OwnForm(OwnSheet sheet, int head) {
        this.sheet = sheet;
        this.head = head;
    }

    /** The table whose columns the headings of a sheet are, all of them and no other. */
    static Optional<Table> of(List<String> headings, Map<Table, List<String>> headers) {
        List<String> named = plain(headings);
        return headers.entrySet().stream()
                .filter(each -> named.size() == each.getValue().size()
                        && new HashSet<>(named).equals(new HashSet<>(plain(each.getValue()))))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** What the sheet says. */
    static Understood read(OwnSheet sheet, int head, List<String> headings, Table table) {
        return new OwnForm(sheet, head).read(headings, table);
    }

    private static List<String> plain(List<String> headings) {
        return headings.stream().map(Readings::plain).toList();
    }

    private Understood read(List<String> headings, Table table) {
        Map<Integer, String> members = new LinkedHashMap<>();
        for (int at = 0; at < headings.size(); at++) {
            members.put(at, Readings.plain(headings.get(at)));
        }
        Samples samples = new Samples();
        List<Column> columns = new ArrayList<>();
        List<Understood.Row> rows = rows(members);
        members.forEach((at, member) -> {
            Column column = new Column(at, headings.get(at), "", member, Column.How.NAMED, List.of());
            rows.stream()
                    .map(row -> row.text(member))
                    .filter(text -> !text.isEmpty())
                    .forEach(text -> samples.add(column, text, text));
            columns.add(column.with(samples.of(at)));
        });
        return new Understood(
                sheet.file(),
                sheet.name(),
                Optional.of(table),
                sheet.place(head),
                headings,
                columns,
                List.of(),
                rows,
                List.of(),
                List.of(),
                sheet.toldFrom(head),
                Map.of(),
                List.of());
    }

    private List<Understood.Row> rows(Map<Integer, String> members) {
        List<Understood.Row> rows = new ArrayList<>();
        for (int row = head + 1; row < sheet.rows().size(); row++) {
            if (!sheet.isBlank(row)) {
                int at = row;
                Map<String, String> texts = new TreeMap<>();
                members.forEach((column, member) -> texts.put(member, sheet.cell(at, column)));
                texts.values().removeIf(String::isEmpty);
                rows.add(new Understood.Row(sheet.place(row), texts));
            }
        }
        return rows;
    }
}
