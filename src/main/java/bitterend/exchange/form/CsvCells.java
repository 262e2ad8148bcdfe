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
                rows.add(all.nextValue());
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
}
