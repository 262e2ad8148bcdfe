package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.quoting.QuoteComparison.Row;
import bitterend.quoting.QuotedWork.Drawn;
import bitterend.report.QuoteBlock.Column;
import java.util.List;

/** What was quoted against what was posted, as text. */
public final class QuoteComparePage {
    private final Figures figures;
    private final Ink ink;

    public QuoteComparePage(Figures figures, Ink ink) {
        this.figures = figures;
        this.ink = ink;
    }

    /** Three rows for each rope: quoted, posted, and what was posted more. */
    public String text(String request, String order, List<Row> rows) {
        QuoteDocument.Writing page = new QuoteDocument.Writing();
        QuoteTable table = new QuoteTable(
                Column.words("rope"),
                Column.words(""),
                Column.figure("pieces"),
                Column.figure("pieces and\ncut loss, " + figures.unit()),
                Column.figure("drawn\n" + figures.unit()),
                Column.figure("rope and\nwaste, " + figures.currency().currency()));
        for (Row row : rows) {
            drawn(table, row.rope(), "quoted", row.quoted());
            drawn(table, "", "posted", row.posted());
            drawn(table, "", "more", more(row));
        }
        page.table(table);
        page.paragraph(
                "Quoted money is what was charged for rope, waste and reel handling; posted money is the rope drawn, scrap"
                        + " and all, at today's price. Scrap falls to the orders that one plan cut from a reel by what their"
                        + " pieces took.");
        return page.document("Quoted and posted: quote", request, "order " + order)
                .text(ink);
    }

    private static Drawn more(Row row) {
        Drawn posted = row.posted();
        Drawn quoted = row.quoted();
        Length taken = posted.taken().minus(quoted.taken());
        Cost worth = posted.worth().minus(quoted.worth());
        return new Drawn(
                row.rope(),
                posted.pieces() - quoted.pieces(),
                taken,
                posted.drawn().minus(quoted.drawn()),
                worth);
    }

    private void drawn(QuoteTable table, String rope, String what, Drawn drawn) {
        table.row(
                rope,
                what,
                Integer.toString(drawn.pieces()),
                figures.bare(drawn.taken()),
                figures.bare(drawn.drawn()),
                figures.bare(drawn.worth().rounded()));
    }
}
