package bitterend.exchange;

import bitterend.buying.OnOrder;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.measure.Written;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads {@code on-order.csv}: reels that are ordered, but not on the rack yet. */
final class OnOrderCsv {
    static final String NAME = "on-order.csv";
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("number", "rope", "length", "expected"), List.of("quantity", "certificate", "supplier", "note"));

    private final Ropes ropes;
    private final Findings findings;

    OnOrderCsv(Ropes ropes, Findings findings) {
        this.ropes = ropes;
        this.findings = findings;
    }

    /** The reels on order by number. */
    List<OnOrder> read(InputFile file) {
        List<OnOrder> all = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        for (Fields row : new CsvTable(file, COLUMNS, findings).rows()) {
            OnOrder coming = new OnOrder(
                    row.require("number", Readings::id, "?" + row.place()),
                    RopeColumn.read(row, ropes),
                    row.require("length", Readings::presentAsWritten, Written.worked(new Length(1))),
                    row.optional("quantity", Readings.whole(1, 1_000), 1),
                    row.require("expected", Readings::day, LocalDate.EPOCH),
                    row.optional("certificate", Readings::text, ""));
            row.once("number", coming.id(), ids);
            if (row.sound()) {
                all.add(coming);
            }
        }
        all.sort(Comparator.comparing(OnOrder::id, NaturalOrder.IDS));
        return all;
    }
}
