package bitterend.exchange.mapping;

import bitterend.exchange.form.OwnSheet;
import bitterend.finding.Finding;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The rows of a sheet while they are brought into the words of a file. */
final class Rows {
    final OwnSheet sheet;
    final int head;
    final Table table;
    final List<Column> columns;
    final Known known;
    final Answers answers;
    final RopeMatch ropes;
    final List<Understood.Row> rows = new ArrayList<>();
    final List<String> passed = new ArrayList<>();
    final List<String> waiting = new ArrayList<>();
    final List<Finding> wrong = new ArrayList<>();
    final Samples samples = new Samples();
    final Map<String, Integer> lines = new HashMap<>();
    String orderAbove = "";

    Rows(OwnSheet sheet, int head, Table table, List<Column> columns, Known known, Answers answers, RopeMatch ropes) {
        this.sheet = sheet;
        this.head = head;
        this.table = table;
        this.columns = columns.stream().filter(column -> !column.isLeftOut()).toList();
        this.known = known;
        this.answers = answers;
        this.ropes = ropes;
    }

    List<Understood.Row> rows() {
        return rows;
    }

    List<String> passed() {
        return passed;
    }

    List<String> waiting() {
        return waiting;
    }

    List<Finding> wrong() {
        return wrong;
    }

    List<Column.Sample> samples(int column) {
        return samples.of(column);
    }

    void read(SheetForm.Form form) {
        CellWords cells = new CellWords(known, answers, form);
        for (int row = head + 1; row < sheet.rows().size(); row++) {
            if (!sheet.isBlank(row)) {
                new RowReading(this, row, cells, form).read();
            }
        }
    }

    /** What a row says of a member, as it is typed; empty where no column is it. */
    String cell(int row, String member) {
        return columns.stream()
                .filter(column -> column.member().equals(member))
                .findFirst()
                .map(column -> sheet.cell(row, column.at()))
                .orElse("");
    }
}
