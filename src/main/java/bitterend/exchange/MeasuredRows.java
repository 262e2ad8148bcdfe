package bitterend.exchange;

import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.measure.LengthsInWords;
import bitterend.measure.Written;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Adds rows to {@code measured.csv} as a person would: below those that are there, which stay as they are. */
public final class MeasuredRows {
    /** Of two who write at once in this process neither puts back what it read before the other wrote. */
    private static final Object PUTTING_BACK = new Object();

    private static final List<String> HEAD = List.of(
            "id",
            "rope",
            "end a",
            "end b",
            "cut",
            "finished",
            "measured",
            "extension",
            "bedded in",
            "splicer",
            MeasuredCsv.MINUTES,
            "day",
            "note");

    /** What the note of a row begins with whose piece is to be made again: it says nothing of the next one. */
    public static final String SPOILED = "spoiled";

    private MeasuredRows() {}

    /**
     * A finished piece as measured.
     *
     * @param piece its id; a second row of the same piece gets a number behind it
     * @param cells what stands in each column, by its name; blank cells may be left out
     */
    public record Row(String piece, Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }
    }

    /** What keeps a row from being added; empty when nothing does. */
    public static List<Finding> problems(Path folder, Row row) {
        Findings findings = new Findings();
        String book = InputFile.workbook(MeasuredCsv.NAME);
        if (Files.exists(folder.resolve(book))) {
            return List.of(Finding.error(
                    book,
                    "",
                    "",
                    "a workbook",
                    "the table saved as " + MeasuredCsv.NAME + ": rows are added to that alone"));
        }
        CsvTable table = table(folder, row, findings);
        table.rows();
        List<String> header = table.header();
        row.cells().forEach((name, text) -> {
            if (!text.isEmpty() && !header.contains(name)) {
                findings.add(Finding.error(
                        MeasuredCsv.NAME, "row 1", name, "", "a column of this name, for \"" + text + '"'));
            }
        });
        return findings.sorted().stream().filter(Finding::isError).toList();
    }

    /**
     * Adds a row that has no problems; a file that is not there is begun, and one from before minutes were
     * booked gets their column behind the others.
     *
     * @return the row as it is written
     */
    public static String add(Path folder, Row row) {
        CsvTable table = table(folder, row, new Findings());
        Map<String, String> cells = new HashMap<>(row.cells());
        cells.put("id", free(row.piece(), table.rows()));
        String separator = String.valueOf(table.separator());
        String line = table.header().stream()
                .map(name -> quoted(cells.getOrDefault(name, ""), separator))
                .collect(Collectors.joining(separator));
        WholeFile.write(folder.resolve(MeasuredCsv.NAME), ended(table.text()) + line + "\n");
        return line;
    }

    /**
     * Takes a row out that was added, unless it was changed since; all others stay as they are.
     *
     * @param line the row as it was written
     * @return whether it was there
     */
    public static boolean takeOut(Path folder, String line) {
        String text = InputFile.find(folder, MeasuredCsv.NAME, new Findings())
                .map(InputFile::text)
                .orElse("");
        List<String> lines = new ArrayList<>(List.of(text.split("(?<=\n)")));
        for (int last = lines.size() - 1; last > 0; last--) {
            if (bare(lines.get(last)).equals(bare(line))) {
                lines.remove(last);
                WholeFile.write(folder.resolve(MeasuredCsv.NAME), String.join("", lines));
                return true;
            }
        }
        return false;
    }

    /** A row without blank cells at its end: it may have been written before a column was added. */
    private static String bare(String line) {
        return line.strip().replaceAll("[,;\t]+$", "");
    }

    /** Does some work that writes the file, and puts back what was there when the work fails. */
    public static <T> T orAsItWas(Path folder, Supplier<T> work) {
        synchronized (PUTTING_BACK) {
            return kept(folder.resolve(MeasuredCsv.NAME), work);
        }
    }

    private static <T> T kept(Path file, Supplier<T> work) {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw new FileSystemException(file.toString(), null, "it is no file that can be read");
            }
            byte @Nullable [] before = Files.exists(file) ? Files.readAllBytes(file) : null;
            try {
                return work.get();
            } catch (RuntimeException | Error fault) {
                putBack(file, before);
                throw fault;
            }
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static void putBack(Path file, byte @Nullable [] before) throws IOException {
        if (before == null) {
            Files.deleteIfExists(file);
        } else if (!Arrays.equals(before, Files.readAllBytes(file))) {
            WholeFile.write(file, before);
        }
    }

    /** The table as it is to be written with a row; what is typed into files by hand stays as it is. */
    private static CsvTable table(Path folder, Row row, Findings findings) {
        InputFile file = InputFile.findTable(folder, MeasuredCsv.NAME, findings)
                .orElse(new InputFile(MeasuredCsv.NAME, String.join(",", HEAD) + "\n", ""));
        CsvTable table = new CsvTable(file, MeasuredCsv.COLUMNS, findings);
        boolean lacks = !row.cells().getOrDefault(MeasuredCsv.MINUTES, "").isEmpty()
                && table.beginsWithItsHeader()
                && !table.header().contains(MeasuredCsv.MINUTES);
        if (!lacks) {
            return table;
        }
        String wider = TableText.of(file.text()).plusColumn(MeasuredCsv.MINUTES).text();
        return new CsvTable(new InputFile(file.name(), wider, ""), MeasuredCsv.COLUMNS, findings);
    }

    /**
     * What was measured last of a piece, as it stands in the file; a cell may be empty.
     *
     * @param finished length it came out at
     * @param measured how that was measured
     * @param note what was said of it
     * @param splicer who made it
     * @param day when
     */
    public record Last(String finished, String measured, String note, String splicer, String day) {
        private static Last of(Fields row) {
            return new Last(
                    row.text("finished").orElse("?"),
                    row.text("measured").orElse(""),
                    row.text("note").orElse(""),
                    row.text("splicer").orElse(""),
                    row.text("day").orElse(""));
        }

        /**
         * In words for a tag.
         *
         * @param print prints a length as it was typed
         */
        public String words(Function<Written, String> print) {
            String by = splicer.isEmpty() ? "" : "spliced by " + splicer;
            return Stream.of(
                            "came out " + LengthsInWords.replaced(finished, print),
                            LengthsInWords.replaced(measured, print),
                            note,
                            by,
                            day)
                    .filter(each -> !each.isEmpty())
                    .collect(Collectors.joining(", "));
        }
    }

    /** What was measured last of each piece that is not spoiled. */
    public static Map<String, Last> last(Path folder) {
        Findings findings = new Findings();
        Map<String, Last> last = new TreeMap<>();
        InputFile.findTable(folder, MeasuredCsv.NAME, findings)
                .map(file -> new CsvTable(file, MeasuredCsv.COLUMNS, findings).rows())
                .orElse(List.of())
                .forEach(row -> row.text("id")
                        .map(id -> id.replaceFirst(" \\([0-9]+\\)$", ""))
                        .ifPresent(piece -> {
                            if (row.text("note").orElse("").startsWith(SPOILED)) {
                                last.remove(piece);
                            } else {
                                last.put(piece, Last.of(row));
                            }
                        }));
        return last;
    }

    private static String free(String piece, List<Fields> rows) {
        Set<String> taken = new HashSet<>();
        rows.forEach(row -> row.text("id").ifPresent(taken::add));
        String id = piece;
        for (int next = 2; taken.contains(id); next++) {
            id = piece + " (" + next + ")";
        }
        return id;
    }

    private static String ended(String text) {
        return text.endsWith("\n") ? text : text + "\n";
    }

    private static String quoted(String cell, String separator) {
        boolean plain = !cell.contains(separator) && !cell.contains("\"");
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
