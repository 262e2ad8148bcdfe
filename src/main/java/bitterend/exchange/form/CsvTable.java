package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Unseen;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A CSV file as rows of named fields. Cells are separated by commas, semicolons or tabs, whichever the header row uses
 * alone. The header is row 1, as in a spreadsheet; blank rows count and are passed over.
 */
public final class CsvTable {
    private static final CsvMapper CSV =
            CsvMapper.csvBuilder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
    private static final ObjectReader ROWS = CSV.readerForListOf(String.class);

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
        List<List<String>> cells = cells();
        if (cells.isEmpty()) {
            return List.of();
        }
        List<String> names = columns.named(file.name(), cells.get(0), findings);
        if (!columns.cover(names)) {
            return List.of();
        }
        List<Fields> rows = new ArrayList<>();
        for (int row = 1; row < cells.size(); row++) {
            if (!isBlank(cells.get(row))) {
                addRow(rows, row + 1, names, cells.get(row));
            }
        }
        return rows;
    }

    /** The names of the columns in the order of the file; empty when the header cannot be used. */
    public List<String> header() {
        List<List<String>> cells = cells();
        return cells.isEmpty()
                ? List.of()
                : cells.get(0).stream().map(Readings::plain).toList();
    }

    /** The text of the whole file. */
    public String text() {
        return file.text();
    }

    /** What the header separates its names by. */
    public char separator() {
        return separator(firstLine());
    }

    private String firstLine() {
        return file.text().lines().findFirst().orElse("");
    }

    private void addRow(List<Fields> rows, int number, List<String> names, List<String> cells) {
        String place = "row " + number;
        if (cells.size() != names.size()) {
            ofRows.add(Finding.error(
                    file.name(),
                    place,
                    "",
                    cells.size() + " cells",
                    names.size() + " cells, as many as the header has"));
            return;
        }
        Map<String, String> texts = new HashMap<>();
        for (int column = 0; column < names.size(); column++) {
            texts.put(names.get(column), cells.get(column));
            tellUnseen(file.name(), place, names.get(column), cells.get(column), findings);
        }
        rows.add(new Fields(file.name(), place, texts, ofRows));
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

    /** Every row cut into cells, up to the first that cannot be. */
    private List<List<String>> cells() {
        List<List<String>> rows = new ArrayList<>();
        String header = firstLine();
        if (header.isBlank()) {
            findings.add(Finding.error(file.name(), "row 1", "", "", "a header row with the names of the columns"));
            return rows;
        }
        char separator = separator(header);
        if (separator == 0) {
            findings.add(Finding.error(
                    file.name(), "row 1", "", header, "one separator in the header row: commas, semicolons or tabs"));
            return rows;
        }
        ObjectReader reader = ROWS.with(CsvSchema.emptySchema().withColumnSeparator(separator));
        try (MappingIterator<List<String>> all = reader.readValues(file.text())) {
            while (all.hasNextValue()) {
                rows.add(all.nextValue());
            }
        } catch (JsonProcessingException badQuoting) {
            findings.add(Finding.error(
                    file.name(),
                    "row " + (rows.size() + 1),
                    "",
                    "a quote that does not pair",
                    "quotes around a whole cell, and two for a quote inside it; the rows below were not read"));
        } catch (IOException impossible) {
            throw new IllegalStateException("reading from memory", impossible);
        }
        return rows;
    }

    /** The one separator the header uses; comma for a single column; 0 when it mixes them. */
    private static char separator(String header) {
        String outside = header.replaceAll("\"[^\"]*\"", "");
        char found = 0;
        for (char candidate : new char[] {',', ';', '\t'}) {
            if (outside.indexOf(candidate) >= 0) {
                if (found != 0) {
                    return 0;
                }
                found = candidate;
            }
        }
        return found == 0 ? ',' : found;
    }

    private static boolean isBlank(List<String> cells) {
        return cells.stream().allMatch(String::isBlank);
    }
}
