package bitterend.report;

import bitterend.market.Bill;
import bitterend.market.Bill.Objection;
import bitterend.market.LeftOut;
import bitterend.measure.Money;
import java.util.ArrayList;
import java.util.List;

/** What suppliers charge for an order of reels, and what they would not send, in sentences. */
final class BuyBillWords {
    private final Figures figures;

    BuyBillWords(Figures figures) {
        this.figures = figures;
    }

    /** A sentence for each supplier. */
    List<String> orders(Bill bill) {
        return bill.orders().stream().map(this::order).toList();
    }

    private String order(Bill.Order order) {
        String to = order.supplier().name().isEmpty()
                ? "One supplier"
                : "To " + order.supplier().name();
        return to + ": reels " + money(order.goods()) + ", " + freight(order.freight()) + "; " + money(order.sum())
                + " in all." + unknown(order.freight());
    }

    private String freight(Bill.Freight freight) {
        if (freight.free()) {
            return "which comes freight paid";
        }
        List<String> parts = new ArrayList<>();
        add(parts, freight.byReel(), "by reel");
        add(parts, freight.byMass(), "by weight");
        add(parts, freight.byOrder(), "by order");
        return parts.isEmpty() ? "no freight" : "freight " + String.join(", ", parts);
    }

    private void add(List<String> parts, Money amount, String by) {
        if (amount.minor() > 0) {
            parts.add(money(amount) + " " + by);
        }
    }

    private static String unknown(Bill.Freight freight) {
        return freight.massUnknown().isEmpty()
                ? ""
                : " Freight by weight is not in it for " + String.join(", ", freight.massUnknown())
                        + ", whose weight is not known.";
    }

    /** Why it cannot be ordered so, a sentence each. */
    List<String> objections(Bill bill) {
        return bill.objections().stream().map(this::objection).toList();
    }

    private String objection(Objection objection) {
        if (objection instanceof Objection.BelowMinimumOrder below) {
            return below.supplier().name() + " sends no order below "
                    + money(below.supplier().minimumOrder()) + ", and this one comes to " + money(below.goods()) + ".";
        }
        if (objection instanceof Objection.BelowMinimum below) {
            return "Of " + below.offer().id() + " no fewer than "
                    + below.offer().terms().minimum() + " reels are sent.";
        }
        if (objection instanceof Objection.AboveSupply above) {
            return "Of " + above.offer().id() + " there are no more than "
                    + above.offer().terms().supply() + " reels.";
        }
        return ((Objection.CannotBeHad) objection).leftOut().offer().id() + " cannot be had.";
    }

    /** Why offers were left out, with their names. */
    static String leftOut(LeftOut.Why why, List<LeftOut> some) {
        List<String> offers = some.stream().map(each -> each.offer().id()).toList();
        String names = String.join(", ", offers);
        return "Left out, since "
                + switch (why) {
                    case JOINED -> "nobody knows where the joins would lie: " + names
                            + ". Ask for reels in one length.";
                    case NO_LONGER_VALID -> "the day is behind the last one on which they can be had so: " + names
                            + ".";
                    case NOTHING_LEFT -> "the supplier has none: " + names + ".";
                    case SUPPLY_BELOW_MINIMUM -> "the supplier has fewer than he sends: " + names + ".";
                };
    }

    private String money(Money money) {
        return figures.money(money.fine());
    }
}
