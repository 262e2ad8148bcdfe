package bitterend.exchange;

import bitterend.exchange.form.Codec;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.quoting.Letter;
import bitterend.quoting.Recipient;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a request says of the customer, beside what customers.csv does; a kept quote holds it in the same columns. */
public final class CustomerColumns {
    /** What the first row that states it says, for all. */
    static final List<String> NAMES =
            List.of("customer number", "address", "contact", "customer tax", "customer units");

    private final Reading<String> taxes;

    /** @param letter the rates of tax that a customer may have */
    CustomerColumns(Letter letter) {
        taxes = LetterJson.taxOf(letter);
    }

    /** The members of a document, which say it once. */
    Recipient of(Fields document) {
        return of(document, "customerNumber", "tax", "units");
    }

    /** What is not known of the customer yet is taken from a row that states it. */
    Recipient completed(Recipient known, Fields row) {
        return known.completedBy(of(row, "customer number", "customer tax", "customer units"));
    }

    private Recipient of(Fields fields, String number, String tax, String units) {
        return new Recipient(
                fields.optional(number, Readings::text, ""),
                fields.optional("address", LetterJson::addressInACell, List.of()),
                fields.optional("contact", Readings::text, ""),
                fields.optional(tax, taxes, ""),
                "",
                CustomersCsv.units(fields, units));
    }

    /** A quote goes to one customer, who must not see what another one asks for. */
    static void ofOne(String stated, List<Fields> rows, Findings findings) {
        for (String column : List.of("customer", "customer number")) {
            String first = column.equals("customer") ? stated : "";
            for (Fields row : rows) {
                String here = row.text(column).orElse("");
                first = first.isEmpty() ? here : first;
                if (!here.isEmpty() && !here.equals(first)) {
                    findings.add(Finding.error(
                            row.file(),
                            row.place(),
                            column,
                            here,
                            "\"" + first + "\", as in the lines before it: what another customer asks for is a request"
                                    + " of its own"));
                }
            }
        }
    }

    /** The row with what is known of the customer, where it does not say so itself. */
    public static void fill(Map<String, String> row, String customer, Recipient recipient) {
        Map<String, String> known = new LinkedHashMap<>();
        known.put("customer", customer);
        known.put("customer number", recipient.number());
        known.put("address", String.join("; ", recipient.address()));
        known.put("contact", recipient.contact());
        known.put("customer tax", recipient.tax());
        known.put("customer units", recipient.findUnits().map(Codec::word).orElse(""));
        known.forEach((column, text) -> {
            if (!text.isEmpty()) {
                row.putIfAbsent(column, text);
            }
        });
    }
}
