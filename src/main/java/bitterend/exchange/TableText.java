package bitterend.exchange;

import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A CSV file as its text, cell by cell: what nobody changes is written again as it was read, to the byte. Cells are separated
 * as the header row separates them; a cell in quotes may hold separators and ends of lines.
 *
 * @param separator what separates cells
 * @param end what ends a row that is added
 * @param rows every row as its text with its end, the header first
 */
public record TableText(char separator, String end, List<String> rows) {
    public TableText {
        rows = List.copyOf(rows);
    }

    /**
     * A table as it lies in a folder.
     *
     * @param table its rows
     * @param digest SHA-256 of the file
     */
    public record Lying(TableText table, String digest) {}

    /** The order book of a folder; nothing where it is not in UTF-8 or does not begin with the plain names of its columns. */
    public static Optional<Lying> find(Path folder, String name) {
        return InputFile.find(folder, name, new Findings())
                .filter(InputFile::isUtf8)
                .filter(file -> file.text().isBlank()
                        || new CsvTable(file, OrdersCsv.COLUMNS, new Findings()).beginsWithItsHeader())
                .map(file -> new Lying(of(file.text()), file.digest()));
    }

    /** Another table of a folder, on the same terms: its first row has these plain names, and each name once. */
    public static Optional<Lying> find(Path folder, String name, List<String> names) {
        return InputFile.find(folder, name, new Findings())
                .filter(file -> file.isUtf8() && file.sheets().isEmpty())
                .map(file -> new Lying(of(file.text()), file.digest()))
                .filter(file -> file.table().plainHeader().containsAll(names)
                        && Set.copyOf(file.table().plainHeader()).size()
                                == file.table().header().size());
    }

    /** The names of its columns as readers know them: capitals, hyphens and underscores do not matter. */
    public List<String> plainHeader() {
        return header().stream().map(Readings::plain).distinct().toList();
    }

    /** The same without a row. */
    public TableText without(int row) {
        List<String> all = new ArrayList<>(rows);
        all.remove(row);
        return new TableText(separator, end, all);
    }

    /** The text of a file, without a byte order mark. */
    public static TableText of(String text) {
        String header = text.lines().findFirst().orElse("");
        char separator = header.indexOf('\t') >= 0 ? '\t' : header.indexOf(';') >= 0 ? ';' : ',';
        return new TableText(separator, text.contains("\r\n") ? "\r\n" : "\n", split(text, separator));
    }

    /**
     * A quote opens a cell at its beginning alone: inside one it is a letter, as in {@code 41'6"}. In a cell that began with
     * one, two in a row are a letter.
     */
    private static List<String> split(String text, char separator) {
        List<String> rows = new ArrayList<>();
        int from = 0;
        boolean quoted = false;
        boolean opened = false;
        boolean starts = true;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            boolean ends = !quoted && (letter == separator || letter == '\n');
            if (quoted) {
                quoted = letter != '"';
            } else if (letter == '"') {
                quoted = starts || (opened && text.charAt(at - 1) == '"');
                opened |= starts;
            } else if (letter == '\n') {
                rows.add(text.substring(from, at + 1));
                from = at + 1;
            }
            opened &= !ends;
            starts = ends;
        }
        if (from < text.length()) {
            rows.add(text.substring(from));
        }
        return rows;
    }

    /** All of it. */
    public String text() {
        return String.join("", rows);
    }

    /** The names of its columns, as they are written. */
    public List<String> header() {
        return rows.isEmpty() ? List.of() : cells(0);
    }

    /** The cells of a row, the header being row 0; as many as it has. */
    public List<String> cells(int row) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        String text = withoutEnd(rows.get(row));
        boolean quoted = false;
        boolean starts = true;
        for (int at = 0; at < text.length(); at++) {
            char letter = text.charAt(at);
            if (quoted && letter == '"' && at + 1 < text.length() && text.charAt(at + 1) == '"') {
                cell.append('"');
                at++;
            } else if (letter == '"' && (quoted || starts)) {
                quoted = !quoted;
                starts = false;
            } else if (letter == separator && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
                starts = true;
            } else {
                cell.append(letter);
                starts = false;
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    private static String withoutEnd(String row) {
        return row.endsWith("\r\n")
                ? row.substring(0, row.length() - 2)
                : row.endsWith("\n") ? row.substring(0, row.length() - 1) : row;
    }

    /** Whether a row has nothing in it. */
    public boolean isBlank(int row) {
        return cells(row).stream().allMatch(String::isBlank);
    }

    /** The same with these cells of a row, by column; the others stay as they are written. */
    public TableText with(int row, Map<Integer, String> changed) {
        List<String> cells = new ArrayList<>(cells(row));
        changed.forEach(cells::set);
        List<String> all = new ArrayList<>(rows);
        String old = rows.get(row);
        all.set(row, written(cells) + old.substring(withoutEnd(old).length()));
        return new TableText(separator, end, all);
    }

    /** The same with these columns behind the last, blank in every row. */
    public TableText widened(List<String> names) {
        List<String> all = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            List<String> cells = new ArrayList<>(cells(row));
            for (String name : names) {
                cells.add(row == 0 ? name : "");
            }
            String old = rows.get(row);
            boolean blank = names.isEmpty() || (row > 0 && isBlank(row));
            all.add(blank ? old : written(cells) + old.substring(withoutEnd(old).length()));
        }
        return new TableText(separator, end, all);
    }

    /** The same with a row below the last. */
    public TableText plus(List<String> cells) {
        List<String> all = new ArrayList<>(rows);
        int last = all.size() - 1;
        if (last >= 0 && !all.get(last).endsWith("\n")) {
            all.set(last, all.get(last) + end);
        }
        all.add(written(cells) + end);
        return new TableText(separator, end, all);
    }

    /** The same with one column more, behind the others; it is blank in all rows but the first. */
    public TableText plusColumn(String name) {
        List<String> all = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            String old = rows.get(row);
            String text = withoutEnd(old);
            String more = text.isEmpty() ? "" : separator + (row == 0 ? name : "");
            all.add(text + more + old.substring(text.length()));
        }
        return new TableText(separator, end, all);
    }

    private String written(List<String> cells) {
        return String.join(
                String.valueOf(separator), cells.stream().map(this::written).toList());
    }

    private String written(String cell) {
        boolean quotes = cell.indexOf(separator) >= 0
                || cell.startsWith("\"")
                || cell.indexOf('\n') >= 0
                || cell.indexOf('\r') >= 0
                || !cell.equals(cell.strip());
        return quotes ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }
}
