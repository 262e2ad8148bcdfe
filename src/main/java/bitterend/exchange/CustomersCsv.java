package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.LookAlike;
import bitterend.measure.Units;
import bitterend.quoting.Letter;
import bitterend.quoting.Recipient;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads {@code customers.csv}: one row for each customer whom the shop writes to. */
final class CustomersCsv {
    static final String NAME = "customers.csv";
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("customer"), List.of("number", "address", "contact", "tax", "payment", "units", "note"));

    private static final Reading<Units> UNITS = Readings.word(Units.values(), Codec::word);

    private final Reading<String> taxes;
    private final Findings findings;

    /** @param letter the rates of tax that a customer may have */
    CustomersCsv(Letter letter, Findings findings) {
        taxes = LetterJson.taxOf(letter);
        this.findings = findings;
    }

    /** The customers by name. */
    Map<String, Recipient> read(InputFile file) {
        Map<String, Recipient> customers = new HashMap<>();
        Map<String, String> names = new HashMap<>();
        Map<String, String> numbers = new HashMap<>();
        LookAlike alike = new LookAlike();
        for (Fields row : new CsvTable(file, COLUMNS, findings).rows()) {
            String name = row.require("customer", Readings::text, "?" + row.place());
            Recipient recipient = new Recipient(
                    row.optional("number", Readings::text, ""),
                    row.optional("address", LetterJson::addressInACell, List.of()),
                    row.optional("contact", Readings::text, ""),
                    row.optional("tax", taxes, ""),
                    row.optional("payment", Readings::text, ""),
                    units(row, "units"));
            row.optional("note", Readings::text, "");
            row.once("customer", name, names);
            row.unlike("customer", name, alike);
            if (!recipient.number().isEmpty()) {
                row.once("number", recipient.number(), numbers);
            }
            if (row.sound()) {
                customers.put(name, recipient);
            }
        }
        return customers;
    }

    /** In which units a customer's page is, here and in a request; null where it is not said. */
    static @Nullable Units units(Fields row, String column) {
        return row.optional(column, text -> UNITS.read(text).map(Optional::of), Optional.<Units>empty())
                .orElse(null);
    }
}
