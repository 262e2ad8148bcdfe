package bitterend.report;

import bitterend.buying.reorder.Line;
import bitterend.buying.reorder.Proposal;
import bitterend.market.Bill;
import bitterend.market.UsualLateness;
import bitterend.measure.Money;
import bitterend.report.page.Column;
import bitterend.report.page.Document;
import bitterend.report.page.TableRows;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;

/** What to order again now, by supplier: how many reels, why, and what the order comes to. */
public final class ReorderPage {
    private final Figures figures;
    private final ReorderWords words;

    public ReorderPage(Figures figures) {
        this.figures = figures;
        words = new ReorderWords(figures);
    }

    /**
     * The page.
     *
     * @param lateness how late suppliers usually are
     */
    public Document of(String shop, Proposal proposal, UsualLateness lateness) {
        Writing page = new Writing();
        page.heading(shop + ": what to order on " + proposal.day());
        if (proposal.isEmpty()) {
            page.paragraph(
                    proposal.unpaid().isEmpty()
                            ? "Nothing is to be ordered today."
                            : "Nothing is ordered: the budget pays for none of it.");
        }
        for (Bill.Order order : proposal.bill().orders()) {
            supplier(page, order, proposal, lateness);
        }
        if (proposal.bill().orders().size() > 1) {
            page.paragraph("All orders together come to "
                    + figures.money(proposal.bill().sum().fine()) + ", freight included.");
        }
        unpaid(page, proposal.unpaid());
        booked(page, proposal.booked());
        later(page, proposal.later());
        if (!proposal.unoffered().isEmpty()) {
            page.paragraph("Nobody offers: "
                    + proposal.unoffered().stream().map(Wording::printable).collect(Collectors.joining(", ")) + ".");
        }
        ReorderAssumed assumed = new ReorderAssumed(figures);
        assumed.leftOut(page, proposal);
        assumed.write(page, proposal);
        return page.document();
    }

    private void supplier(Writing page, Bill.Order order, Proposal proposal, UsualLateness lateness) {
        String name = order.supplier().name();
        List<Line> lines = proposal.lines().stream()
                .filter(line -> line.offer().supplier().equals(name))
                .toList();
        page.heading(supplierName(name));
        page.table(lines(lines));
        lines.forEach(line -> page.paragraph(Wording.printable(line.need().rope()) + ": " + words.why(line)));
        page.paragraph(sum(order) + " Its reels usually come "
                + FindingsPage.count(
                        lateness.of(name).late().days(),
                        lateness.of(name).late().working() ? "working day" : "day")
                + " late: " + source(lateness.of(name)) + ".");
        proposal.bill().objections().stream()
                .map(this::objection)
                .filter(each -> each.startsWith(supplierName(name)))
                .forEach(page::caution);
    }

    private static String source(UsualLateness.Known known) {
        return switch (known.source()) {
            case OF_ALL -> "as the shop says of all";
            case OF_SUPPLIER -> "as the shop says of this supplier";
            case DELIVERIES -> "by its last " + known.deliveries() + " deliveries";
        };
    }

    static String supplierName(String name) {
        return name.isEmpty() ? "No supplier stated" : Wording.printable(name);
    }

    private TableRows lines(List<Line> lines) {
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.words("offer"),
                Column.figure("reels"),
                Column.figure("length\n" + figures.unit()),
                Column.figure("each\n" + figures.currency().currency()),
                Column.figure("comes to\n" + figures.currency().currency()),
                Column.words("order by"),
                Column.words("expected"));
        for (Line line : lines) {
            table.row(
                    Wording.printable(line.need().rope()),
                    Wording.printable(line.offer().id()),
                    "" + line.reels(),
                    figures.bareTotal(line.offer().made().length()),
                    figures.bare(line.each()),
                    figures.bare(line.each().times(line.reels())),
                    "" + line.orderBy(),
                    "" + line.expected());
        }
        return table;
    }

    /** What an order comes to. */
    private String sum(Bill.Order order) {
        String goods = "Reels " + figures.money(order.goods().fine()) + ", ";
        String way = order.freight().free()
                ? "freight paid by the supplier"
                : order.freight().sum().equals(Money.ZERO)
                        ? "no freight"
                        : "freight " + figures.money(order.freight().sum().fine());
        return goods + way + "; together " + figures.money(order.sum().fine()) + ".";
    }

    private String objection(Bill.Objection objection) {
        if (objection instanceof Bill.Objection.BelowMinimumOrder below) {
            return supplierName(below.supplier().name()) + " takes no order below "
                    + figures.money(below.supplier().minimumOrder().fine()) + ": this one comes to "
                    + figures.money(below.goods().fine()) + ".";
        }
        return "";
    }

    private void unpaid(Writing page, List<Line> lines) {
        if (!lines.isEmpty()) {
            page.heading("Due, and beyond the budget");
            page.table(lines(lines));
        }
    }

    private void booked(Writing page, List<Proposal.Booked> ropes) {
        if (ropes.isEmpty()) {
            return;
        }
        page.heading("Booked beyond what there is, and nobody offers it");
        for (Proposal.Booked each : ropes) {
            page.paragraph(Wording.printable(each.rope()) + ": " + words.beyond(each.position()));
        }
    }

    private void later(Writing page, List<Line> lines) {
        if (lines.isEmpty()) {
            return;
        }
        page.heading("Not yet");
        TableRows table = new TableRows(
                Column.words("rope"),
                Column.figure("left\n" + figures.unit()),
                Column.figure("enough\n" + figures.wholeUnit()),
                Column.words("order by"),
                Column.words("then"));
        for (Line line : lines) {
            table.row(
                    Wording.printable(line.need().rope()),
                    figures.bareTotal(line.need().left()),
                    figures.bareWhole(line.need().enough(), RoundingMode.CEILING),
                    "" + line.orderBy(),
                    line.reels() + " of " + Wording.printable(line.offer().id()));
        }
        page.table(table);
    }
}
