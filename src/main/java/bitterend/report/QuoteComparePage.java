package bitterend.report;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.quoting.QuoteComparison.Compared;
import bitterend.quoting.QuoteComparison.Labour;
import bitterend.quoting.QuoteComparison.Row;
import bitterend.quoting.QuotedWork.Drawn;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;

/** What was quoted against what was posted, as text. */
public final class QuoteComparePage {
    private final Figures figures;

    public QuoteComparePage(Figures figures) {
        this.figures = figures;
    }

    /** Three rows for each rope: quoted, posted, and what was posted more. */
    public Document of(String request, String order, Compared compared) {
        Writing page = new Writing();
        page.title("Quoted and posted: quote", request, "order " + order);
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.words(""),
                Column.figure("pieces"),
                Column.figure("pieces and\ncut loss, " + figures.unit()),
                Column.figure("drawn\n" + figures.unit()),
                Column.figure("rope and\nwaste, " + figures.currency().currency()));
        for (Row row : compared.rows()) {
            drawn(table, row.rope(), "quoted", row.quoted());
            drawn(table, "", "posted", row.posted());
            drawn(table, "", "more", more(row));
        }
        page.tableApart(table);
        page.paragraph(
                "Quoted money is what was charged for rope, waste and reel handling; posted money is the rope drawn, scrap"
                        + " and all, at today's price. Scrap falls to the orders that one plan cut from a reel by what their"
                        + " pieces took.");
        if (compared.labour().isKnown()) {
            labour(page, compared);
        }
        return page.document();
    }

    private static void labour(Writing page, Compared compared) {
        Labour labour = compared.labour();
        int posted =
                compared.rows().stream().mapToInt(row -> row.posted().pieces()).sum();
        String booked = labour.booked() == 0
                ? "none booked"
                : BenchWords.time(labour.booked()) + " booked, for " + labour.pieces() + " of "
                        + FindingsPage.count(posted, "piece") + " posted";
        page.gap();
        page.paragraph("Labour, setting up apart: "
                + (labour.quoted() == 0 ? "none quoted" : BenchWords.time(labour.quoted()) + " quoted")
                + ", " + booked + "."
                + (labour.booked() == 0
                        ? ""
                        : " Minutes of pieces that were spoiled or spliced again are among them."));
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

    private void drawn(TableRows table, String rope, String what, Drawn drawn) {
        table.row(
                rope,
                what,
                Integer.toString(drawn.pieces()),
                figures.bare(drawn.taken()),
                figures.bare(drawn.drawn()),
                figures.bare(drawn.worth().rounded()));
    }
}
