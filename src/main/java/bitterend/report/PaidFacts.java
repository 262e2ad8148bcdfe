package bitterend.report;

import bitterend.measure.MoneyText;
import bitterend.report.page.Document;
import bitterend.report.page.Writing;
import bitterend.stock.Paid;
import java.time.ZoneId;
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

    /** The same below the movements of a reel, with what put it right later. */
    public static Document below(
            Optional<Paid.OfReel> reel, List<Paid.Corrected> corrected, Figures figures, ZoneId zone) {
        MoneyText money = figures.currency();
        Writing page = new Writing();
        reel.ifPresent(known -> {
            page.gap();
            page.paragraph("Paid for it: "
                    + Optional.ofNullable(known.paid().price())
                            .map(money::print)
                            .orElse("not known")
                    + " without freight, for "
                    + figures.length(known.found()) + ", " + money.exact(known.byMetre())
                    + Optional.ofNullable(known.paid().freight())
                            .map(freight -> "; for bringing it " + money.print(freight))
                            .orElse("")
                    + ".");
        });
        return page.document().with(corrected(corrected, figures, zone));
    }

    /** What put it right later, one event a line. */
    public static Document corrected(List<Paid.Corrected> corrected, Figures figures, ZoneId zone) {
        Writing page = new Writing();
        corrected.forEach(each -> page.paragraph(sentence(each, figures.currency(), zone)));
        return page.document();
    }

    private static String sentence(Paid.Corrected corrected, MoneyText money, ZoneId zone) {
        Paid paid = corrected.paid();
        return EventWords.of(
                corrected.event(),
                zone,
                Optional.ofNullable(paid.price())
                                .map(price -> ", paid " + money.print(price))
                                .orElse("")
                        + Optional.ofNullable(paid.freight())
                                .map(freight -> ", freight " + money.print(freight))
                                .orElse(""));
    }
}
