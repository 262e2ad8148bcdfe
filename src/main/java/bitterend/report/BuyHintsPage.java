package bitterend.report;

import bitterend.buying.Reorder;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;

/** Which ropes will not cover the weeks to come. */
public final class BuyHintsPage {
    private final Figures figures;

    public BuyHintsPage(Figures figures) {
        this.figures = figures;
    }

    /** A table of the ropes that are due; one line when none is. */
    public Document of(List<Reorder> hints) {
        Writing page = new Writing();
        page.heading("Rope for the weeks to come");
        List<Reorder> due = hints.stream().filter(Reorder::isDue).toList();
        if (due.isEmpty()) {
            page.paragraph("Every rope with a history covers the weeks until new reels could come, nine times in ten.");
            return page.document();
        }
        TableRows table = new TableRows(
                Column.words("Order soon"),
                Column.figure("weeks to\ncover"),
                Column.figure("9 times in 10\nenough, " + figures.unit()),
                Column.figure("on the rack,\n" + figures.unit()),
                Column.figure("on order,\n" + figures.unit()));
        for (Reorder hint : due) {
            table.row(
                    hint.rope(),
                    Integer.toString(hint.weeks()),
                    figures.bare(hint.wanted()),
                    figures.bare(hint.there()),
                    figures.bare(hint.onOrder()));
        }
        page.table(table);
        return page.document();
    }
}
