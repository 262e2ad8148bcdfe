package bitterend.report;

import bitterend.buying.Advice;
import bitterend.buying.Orders;
import bitterend.buying.Purchase;
import bitterend.buying.ReelLine;
import bitterend.buying.Shortage;
import bitterend.buying.Unheld;
import bitterend.measure.Cost;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.List;

/** What to buy for the orders in hand, as a page of text. */
public final class BuyAdvicePage {
    private final Figures figures;
    private final BuyWords words;

    public BuyAdvicePage(Figures figures) {
        this.figures = figures;
        words = new BuyWords(figures, List.of());
    }

    /**
     * The page of a shop.
     *
     * @param until how far ahead it was looked where rope is short
     * @param ropes where it is
     */
    public Document of(String shop, Orders orders, Advice advice, LocalDate until, List<Shortage> ropes) {
        Writing page = new Writing();
        page.heading(
                shop + ": reels to buy for the orders in hand, " + orders.day().day());
        page.paragraph(act(orders, advice.best()));
        if (advice.best().set().reels() > 0) {
            lines(page, orders, advice.best());
        }
        next(page, orders, advice);
        troubles(page, orders, advice);
        new ShortagePage(figures).section(page, until, ropes);
        return page.document();
    }

    private String act(Orders orders, Purchase best) {
        if (best.set().reels() == 0) {
            return "Buy nothing: the rack and the rope on order hold every piece that rope can be had for."
                    + proof(best);
        }
        return "Order " + words.set(best.set(), orders) + " for " + figures.money(best.paid())
                + ". What is left of them afterwards is worth " + figures.money(best.left())
                + ". With what they take off the rack and the work at the bench, the orders for rope that is offered cost "
                + figures.money(best.cost()) + "." + proof(best);
    }

    private String proof(Purchase best) {
        if (best.isProven()) {
            return " Proven: no other set costs less.";
        }
        return best.bound().equals(Cost.ZERO)
                ? " Nothing is proven about how much less another set could cost."
                : " Proven: no set costs less than " + figures.atLeast(best.bound()) + ", so at most "
                        + figures.atMost(best.cost().minus(best.bound())) + " could be saved.";
    }

    private void lines(Writing page, Orders orders, Purchase best) {
        page.heading("To order");
        for (ReelLine line : best.lines()) {
            page.paragraph(line(orders, line));
        }
    }

    private String line(Orders orders, ReelLine line) {
        var made = line.offer().made();
        StringBuilder text =
                new StringBuilder(line.reels() + " x " + line.offer().id());
        if (!line.offer().supplier().isEmpty()) {
            text.append(", ").append(line.offer().supplier());
        }
        text.append(": ").append(orders.day().rope(line.offer().rope()).name()).append(", reels of ");
        text.append(figures.written(made.written())).append(", each in one length without joins");
        if (made.tolerance().isPositive()) {
            text.append(", no more than ")
                    .append(words.percent(made.tolerance()))
                    .append(" % short");
        }
        if (!made.certificate().isEmpty()) {
            text.append(", with certificate ").append(made.certificate());
        }
        if (line.oneLot()) {
            text.append(", all from one lot, for a matched set");
        }
        if (line.mass().grams() > 0) {
            text.append("; ").append(figures.mass(line.mass())).append(" of rope");
        }
        text.append("; ").append(figures.money(line.offer().paid().times(line.reels())));
        return text.append(orderBy(orders.day().day(), line.orderBy()))
                .append('.')
                .toString();
    }

    private static String orderBy(LocalDate today, LocalDate orderBy) {
        if (orderBy.equals(LocalDate.MAX)) {
            return "";
        }
        return orderBy.isBefore(today) ? "; order at once, it comes late" : "; order by " + orderBy;
    }

    private void next(Writing page, Orders orders, Advice advice) {
        if (advice.next().isEmpty()) {
            return;
        }
        page.heading("Next best");
        TableRows table = new TableRows(
                Column.words("Reels"),
                Column.figure("costs more,\n" + figures.currency().currency()),
                Column.figure("paid,\n" + figures.currency().currency()));
        for (Purchase next : advice.next()) {
            table.row(
                    words.set(next.set(), orders),
                    words.bare(next.cost().minus(advice.best().cost())),
                    words.bare(next.paid()));
        }
        page.table(table);
        if (!advice.allCompared()) {
            page.paragraph("There was no time to look for every set; a longer --time may find a nearer one.");
        }
    }

    private void troubles(Writing page, Orders orders, Advice advice) {
        List<String> joined = orders.offers().stream()
                .filter(offer -> offer.made().joined())
                .map(offer -> offer.id())
                .toList();
        boolean none = advice.unheld().isEmpty()
                && advice.late().isEmpty()
                && advice.best().unplanned().isEmpty()
                && joined.isEmpty();
        if (none) {
            return;
        }
        page.heading("What cannot be had");
        for (Unheld unheld : advice.unheld()) {
            page.paragraph(unheld.piece() + ": " + figures.sentence(unheld.why()) + ".");
        }
        if (!advice.best().unplanned().isEmpty()) {
            page.paragraph("Not enough rope is offered for "
                    + String.join(", ", advice.best().unplanned()) + ".");
        }
        if (!advice.late().isEmpty()) {
            page.paragraph("Rope comes after the due day for " + String.join(", ", advice.late()) + ".");
        }
        if (!joined.isEmpty()) {
            page.paragraph("Left out, since nobody knows where the joins would lie: " + String.join(", ", joined)
                    + ". Ask for reels in one length.");
        }
    }
}
