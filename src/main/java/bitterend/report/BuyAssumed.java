package bitterend.report;

import bitterend.buying.Assumed;
import bitterend.buying.Orders;
import bitterend.buying.Spending;
import bitterend.market.LeftOut;
import bitterend.measure.Cost;
import bitterend.measure.Ratio;
import bitterend.report.page.Writing;
import java.util.List;
import java.util.stream.Collectors;

/** What an advice rests on, and what was not looked at. */
final class BuyAssumed {
    private final Figures figures;

    BuyAssumed(Figures figures) {
        this.figures = figures;
    }

    /** @param others offers left out of ropes of which nothing is bought and nothing is lacking */
    void write(Writing page, Orders orders, Assumed assumed, List<LeftOut> others) {
        page.heading("What this rests on");
        page.paragraph("Reels ordered on " + orders.day().day() + "; searched no longer than "
                + assumed.time().toSeconds() + " seconds; " + limits(assumed.spending()) + ".");
        page.paragraph(holding(figures, assumed.interest(), assumed.room())
                + ". Each new coil is worth what it is with the new ones that are shorter before it. Rope"
                + " on the rack is worth no more than the cheapest offer of as much.");
        int days = assumed.lateness().days();
        page.paragraph("Reels are counted on as much later than their suppliers say as those usually are: " + days
                + (assumed.lateness().working() ? " working" : "") + (days == 1 ? " day" : " days")
                + " where nothing else is known. An order-by day leaves that, the days on the way, and the days of work behind"
                + " the cut.");
        page.paragraph(
                "Not looked at: work that nobody has ordered yet, seasons, prices that change, a certificate that comes"
                        + " later than its reel, money for rope that is ordered already"
                        + (others.isEmpty()
                                ? ""
                                : ", offers of rope that is there: "
                                        + others.stream()
                                                .map(each -> each.offer().id() + " (" + BuyingWords.why(each) + ")")
                                                .collect(Collectors.joining(", ")))
                        + ".");
    }

    /** What rope on the rack costs, without a full stop. */
    static String holding(Figures figures, Ratio interest, Cost room) {
        return "Rope on the rack costs " + figures.percent(interest.numerator(), interest.denominator(), 1)
                + " % interest a year, and each coil " + figures.money(room) + " a week for its room";
    }

    private String limits(Spending spending) {
        String budget = spending.hasBudget()
                ? "a budget of " + figures.money(spending.budget().fine())
                : "no budget";
        String weeks = spending.hasMostWeeks()
                ? "rope for " + spending.mostWeeks() + " weeks at the most"
                : "no limit of weeks";
        return budget + "; " + weeks;
    }
}
