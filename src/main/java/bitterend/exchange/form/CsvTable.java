package bitterend.exchange.form;

import bitterend.exchange.workbook.Cell;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Formula;
import bitterend.finding.Unseen;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A CSV file, or a sheet of a workbook, as rows of named fields. In a CSV file cells are separated by commas, semicolons or tabs, whichever the header row uses
 * alone. The header is row 1, as in a spreadsheet; blank rows count and are passed over.
 */
public final class CsvTable {
    private static final Pattern BARE_NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

    private static final Pattern FIGURE = Pattern.compile("[+-] ?[0-9][^=@(]*");

    private final InputFile file;
    private final CsvColumns columns;
    private final Findings findings;
    private final Findings ofRows;

    public CsvTable(InputFile file, CsvColumns columns, Findings findings) {
        this(file, columns, findings, findings);
    }

    /** A table whose rows tell their problems apart from those of the file as a whole. */
    public CsvTable(InputFile file, CsvColumns columns, Findings findings, Findings ofRows) {
        this.file = file;
        this.columns = columns;
        this.findings = findings;
        this.ofRows = ofRows;
    }

    /** The rows below the header; none when the header cannot be used. */
    public List<Fields> rows() {
        Cells table = cells(findings);
        if (table.rows().isEmpty()) {
            return List.of();
        }
        List<String> head = table.rows().get(table.header());
        List<String> names = columns.named(file.name(), table.place(table.header()), head, findings);
        if (!columns.cover(names)) {
            return List.of();
        }
        FileCells local = new FileCells(file, ofRows);
        List<Fields> rows = new ArrayList<>();
        for (int row = table.header() + 1; row < table.rows().size(); row++) {
            if (!Cells.isBlank(table.rows().get(row))) {
                addRow(rows, table, row, names, withUnits(head, table.rows().get(row)), local);
            }
        }
        local.tellDoubtful();
        return rows;
    }

    /** Bare numbers of a column whose heading has a unit with that unit. */
    private List<String> withUnits(List<String> head, List<String> row) {
        List<String> cells = new ArrayList<>(row);
        for (int column = 0; column < Math.min(head.size(), row.size()); column++) {
            String unit = columns.heading(head.get(column)).unit();
            String cell = file.form().decimals(row.get(column).strip());
            if (!unit.isEmpty() && BARE_NUMBER.matcher(cell).matches()) {
                cells.set(column, cell + " " + unit);
            }
        }
        return cells;
    }

    /** The names of the columns in the order of the file; empty when the header cannot be used. */
    public List<String> header() {
        Cells table = cells(findings);
        return table.rows().isEmpty()
                ? List.of()
                : table.rows().get(table.header()).stream()
                        .map(cell -> columns.heading(cell).name())
                        .toList();
    }

    /** Whether its first row names the columns, each by its plain name. */
    public boolean beginsWithItsHeader() {
        Cells table = cells(new Findings());
        return file.sheets().isEmpty()
                && table.header() == 0
                && !table.rows().isEmpty()
                && table.rows().get(0).stream()
                        .allMatch(cell -> columns.heading(cell).unit().isEmpty());
    }

    /** The text of the whole file. */
    public String text() {
        return file.text();
    }

    /** What the header separates its names by. */
    public char separator() {
        Cells table = cells(new Findings());
        return table.separator() == 0 ? ',' : table.separator();
    }

    private String firstLine() {
        return file.text().lines().findFirst().orElse("");
    }

    private void addRow(
            List<Fields> rows, Cells table, int row, List<String> names, List<String> cells, FileCells local) {
        String place = table.place(row);
        if (cells.size() != names.size()) {
            ofRows.add(Finding.error(
                    file.name(),
                    place,
                    "",
                    cells.size() + " cells",
                    names.size() + " cells, as many as the header has"));
            return;
        }
        Map<Integer, Cell> wrong = table.wrong(row);
        wrong.forEach((column, cell) ->
                ofRows.add(Finding.error(file.name(), place, names.get(column), cell.text(), cell.wanted())));
        if (!wrong.isEmpty()) {
            return;
        }
        Map<String, String> texts = new HashMap<>();
        for (int column = 0; column < names.size(); column++) {
            boolean number = table.isNumber(row, column);
            String cell = Formula.unmarked(cells.get(column));
            texts.put(names.get(column), local.cell(place, names.get(column), cell, number));
            tellRun(place, names.get(column), cells.get(column));
            tellUnseen(file.name(), place, names.get(column), cells.get(column), findings);
        }
        rows.add(new Fields(file.name(), place, texts, ofRows));
    }

    /** Tells words that a spreadsheet would run when somebody opens the file in one. */
    private void tellRun(String place, String field, String text) {
        if (file.sheets().isEmpty()
                && Formula.isRun(text)
                && !FIGURE.matcher(text).matches()) {
            findings.add(Finding.warning(
                    file.name(),
                    place,
                    field,
                    text,
                    "words that no spreadsheet would run as a formula, such as with a ' in front; used as they are"));
        }
    }

    /** Tells a character that turns or hides what is beside it; pages show it. */
    static void tellUnseen(String file, String place, String field, String text, Findings findings) {
        List<String> unseen = Unseen.in(text);
        if (!unseen.isEmpty()) {
            findings.add(Finding.warning(
                    file,
                    place,
                    field,
                    Unseen.shown(text),
                    "text without the unseen " + (unseen.size() == 1 ? "character " : "characters ")
                            + String.join(", ", unseen)));
        }
    }

    /** The table below its header: the first row, or one a little below where the first is a title and no header. */
    private Cells cells(Findings told) {
        if (!file.sheets().isEmpty()) {
            return new TableSheet(file, columns, told).cells();
        }
        String first = firstLine();
        char separator = separator(first);
        Findings ofFirst = new Findings();
        List<List<String>> rows =
                separator == 0 || first.isBlank() ? List.of() : CsvCells.rows(file, separator, ofFirst);
        if (rows.isEmpty() || !columns.head(rows.get(0))) {
            for (char other : CsvCells.SEPARATORS) {
                List<List<String>> all = CsvCells.rows(file, other, new Findings());
                for (int row = 1; row < Math.min(Cells.MOST_ABOVE, all.size()); row++) {
                    if (columns.head(all.get(row))) {
                        return new Cells(other, row, CsvCells.rows(file, other, told));
                    }
                }
            }
        }
        if (first.isBlank()) {
            told.add(Finding.error(file.name(), "row 1", "", "", "a header row with the names of the columns"));
        } else if (separator == 0) {
            told.add(Finding.error(
                    file.name(), "row 1", "", first, "one separator in the header row: commas, semicolons or tabs"));
        }
        told.addAll(ofFirst.sorted());
        return new Cells(separator, 0, rows);
    }

    /** The one separator the header uses; comma for a single column; 0 when it mixes them. */
    private static char separator(String header) {
        String outside = header.replaceAll("\"[^\"]*\"", "");
        char found = 0;
        for (char candidate : CsvCells.SEPARATORS) {
            if (outside.indexOf(candidate) >= 0) {
                if (found != 0) {
                    return 0;
                }
                found = candidate;
            }
        }
        return found == 0 ? ',' : found;
    }
}
