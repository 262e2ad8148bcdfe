package bitterend.report;

import bitterend.catalogue.Rope;
import bitterend.market.Bill;
import bitterend.market.Offer;
import bitterend.measure.Money;
import bitterend.measure.UnitPrice;
import bitterend.measure.Written;
import bitterend.quoting.Quote;
import bitterend.quoting.RopeBuying;
import bitterend.quoting.RopeBuying.NotTaken;
import bitterend.quoting.RopeBuying.Size;
import bitterend.quoting.RopeBuying.Why;
import bitterend.report.page.Column;
import bitterend.report.page.TableRows;
import bitterend.report.page.Writing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;

/** The new reels that a quote is priced on, for the file: what is taken, what was left out and why, and what the order comes to. */
final class QuoteBuyingBlock {
    private final Figures figures;
    private final LocalDate day;

    /** @param day the day of the quote */
    QuoteBuyingBlock(Figures figures, LocalDate day) {
        this.figures = figures;
        this.day = day;
    }

    /** The reels of one rope. */
    void ofRope(Writing page, RopeBuying buying, Rope rope) {
        if (buying.isAtRopesPrice()) {
            page.paragraph("Nobody offers this rope so that it can be ordered today: priced on reels of "
                    + figures.briefly(Written.worked(rope.usualReel())) + " at the price of the rope.");
        } else {
            page.tableApart(sizes(buying));
        }
        buying.sizes().forEach(size -> size.but().forEach(why -> page.caution(but(size, why))));
        List<String> leftOut = new ArrayList<>();
        buying.leftOut().forEach(each -> leftOut.add(each.offer().id() + " (" + BuyingWords.why(each) + ")"));
        buying.notTaken().stream()
                .collect(Collectors.groupingBy(
                        each -> each.offer().id() + each.why(), LinkedHashMap::new, Collectors.toList()))
                .values()
                .forEach(alike -> leftOut.add(notTaken(alike)));
        if (!leftOut.isEmpty()) {
            page.paragraph("Not priced on: " + String.join("; ", leftOut) + ".");
        }
        if (rope.price().millisPerMetre() < buying.lowest().millisPerMetre()) {
            page.paragraph("The price of the rope itself, " + perLength(rope.price())
                    + ", is below every offer: the cheapest comes to " + perLength(buying.lowest())
                    + " with its freight.");
        }
    }

    private String perLength(UnitPrice price) {
        return new BuyWords(figures, List.of()).price(price);
    }

    private TableRows sizes(RopeBuying buying) {
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("priced on\nreels of"),
                Column.words("offer"),
                Column.figure("taken"),
                Column.figure("a reel with\nfreight, " + currency));
        for (Size size : buying.sizes()) {
            String from = size.from() > size.offer().terms().minimum() ? ", from " + size.from() + " reels" : "";
            table.row(
                    figures.written(size.offer().made().written()),
                    size.offer().id() + from,
                    String.valueOf(size.reels()),
                    figures.bare(size.paid().rounded()));
        }
        return table;
    }

    /** Prices of one offer that are not reached for the same reason. */
    private static String notTaken(List<NotTaken> alike) {
        NotTaken first = alike.get(0);
        String from = first.why() == Why.BREAK_NOT_REACHED
                ? alike.stream()
                        .map(each -> String.valueOf(each.from()))
                        .collect(Collectors.joining(" and from ", " from ", " reels"))
                : "";
        return first.offer().id() + from + " (" + shortly(first) + ")";
    }

    private static String shortly(NotTaken each) {
        Offer offer = each.offer();
        return switch (each.why()) {
            case TOO_LATE -> "comes too late, " + offer.terms().lead().countedOn() + " days from the order";
            case BELOW_MINIMUM -> "its minimum of " + offer.terms().minimum() + " reels is not reached";
            case BREAK_NOT_REACHED -> "fewer are needed";
            case ABOVE_SUPPLY -> "more are taken than there are: "
                    + offer.terms().supply();
        };
    }

    private String but(Size size, Why why) {
        Offer offer = size.offer();
        String of = "nothing else to be had holds the longest piece, so it is priced on " + offer.id() + ", ";
        return switch (why) {
            case TOO_LATE -> offer.id() + " is counted on from " + offer.countedOn(day)
                    + " only, after the day by which the first piece must be cut: nothing comes in time";
            case BELOW_MINIMUM -> of + "whose minimum is " + offer.terms().minimum() + " reels: of them " + size.reels()
                    + (size.reels() == 1 ? " is" : " are") + " taken";
            case BREAK_NOT_REACHED, ABOVE_SUPPLY -> of + "of which there are "
                    + offer.terms().supply() + " reels: " + size.reels() + " are taken";
        };
    }

    /** What all reels come to, where a supplier has terms of his own. */
    void order(Writing page, Quote quote) {
        List<Bill.Order> orders = quote.bill().orders();
        if (orders.isEmpty()) {
            return;
        }
        page.heading("What the reels taken come to");
        String currency = figures.currency().currency();
        TableRows table = new TableRows(
                Column.words("supplier"),
                Column.figure("reels\n" + currency),
                Column.figure("freight by reel\n" + currency),
                Column.figure("by weight\n" + currency),
                Column.figure("by order\n" + currency),
                Column.figure("all\n" + currency));
        for (Bill.Order order : orders) {
            table.row(
                    order.supplier().name().isEmpty() ? "-" : order.supplier().name(),
                    figures.bare(order.goods()),
                    figures.bare(order.freight().byReel()),
                    figures.bare(order.freight().byMass()),
                    figures.bare(order.freight().byOrder()),
                    figures.bare(order.sum()));
        }
        page.tableApart(table);
        if (orders.stream().anyMatch(order -> !order.freight().byOrder().equals(Money.ZERO))) {
            page.paragraph(
                    "Freight by order falls on the reels by what is paid for them, and of a reel a line pays for the"
                            + " rope that is drawn for it.");
        }
        remarks(page, quote.bill());
    }

    private void remarks(Writing page, Bill bill) {
        String free = bill.orders().stream()
                .filter(order -> order.freight().free())
                .map(order -> order.supplier().name())
                .collect(Collectors.joining(", "));
        if (!free.isEmpty()) {
            page.paragraph("Comes freight paid, being so much: " + free + ".");
        }
        for (Bill.Order order : bill.orders()) {
            if (!order.freight().massUnknown().isEmpty()) {
                page.caution(order.supplier().name() + " charges freight by weight, and nobody said what "
                        + String.join(", ", order.freight().massUnknown()) + " weighs: nothing is charged for it");
            }
        }
        for (Bill.Objection objection : bill.objections()) {
            if (objection instanceof Bill.Objection.BelowMinimumOrder small) {
                page.caution(small.supplier().name() + " sends nothing below "
                        + figures.currency().print(small.supplier().minimumOrder())
                        + ": the reels of this quote come to "
                        + figures.currency().print(small.goods())
                        + ", so they have to be ordered together with others");
            }
        }
    }
}
