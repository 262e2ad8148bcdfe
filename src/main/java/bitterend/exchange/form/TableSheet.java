package bitterend.exchange.form;

import bitterend.exchange.workbook.Cell;
import bitterend.exchange.workbook.Sheet;
import bitterend.exchange.workbook.Sheet.Row;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Finds the sheet of a workbook that a table is on: the one sheet with the headings, or of several the one that is named as
 * the file is. Columns without heading and content are passed over, so that a table may begin anywhere.
 */
final class TableSheet {
    private static final Cells NONE = new Cells(',', 0, List.of());

    private final InputFile file;
    private final CsvColumns columns;
    private final Findings told;

    TableSheet(InputFile file, CsvColumns columns, Findings told) {
        this.file = file;
        this.columns = columns;
        this.told = told;
    }

    /** The rows of the sheet by their numbers; none where it cannot be said which sheet is meant. */
    Cells cells() {
        List<Sheet> fit =
                file.sheets().stream().filter(each -> header(each).isPresent()).toList();
        List<Sheet> seen = fit.stream().filter(each -> !each.hidden()).toList();
        List<Sheet> named = seen.stream()
                .filter(each -> each.name().strip().equalsIgnoreCase(stem()))
                .toList();
        if (seen.size() == 1 || named.size() == 1) {
            Sheet sheet = seen.size() == 1 ? seen.get(0) : named.get(0);
            return cells(sheet, header(sheet).orElseThrow());
        }
        if (seen.size() > 1) {
            return refused(
                    "these columns in sheets " + names(seen), "one sheet with them, or the sheet named " + stem());
        }
        if (!fit.isEmpty()) {
            return refused("these columns in " + names(fit) + " alone, which is hidden", "the sheet not hidden");
        }
        return file.sheets().stream()
                .filter(each -> !each.hidden() && !each.rows().isEmpty())
                .findFirst()
                .map(sheet -> cells(sheet, sheet.rows().get(0)))
                .orElseGet(this::empty);
    }

    private Cells empty() {
        for (Sheet sheet : file.sheets()) {
            told.addAll(sheet.toldFrom(1));
        }
        if (file.sheets().stream().anyMatch(each -> each.toldFrom(1).stream().anyMatch(Finding::isError))) {
            return NONE;
        }
        Sheet first = file.sheets().get(0);
        told.add(Finding.error(file.name(), first.place(1), "", "", "a header row with the names of the columns"));
        return NONE;
    }

    private Cells refused(String found, String expected) {
        told.add(Finding.error(file.name(), "", "", found, expected).workedOut());
        return NONE;
    }

    private String stem() {
        int dot = file.name().lastIndexOf('.');
        return dot < 0 ? file.name() : file.name().substring(0, dot);
    }

    private static String names(List<Sheet> sheets) {
        return sheets.stream().map(Sheet::name).collect(Collectors.joining(", "));
    }

    private Optional<Row> header(Sheet sheet) {
        return sheet.rows().stream()
                .limit(Cells.MOST_ABOVE)
                .filter(row -> columns.head(row.texts()))
                .findFirst();
    }

    private Cells cells(Sheet sheet, Row header) {
        told.addAll(sheet.toldFrom(header.number()));
        List<Row> below = sheet.rows().stream()
                .filter(row -> row.number() >= header.number())
                .toList();
        List<Integer> kept = kept(sheet, header, below);
        List<List<String>> rows = new ArrayList<>();
        Map<Integer, Map<Integer, Cell>> typed = new HashMap<>();
        for (Row row : below) {
            while (rows.size() < row.number() - 1) {
                rows.add(List.of());
            }
            rows.add(kept.stream().map(column -> cell(row, column).text()).toList());
            for (int at = 0; at < kept.size(); at++) {
                Cell cell = cell(row, kept.get(at));
                boolean pointed = cell.kind() == Cell.Kind.NUMBER && cell.text().indexOf('.') >= 0;
                if (pointed || cell.kind() == Cell.Kind.WRONG) {
                    typed.computeIfAbsent(row.number() - 1, any -> new HashMap<>())
                            .put(at, cell);
                }
            }
        }
        return new Cells(',', header.number() - 1, rows, sheet.place() + ", ", typed);
    }

    private static Cell cell(Row row, int column) {
        return column < row.cells().size() ? row.cells().get(column) : Cell.BLANK;
    }

    /** The columns with a heading; what is in another is told. */
    private List<Integer> kept(Sheet sheet, Row header, List<Row> below) {
        List<Integer> kept = new ArrayList<>();
        int widest = below.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        for (int each = 0; each < widest; each++) {
            int column = each;
            if (!cell(header, column).isBlank()) {
                kept.add(column);
            } else {
                below.stream()
                        .filter(row -> !cell(row, column).isBlank())
                        .findFirst()
                        .ifPresent(row -> told.add(Finding.error(
                                file.name(),
                                sheet.place(row.number()),
                                "column " + Sheet.letters(column + 1),
                                cell(row, column).text(),
                                "nothing in a column without a heading")));
            }
        }
        return kept;
    }
}
