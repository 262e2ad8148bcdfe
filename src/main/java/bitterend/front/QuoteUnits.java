package bitterend.front;

import bitterend.quoting.Quote;
import bitterend.report.Figures;

/**
 * In which units the pages of a quote are: as was asked for; else the customer's page as the request says, else as
 * customers.csv does; else those of the shop.
 *
 * @param usual those that were asked for, else those of the shop
 * @param asked whether they were asked for
 */
public record QuoteUnits(Figures usual, boolean asked) {
    /** For the page that the customer gets. */
    public Figures forCustomer(Quote quote) {
        return asked
                ? usual
                : quote.request()
                        .recipient()
                        .findUnits()
                        .map(units -> new Figures(units, usual.currency()))
                        .orElse(usual);
    }
}
