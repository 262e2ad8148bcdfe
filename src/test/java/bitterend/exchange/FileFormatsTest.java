package bitterend.exchange;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.exchange.form.CsvColumns;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** docs/file-formats.md tells of every column and every price. */
final class FileFormatsTest {
    private final String page;

    FileFormatsTest() throws IOException {
        page = Files.readString(Path.of("docs/file-formats.md"));
    }

    @Test
    void everyColumn_isExplained() {
        for (CsvColumns columns : List.of(
                OrdersCsv.COLUMNS,
                ReelsCsv.COLUMNS,
                PinsCsv.COLUMNS,
                MeasuredCsv.COLUMNS,
                OffersCsv.COLUMNS,
                SuppliersCsv.COLUMNS,
                CustomersCsv.COLUMNS,
                OnOrderCsv.COLUMNS,
                OrdersCsv.columnsWith("placed"))) {
            List<String> names = new ArrayList<>(columns.required());
            names.addAll(columns.optional());
            names.forEach(name -> assertTrue(page.contains("`" + name + "`"), name));
        }
    }

    @Test
    void everyPrice_standsWithItsUnitDefaultAndReason() {
        for (RulePrice price : RulePrice.values()) {
            String row =
                    "| `%s` | %s | %s | %s |".formatted(price.member(), price.unit(), price.minutes(), price.reason());
            assertTrue(page.contains(row), row);
        }
    }
}
