package bitterend.front;

import bitterend.exchange.Shop;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.life.QuoteName;
import bitterend.work.quotes.KeepQuote;

/**
 * The pages that are filed with a quote, as both fronts print it.
 *
 * @param shop the shop
 * @param units in which units they are
 * @param apart whether the customer's page says what each line costs by itself
 */
public record QuotePapers(Shop shop, QuoteUnits units, boolean apart) implements KeepQuote.Paper {
    @Override
    public KeptQuote.Pages apply(Quote quote, QuoteName name) {
        return new KeptQuote.Pages(
                TradePages.forFile(shop, quote, units.usual()),
                TradePages.forCustomer(shop, quote, units.forCustomer(quote), apart));
    }
}
