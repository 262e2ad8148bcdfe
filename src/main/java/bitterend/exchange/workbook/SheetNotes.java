package bitterend.exchange.workbook;

import bitterend.exchange.workbook.Sheet.Row;
import bitterend.exchange.workbook.Sheet.Told;
import bitterend.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What a reader of a sheet should know that its cells do not say: what is hidden, what is merged, where reading ended. */
final class SheetNotes {
    private static final int MOST_SHOWN = 8;

    private final String file;
    private final String sheet;
    private final TreeSet<Integer> hiddenRows = new TreeSet<>();
    private final TreeSet<Integer> hiddenColumns = new TreeSet<>();
    private final List<Told> told = new ArrayList<>();
    private boolean filtered;
    private int merges;

    SheetNotes(String file, String sheet) {
        this.file = file;
        this.sheet = sheet;
    }

    void hiddenRow(int row) {
        hiddenRows.add(row);
    }

    void hiddenColumns(int from, int to) {
        for (int column = Math.max(1, from); column <= Math.min(to, Limits.MOST_COLUMNS); column++) {
            hiddenColumns.add(column);
        }
    }

    void filtered() {
        filtered = true;
    }

    /** A merged cell below row 1 or in it; only its first cell has a value. */
    void merged(String range) throws Refused {
        String[] corners = range.split(":", 2);
        Address first = Address.of(corners[0]);
        Address last = Address.of(corners[corners.length - 1]);
        if (++merges <= Limits.MOST_MERGED) {
            told.add(
                    new Told(
                            last.row(),
                            Finding.warning(
                                    file,
                                    Sheet.place(sheet) + ", row " + first.row(),
                                    "column " + Sheet.letters(first.column()),
                                    "merged cells " + range,
                                    "one value in each cell: what is written counts for the first cell alone, the others are empty")));
        }
    }

    void refused(Refused refused, int row) {
        told.add(new Told(
                Integer.MAX_VALUE,
                Finding.error(
                        file,
                        Sheet.place(sheet) + (row > 0 ? ", row " + row : ""),
                        "",
                        refused.found(),
                        refused.wanted())));
    }

    Sheet sheet(boolean hidden, List<Row> rows) {
        int last = rows.isEmpty() ? 0 : rows.get(rows.size() - 1).number();
        List<Told> all = new ArrayList<>();
        told.stream()
                .filter(each -> each.row() == Integer.MAX_VALUE || each.row() <= last + 1)
                .forEach(all::add);
        if (!hiddenRows.isEmpty()) {
            all.add(new Told(
                    hiddenRows.last(),
                    hidden("row", ranges(hiddenRows, true), filtered ? "hidden, as by a filter" : "hidden")));
        }
        int widest = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        hiddenColumns.removeIf(column -> column > widest);
        if (!hiddenColumns.isEmpty()) {
            all.add(new Told(last, hidden("column", ranges(hiddenColumns, false), "hidden")));
        }
        return new Sheet(sheet, hidden, rows, all);
    }

    private Finding hidden(String what, List<String> which, String how) {
        boolean one = which.size() == 1 && !which.get(0).contains(" to ");
        String shown = which.stream().limit(MOST_SHOWN).collect(Collectors.joining(", "))
                + (which.size() > MOST_SHOWN ? " and more" : "");
        return Finding.warning(
                file,
                Sheet.place(sheet),
                "",
                what + (one ? " " : "s ") + shown + " " + how,
                "nothing hidden that is not meant: " + (one ? "it was" : "they were") + " read like all others");
    }

    private static List<String> ranges(SortedSet<Integer> numbers, boolean rows) {
        List<String> ranges = new ArrayList<>();
        int from = -1;
        int to = -1;
        for (int number : numbers) {
            if (number != to + 1 || from < 0) {
                add(ranges, from, to, rows);
                from = number;
            }
            to = number;
        }
        add(ranges, from, to, rows);
        return ranges;
    }

    private static void add(List<String> ranges, int from, int to, boolean rows) {
        if (from > 0) {
            String first = rows ? String.valueOf(from) : Sheet.letters(from);
            String last = rows ? String.valueOf(to) : Sheet.letters(to);
            ranges.add(from == to ? first : first + " to " + last);
        }
    }
}
