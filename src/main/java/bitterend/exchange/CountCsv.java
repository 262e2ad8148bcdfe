package bitterend.exchange;

import bitterend.catalogue.Catalogue;
import bitterend.catalogue.Rope;
import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.LocalForm;
import bitterend.exchange.form.Reading;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.Formula;
import bitterend.measure.Length;
import bitterend.measure.Parsed;
import bitterend.measure.Units;
import bitterend.measure.Written;
import bitterend.stock.Counted;
import bitterend.stock.Counted.Found;
import bitterend.stock.Holding;
import bitterend.stock.Reel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The list that is filled in while the rack is counted: a row for each reel, by place, without its length in the books, for
 * nobody counts well who knows what must come out.
 */
public final class CountCsv {
    private static final CsvColumns COLUMNS = new CsvColumns(
            List.of("reel", "counted"),
            List.of("place", "rope", "name", "lot", "unit", "uncertainty", "movements", "who"));
    private static final List<String> WRITTEN =
            List.of("place", "reel", "rope", "name", "lot", "counted", "unit", "uncertainty", "movements", "who");
    private static final Reading<Integer> MOVEMENTS = Readings.whole(0, 999_999_999);

    private CountCsv() {}

    /**
     * A row of the list.
     *
     * @param counted what was found
     * @param place where that was; may be empty
     * @param rope the rope that it is of; may be empty
     * @param who who counted it; may be empty
     */
    public record Row(Counted counted, String place, String rope, String who) {}

    /**
     * What a list says.
     *
     * @param rows rows that were filled in; none where one of them cannot be read
     * @param findings what is wrong with it
     */
    public record Read(List<Row> rows, List<Finding> findings) {
        public Read {
            rows = List.copyOf(rows);
            findings = List.copyOf(findings);
        }

        /** What was counted. */
        public List<Counted> counted() {
            return rows.stream().map(Row::counted).toList();
        }
    }

    /** How what was counted is understood: a length, {@code empty}, {@code not found}; of a bare figure the unit is said. */
    public static Parsed<Counted> counted(String reel, String text, String unit) {
        String plain = Readings.plain(text);
        if (plain.matches("not found|missing")) {
            return Parsed.of(Counted.without(reel, Found.MISSING));
        }
        if (plain.matches("empty|none|0+([.]0+)?( *(m|mm|cm|ft|in|yd))?")) {
            return Parsed.of(Counted.without(reel, Found.EMPTY));
        }
        Parsed<Written> read = Readings.presentAsWritten(StockText.inUnit(text, unit));
        return read.value()
                .map(written -> Parsed.of(Counted.of(reel, written, Length.ZERO, Reel.Known.COUNTED)))
                .orElseGet(() -> Parsed.refused("a length such as 23.4 m or 77 ft 6 in, empty, or not found"));
    }

    /** The unit of a bare figure in a shop. */
    public static String unit(Units units) {
        return units == Units.METRIC ? "m" : "ft";
    }

    /** The list to fill in. */
    public static String sheet(List<Holding> walk, Catalogue catalogue, Units units) {
        return text(walk.stream()
                .map(holding -> row(holding, catalogue, Map.of("unit", unit(units))))
                .toList());
    }

    /** A list as far as it is filled in. */
    public static String filled(List<Row> rows) {
        return text(rows.stream().map(CountCsv::row).toList());
    }

    private static Map<String, String> row(Holding holding, Catalogue catalogue, Map<String, String> more) {
        Reel reel = holding.reel();
        Map<String, String> row = new HashMap<>(more);
        row.put("place", reel.where().place());
        row.put("reel", reel.id());
        row.put("rope", reel.rope());
        row.put("name", catalogue.findRope(reel.rope()).map(Rope::name).orElse(""));
        row.put("lot", reel.lot());
        row.put("movements", "" + holding.movements());
        return row;
    }

    private static Map<String, String> row(Row filled) {
        Counted counted = filled.counted();
        Map<String, String> row = new HashMap<>();
        row.put("place", filled.place());
        row.put("reel", counted.reel());
        row.put("rope", filled.rope());
        row.put(
                "counted",
                counted.found() == Found.THERE
                        ? counted.length().kept()
                        : counted.found().word());
        row.put(
                "uncertainty",
                counted.uncertainty().isPositive() ? counted.uncertainty().toString() : "");
        row.put("movements", "" + counted.movements());
        row.put("who", filled.who());
        return row;
    }

    private static String text(List<Map<String, String>> rows) {
        TableText table = TableText.of(String.join(",", WRITTEN) + "\n");
        for (Map<String, String> row : rows) {
            table = table.plus(WRITTEN.stream()
                    .map(column -> Formula.marked(row.getOrDefault(column, "")))
                    .collect(Collectors.toList()));
        }
        return table.text();
    }

    /** Reads a list in the form of files; rows that nobody filled in are no count of their reel. */
    public static Read read(Path file) {
        return read(file, LocalForm.NONE);
    }

    /** The same of a list that was filled in where a shop is: its figures may be typed as they are there. */
    public static Read read(Path file, Settings settings) {
        return read(file, settings.locale());
    }

    private static Read read(Path file, LocalForm form) {
        Findings findings = new Findings();
        List<Row> rows = InputFile.named(file, findings)
                .map(input -> rows(input.in(form), findings))
                .orElse(List.of());
        return new Read(findings.hasErrors() ? List.of() : rows, findings.sorted());
    }

    private static List<Row> rows(InputFile file, Findings findings) {
        List<Row> rows = new ArrayList<>();
        Map<String, String> ids = new HashMap<>();
        for (Fields fields : new CsvTable(file, COLUMNS, findings).rows()) {
            String reel = fields.require("reel", Readings::id, "?" + fields.place());
            fields.once("reel", reel, ids);
            if (fields.text("counted").isPresent()) {
                Row row = row(fields, reel);
                if (fields.sound()) {
                    rows.add(row);
                }
            }
        }
        return rows;
    }

    private static Row row(Fields fields, String reel) {
        String unit = fields.optional("unit", CountCsv::unit, "");
        Counted counted =
                fields.require("counted", text -> counted(reel, text, unit), Counted.without(reel, Found.EMPTY));
        Length uncertainty = fields.optional("uncertainty", Readings::allowance, Length.ZERO);
        if (counted.found() == Found.THERE
                && fields.sound()
                && !counted.length().roundedDown().minus(uncertainty).isPositive()) {
            fields.error("uncertainty", "less than what was counted");
        }
        return new Row(
                new Counted(
                        reel,
                        counted.found(),
                        counted.length(),
                        uncertainty,
                        Reel.Known.COUNTED,
                        fields.optional("movements", MOVEMENTS, 0)),
                fields.optional("place", Readings::text, ""),
                fields.optional("rope", Readings::text, ""),
                fields.optional("who", Readings::text, ""));
    }

    private static Parsed<String> unit(String text) {
        return text.equals("m") || text.equals("ft") ? Parsed.of(text) : Parsed.refused("m or ft");
    }
}
