package bitterend.exchange.form;

import bitterend.finding.Finding;
import bitterend.finding.Findings;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The text of a CSV file cut into cells. */
final class CsvCells {
    /** What cells are separated by. */
    static final char[] SEPARATORS = {',', ';', '\t'};

    private static final CsvMapper CSV =
            CsvMapper.csvBuilder().enable(CsvParser.Feature.WRAP_AS_ARRAY).build();
    private static final ObjectReader ROWS = CSV.readerForListOf(String.class);

    private CsvCells() {}

    /** Every row cut into cells, up to the first that cannot be. */
    static List<List<String>> rows(InputFile file, char separator, Findings told) {
        List<List<String>> rows = new ArrayList<>();
        ObjectReader reader = ROWS.with(CsvSchema.emptySchema().withColumnSeparator(separator));
        try (MappingIterator<List<String>> all = reader.readValues(file.text())) {
            while (all.hasNextValue()) {
                List<String> row = all.nextValue();
                Optional<Finding> tooMuch = tooMuch(file.name(), rows.size() + 1, row);
                if (tooMuch.isPresent()) {
                    told.add(tooMuch.get());
                    return first(rows);
                }
                rows.add(row);
            }
        } catch (JsonProcessingException badQuoting) {
            told.add(Finding.error(
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

    /** What is more than is read, of a row of this number from 1 on. */
    private static Optional<Finding> tooMuch(String file, int number, List<String> row) {
        if (number > FileLimits.MOST_ROWS) {
            return Optional.of(refused(file, number, "more rows", FileLimits.MOST_ROWS + " rows in a file"));
        }
        if (row.size() > FileLimits.MOST_COLUMNS) {
            return Optional.of(
                    refused(file, number, row.size() + " cells", FileLimits.MOST_COLUMNS + " cells in a row"));
        }
        return row.stream()
                .filter(cell -> cell.length() > FileLimits.LONGEST_CELL)
                .findFirst()
                .map(cell -> refused(
                        file,
                        number,
                        cell.length() + " characters in a cell",
                        FileLimits.LONGEST_CELL + " characters in a cell; is there a quote too many above?"));
    }

    private static Finding refused(String file, int number, String found, String most) {
        return Finding.error(file, "row " + number, "", found, "at most " + most)
                .workedOut();
    }

    /** So much that the header is found, and nothing of what is below is taken for the whole. */
    private static List<List<String>> first(List<List<String>> rows) {
        return List.copyOf(rows.subList(0, Math.min(rows.size(), 1)));
    }
}
