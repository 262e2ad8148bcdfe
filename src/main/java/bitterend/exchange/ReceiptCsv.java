package bitterend.exchange;

import bitterend.exchange.form.CsvColumns;
import bitterend.exchange.form.CsvTable;
import bitterend.exchange.form.Fields;
import bitterend.exchange.form.InputFile;
import bitterend.exchange.form.Readings;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.finding.LookAlike;
import bitterend.measure.Length;
import bitterend.measure.MoneyText;
import bitterend.measure.Ratio;
import bitterend.stock.Paid;
import bitterend.stock.Reel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A supplier's list of reels that came in: the columns of {@code reels.csv} that hold for new rope, the tolerance of the
 * delivery, and the order of reels that each is of.
 */
public final class ReceiptCsv {
    private static final CsvColumns COLUMNS = new CsvColumns(
            List.of("reel", "rope", "length"),
            List.of(
                    "lot",
                    "tolerance",
                    "uncertainty",
                    "known",
                    "lead trim",
                    "inner wraps",
                    "flaws",
                    "certificate",
                    "certificate number",
                    "use by",
                    "received",
                    "place",
                    "on order",
                    "paid",
                    "full",
                    "note"));

    /** What holds of a delivery where a row says nothing, as for a reel that is received alone. */
    private static final Map<String, String> USUAL = Map.of("known", Reel.Known.NOMINAL.word(), "full", "yes");

    private ReceiptCsv() {}

    /**
     * A row of the list.
     *
     * @param place where it is in the list
     * @param reel what came; its rope need not be in the catalogue
     * @param tolerance it may be so much short
     * @param onOrder number of the order of reels that it is of; empty for none
     * @param paid what was paid for it
     */
    public record Row(String place, Reel reel, Ratio tolerance, String onOrder, Paid paid) {}

    /**
     * What a list says.
     *
     * @param rows its rows; none where one of them cannot be read
     * @param findings what is wrong with it
     */
    public record Read(List<Row> rows, List<Finding> findings) {
        public Read {
            rows = List.copyOf(rows);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Reads a list; days and decimal commas may be typed as they are where the shop is.
     *
     * @param onOrder number of the order of reels that every row is of which names none; empty for none
     */
    public static Read read(Path file, Settings settings, String onOrder) {
        Findings findings = new Findings();
        List<Row> rows = InputFile.named(file, findings)
                .map(input -> rows(input.in(settings.locale()), settings.money(), onOrder, findings))
                .orElse(List.of());
        return new Read(findings.hasErrors() ? List.of() : rows, findings.sorted());
    }

    private static List<Row> rows(InputFile file, MoneyText money, String onOrder, Findings findings) {
        ReelsCsv reels = new ReelsCsv(Ropes.UNREAD, findings);
        LookAlike met = new LookAlike();
        Map<String, LookAlike> lots = new HashMap<>();
        List<Row> rows = new ArrayList<>();
        for (Fields typed : new CsvTable(file, COLUMNS, findings).rows()) {
            Fields fields = typed.over(USUAL);
            Row row = row(fields, reels, money, onOrder);
            fields.unlike("reel", row.reel().id(), met);
            fields.unlike(
                    "lot", row.reel().lot(), lots.computeIfAbsent(row.reel().rope(), rope -> new LookAlike()));
            if (fields.sound()) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static Row row(Fields fields, ReelsCsv reels, MoneyText money, String onOrder) {
        Reel reel = reels.reel(fields);
        Ratio tolerance = fields.optional("tolerance", StockText::tolerance, Ratio.ZERO);
        if (tolerance.isPositive() && !reel.contents().uncertainty().equals(Length.ZERO)) {
            fields.error("tolerance", "a tolerance, or an uncertainty in its column, not both");
        }
        Paid paid = fields.optional(
                "paid", text -> StockText.paid(text, reel.length(), money).map(Paid::of), Paid.NOT_SAID);
        return new Row(fields.place(), reel, tolerance, fields.optional("on order", Readings::id, onOrder), paid);
    }
}
