package bitterend.report;

import bitterend.buying.reorder.Proposal;
import bitterend.buying.reorder.Terms;
import bitterend.market.LeftOut;
import bitterend.measure.RatioText;
import bitterend.report.page.Wording;
import bitterend.report.page.Writing;

/** What a proposal to order rests on, and which offers nobody can order. */
final class ReorderAssumed {
    private final Figures figures;

    ReorderAssumed(Figures figures) {
        this.figures = figures;
    }

    /** The offers that nobody can order, a sentence each; nothing where all can be had. */
    void leftOut(Writing page, Proposal proposal) {
        if (!proposal.leftOut().isEmpty()) {
            page.heading("Cannot be ordered");
            proposal.leftOut().forEach(each -> page.paragraph(sentence(each)));
        }
    }

    private static String sentence(LeftOut each) {
        return Wording.printable(each.offer().rope()) + ": "
                + Wording.printable(each.offer().id()) + " of "
                + ReorderPage.supplierName(each.offer().supplier()) + " is left out: " + BuyingWords.why(each) + ".";
    }

    /** Day, service, budget, weeks, interest and room. */
    void write(Writing page, Proposal proposal) {
        Terms terms = proposal.terms();
        page.heading("What this rests on");
        page.paragraph("Reels ordered on " + proposal.day() + ", so that " + RatioText.percent(terms.service())
                + " of the rope is there in time; "
                + (terms.hasBudget()
                        ? "a budget of " + figures.money(terms.budget().fine()) + ", freight included"
                        : "no budget")
                + "; rope for " + FindingsPage.count(terms.mostWeeks(), "week")
                + " at the most where an offer allows it.");
        if (terms.isHeldByShop()) {
            page.paragraph("The budget of the shop holds: it is smaller than the "
                    + figures.money(terms.asked().fine()) + " of --budget.");
        }
        page.paragraph(
                "Lengths are added up, but pieces that are booked of a rope without a past are laid on stretches one by one, each by itself;"
                        + " sets, certificates and substitutes are worked out by bitterend buy SHOP.");
        page.paragraph(BuyAssumed.holding(figures, terms.interest(), terms.room()) + ".");
    }
}
