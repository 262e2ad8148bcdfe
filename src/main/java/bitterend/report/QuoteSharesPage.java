package bitterend.report;

import bitterend.measure.Money;
import bitterend.quoting.PlanShares.OrderShare;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.util.List;

/** What each order of the day caused, as text. */
public final class QuoteSharesPage {
    private final Figures figures;

    public QuoteSharesPage(Figures figures) {
        this.figures = figures;
    }

    /** One row for each order and rope. */
    public Document of(String shop, String day, List<OrderShare> shares) {
        Writing page = new Writing();
        page.title("What each order caused", day, shop);
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.words("order"),
                Column.figure("pieces"),
                Column.figure("cut\n" + figures.unit()),
                Column.figure("rope in\npieces, " + currency),
                Column.figure("share of\nthe cost"),
                Column.figure("beyond\nthe rope"));
        Money all = Money.ZERO;
        for (OrderShare share : shares) {
            all = all.plus(share.share());
            table.row(
                    String.join(", ", share.ropes()),
                    share.order(),
                    Integer.toString(share.pieces()),
                    figures.bare(share.cut()),
                    figures.bare(share.worth()),
                    figures.bare(share.share()),
                    figures.bare(share.share().minus(share.worth())));
        }
        page.tableApart(table);
        page.paragraph("Together " + figures.currency().print(all) + ", the cost of all reels drawn.");
        page.paragraph(
                "Shared by the dual prices behind the proof, where a rope has one, else by cut length. The rack of a day"
                        + " is what it is: these shares promise nothing about what a group would have paid alone.");
        return page.document();
    }
}
