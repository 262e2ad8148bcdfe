package bitterend.exchange.form;

import bitterend.exchange.workbook.Cell;
import bitterend.exchange.workbook.Limits;
import bitterend.exchange.workbook.Sheet;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A sheet as somebody keeps it: rows of cells, of which nobody has said yet what they mean. Rows and columns count from 0 here.
 *
 * @param file the file it is from
 * @param name of the sheet inside its file; empty where a file is one sheet
 * @param rows its rows, those without anything in them too
 * @param told what a reader should know of it, such as rows that are hidden and read all the same
 */
public record OwnSheet(String file, String name, List<List<Cell>> rows, List<Sheet.Told> told) {
    /** Bytes of a sheet that is sent to the program: those of the largest workbook. */
    public static final long MOST_BYTES = Limits.MOST_BYTES;

    public OwnSheet {
        rows = rows.stream().map(List::copyOf).toList();
        told = List.copyOf(told);
    }

    /** What a reader should know of a row and those below it. */
    public List<Finding> toldFrom(int row) {
        return told.stream()
                .filter(each -> each.row() > row)
                .map(Sheet.Told::finding)
                .toList();
    }

    /** Where a row is, as findings say it: {@code row 12}, {@code sheet Orders, row 12}. */
    public String place(int row) {
        return (name.isEmpty() ? "" : "sheet " + name + ", ") + "row " + (row + 1);
    }

    private Cell at(int row, int column) {
        List<Cell> cells = rows.get(row);
        return column < cells.size() ? cells.get(column) : Cell.BLANK;
    }

    /** A cell, stripped; empty where a row ends before it. */
    public String cell(int row, int column) {
        return at(row, column).text().strip();
    }

    /** Whether a cell holds a number or a day and no text, so that its figures mean one thing. */
    public boolean isExact(int row, int column) {
        return at(row, column).kind() == Cell.Kind.NUMBER || at(row, column).kind() == Cell.Kind.DATE;
    }

    /** What is wrong with a cell that has no value; empty for nothing. */
    public String wanted(int row, int column) {
        return at(row, column).wanted();
    }

    /** The cells of a row, stripped. */
    public List<String> texts(int row) {
        return rows.get(row).stream().map(cell -> cell.text().strip()).toList();
    }

    /** Whether a row has nothing in it. */
    public boolean isBlank(int row) {
        return rows.get(row).stream().allMatch(Cell::isBlank);
    }

    /** The texts of a column below a row, none that is blank. */
    public List<String> below(int row, int column) {
        return below(row, column, false);
    }

    /** The same of those that somebody typed as text. */
    public List<String> typedBelow(int row, int column) {
        return below(row, column, true);
    }

    private List<String> below(int row, int column, boolean typed) {
        List<String> texts = new ArrayList<>();
        for (int at = row + 1; at < rows.size(); at++) {
            if (!cell(at, column).isEmpty() && !(typed && isExact(at, column))) {
                texts.add(cell(at, column));
            }
        }
        return texts;
    }

    /**
     * The sheets of a file that are not hidden, which are told: one of a text, whatever its cells are separated by, those of a workbook. A sheet
     * that cannot be read to its end is told as an error: rows would be missing.
     */
    public static List<OwnSheet> read(Path file, Findings findings) {
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(file);
        String name = String.valueOf(file.getFileName());
        Optional<InputFile> found = InputFile.find(folder, name, findings);
        if (found.isEmpty() && findings.size() == 0) {
            findings.add(Finding.error(file.toString(), "", "", "", "a file that is there"));
        }
        return found.map(read -> sheets(read, findings)).orElse(List.of());
    }

    private static List<OwnSheet> sheets(InputFile file, Findings findings) {
        if (file.sheets().isEmpty()) {
            return List.of(new OwnSheet(file.name(), "", ofText(file, findings), List.of()));
        }
        List<Sheet> seen =
                file.sheets().stream().filter(sheet -> !sheet.hidden()).toList();
        file.sheets().stream()
                .filter(sheet -> sheet.hidden() && !sheet.rows().isEmpty())
                .map(sheet -> Finding.warning(
                        file.name(),
                        sheet.place(),
                        "",
                        "a hidden sheet",
                        "a sheet that is not hidden, where it is to be read, too; it was left out"))
                .forEach(findings::add);
        for (Sheet sheet : seen) {
            sheet.toldFrom(1).stream().filter(Finding::isError).forEach(findings::add);
        }
        return seen.stream()
                .filter(sheet -> !sheet.rows().isEmpty())
                .map(sheet -> new OwnSheet(file.name(), sheet.name(), ofBook(sheet), sheet.told()))
                .toList();
    }

    private static List<List<Cell>> ofBook(Sheet sheet) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Sheet.Row row : sheet.rows()) {
            while (rows.size() < row.number() - 1) {
                rows.add(List.of());
            }
            rows.add(row.cells());
        }
        return rows;
    }

    /** Cells are separated by what parts most rows into equally many, since a title above them has no say in that. */
    private static List<List<Cell>> ofText(InputFile file, Findings findings) {
        char best = CsvCells.SEPARATORS[0];
        long most = -1;
        for (char separator : CsvCells.SEPARATORS) {
            long alike = alike(CsvCells.rows(file, separator, new Findings()));
            if (alike > most) {
                best = separator;
                most = alike;
            }
        }
        return CsvCells.rows(file, best, findings).stream()
                .map(row -> row.stream()
                        .map(text -> new Cell(Cell.Kind.TEXT, text, ""))
                        .toList())
                .toList();
    }

    /** How many rows have as many cells as most have; of equals the one with more cells counts more. */
    private static long alike(List<List<String>> rows) {
        Map<Integer, Integer> widths = new HashMap<>();
        rows.forEach(row -> widths.merge(row.size(), 1, Integer::sum));
        return widths.entrySet().stream()
                .filter(width -> width.getKey() > 1)
                .mapToLong(width -> width.getValue() * 1000L + Math.min(999, width.getKey()))
                .max()
                .orElse(0);
    }
}
