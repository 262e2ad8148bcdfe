package bitterend.quoting;

import bitterend.demand.EndWork.Picked;
import bitterend.finding.Finding;
import java.util.ArrayList;
import java.util.List;

/** What the price of a line leaves out since nobody has stated it: minutes of ends, prices of fittings. */
final class QuoteGaps {
    private QuoteGaps() {}

    /** A finding for each of them, at the line. */
    static List<Finding> of(Quote quote) {
        List<Finding> gaps = new ArrayList<>();
        quote.lines().forEach(line -> add(gaps, line.line(), quote.policy().parts()));
        quote.variations(Variation.Kind.INSTEAD)
                .forEach(other -> add(gaps, other.changed(), quote.policy().parts()));
        return gaps;
    }

    private static void add(List<Finding> gaps, QuoteLine line, PartPrices prices) {
        line.untimedEnds()
                .forEach(end -> gaps.add(finding(
                        line,
                        "minutes",
                        "none for " + end,
                        "minutes of such an end in splices.json, or of the line in the request")));
        line.parts().stream()
                .filter(part -> QuoteLine.isFitting(part) && prices.each(part).isEmpty())
                .map(Picked::item)
                .distinct()
                .forEach(item -> gaps.add(finding(
                        line,
                        "hardware",
                        "no price for " + item,
                        "its price under quote, parts in shop.json, or hardware of the line in the request")));
    }

    private static Finding finding(QuoteLine line, String field, String found, String expected) {
        return Finding.error(
                line.assembly().origin().file(), line.assembly().origin().place(), field, found, expected);
    }
}
