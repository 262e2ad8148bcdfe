package bitterend.report;

import bitterend.buying.Reorder;
import bitterend.report.TextTable.Column;
import java.util.List;

/** Which ropes will not cover the weeks to come. */
public final class BuyHintsPage {
    private final Figures figures;
    private final Ink ink;

    public BuyHintsPage(Figures figures, Ink ink) {
        this.figures = figures;
        this.ink = ink;
    }

    /** A table of the ropes that are due; one line when none is. */
    public String text(List<Reorder> hints) {
        Page page = new Page(ink);
        page.heading("Rope for the weeks to come");
        List<Reorder> due = hints.stream().filter(Reorder::isDue).toList();
        if (due.isEmpty()) {
            page.paragraph(
                    0, "Every rope with a history covers the weeks until new reels could come, nine times in ten.");
            return page.toString();
        }
        TextTable table = new TextTable(
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
        return page.toString();
    }
}
