package bitterend.exchange;

import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Findings;
import bitterend.finding.LookAlike;
import bitterend.market.Supplier;
import bitterend.measure.MassPrice;
import bitterend.measure.Money;
import bitterend.measure.MoneyText;
import bitterend.measure.Parsed;
import bitterend.packing.ShopCalendar.Ahead;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code suppliers.csv}: one row for each supplier whose terms the shop knows. */
final class SuppliersCsv {
    static final String NAME = "suppliers.csv";
    static final CsvColumns COLUMNS = new CsvColumns(
            List.of("supplier"),
            List.of(
                    "address",
                    "contact",
                    "freight by order",
                    "freight by weight",
                    "free freight from",
                    "minimum order",
                    "lateness",
                    "note"));

    private final MoneyText money;
    private final Findings findings;

    SuppliersCsv(MoneyText money, Findings findings) {
        this.money = money;
        this.findings = findings;
    }

    /** The suppliers in the order of the file. */
    List<Supplier> read(InputFile file) {
        List<Supplier> suppliers = new ArrayList<>();
        Map<String, String> names = new HashMap<>();
        LookAlike alike = new LookAlike();
        for (Fields row : new CsvTable(file, COLUMNS, findings).rows()) {
            Supplier supplier = supplier(row);
            row.once("supplier", supplier.name(), names);
            row.unlike("supplier", supplier.name(), alike);
            if (row.sound()) {
                suppliers.add(supplier);
            }
        }
        return suppliers;
    }

    private Supplier supplier(Fields row) {
        return new Supplier(
                row.require("supplier", Readings::text, "?" + row.place()),
                row.optional("address", Readings::text, ""),
                row.optional("contact", Readings::text, ""),
                new Supplier.Freight(
                        row.optional("freight by order", this::amount, Money.ZERO),
                        row.optional("freight by weight", money::parseByMass, MassPrice.NOTHING),
                        row.optional("free freight from", this::amount, Supplier.Freight.NEVER)),
                row.optional("minimum order", this::amount, Money.ZERO),
                row.optional("lateness", text -> CalendarJson.late(text).map(Optional::of), Optional.<Ahead>empty())
                        .orElse(null),
                row.optional("note", Readings::text, ""));
    }

    private Parsed<Money> amount(String text) {
        return OffersCsv.amount(text, money);
    }
}
