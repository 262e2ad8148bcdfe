package bitterend.report;

import bitterend.measure.MoneyText;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.stock.Paid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was paid for a reel, for who may see money. */
public final class PaidFacts {
    private PaidFacts() {}

    /** By what it is called; the price by the metre by the length that was found. */
    public static List<Fact> of(Paid.OfReel reel, Figures figures) {
        MoneyText money = figures.currency();
        List<Fact> facts = new ArrayList<>();
        Optional.ofNullable(reel.paid().price())
                .ifPresent(price -> facts.add(new Fact(
                        "paid",
                        money.print(price) + " for " + figures.length(reel.found()) + ", "
                                + money.exact(reel.byMetre()))));
        Optional.ofNullable(reel.paid().freight())
                .ifPresent(freight -> facts.add(new Fact("freight", money.print(freight))));
        return facts;
    }

    /** The same below the movements of a reel. */
    public static Document below(Paid.OfReel reel, Figures figures) {
        MoneyText money = figures.currency();
        Writing page = new Writing();
        page.gap();
        page.paragraph("Paid for it: "
                + Optional.ofNullable(reel.paid().price()).map(money::print).orElse("not known")
                + " without freight, for "
                + figures.length(reel.found()) + ", " + money.exact(reel.byMetre())
                + Optional.ofNullable(reel.paid().freight())
                        .map(freight -> "; for bringing it " + money.print(freight))
                        .orElse("")
                + ".");
        return page.document();
    }
}
