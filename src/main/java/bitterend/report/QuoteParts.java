package bitterend.report;

import bitterend.demand.EndWork.Picked;
import bitterend.measure.Money;
import bitterend.quoting.PartPrices;
import bitterend.quoting.QuoteLine;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.Optional;

/** The parts of a quoted line, one by one, for the file. */
final class QuoteParts {
    private final Figures figures;
    private final PartPrices prices;

    QuoteParts(Figures figures, PartPrices prices) {
        this.figures = figures;
        this.prices = prices;
    }

    /** Those that have a price as a table, the others by name. */
    void write(Writing page, QuoteLine line) {
        TableRows table = new TableRows(
                Column.words("hardware"), Column.figure("how many"), Column.figure("each\n" + currency()));
        List<Picked> parts = line.parts();
        for (Picked part : parts) {
            Optional<Money> each = prices.each(part);
            each.ifPresent(price ->
                    table.row(figures.sentence(part.words()), Integer.toString(part.count()), figures.bare(price)));
        }
        if (parts.stream().anyMatch(part -> prices.each(part).isPresent())) {
            page.tableApart(table);
        }
        List<String> unpriced = parts.stream()
                .filter(part -> prices.each(part).isEmpty())
                .map(part -> figures.sentence(part.words()))
                .toList();
        if (!unpriced.isEmpty()) {
            page.paragraph("To be picked, without a price of its own: " + String.join(", ", unpriced) + ".");
        }
    }

    private String currency() {
        return figures.currency().currency();
    }
}
