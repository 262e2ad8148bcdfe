package bitterend.front;

import bitterend.exchange.Shop;
import bitterend.exchange.quotes.KeptQuote;
import bitterend.quoting.Quote;
import bitterend.quoting.life.QuoteName;
import bitterend.report.Figures;
import bitterend.work.quotes.KeepQuote;

/**
 * The pages that are filed with a quote, as both fronts print it.
 *
 * @param shop the shop
 * @param figures in which units they are
 * @param apart whether the customer's page says what each line costs by itself
 */
public record QuotePapers(Shop shop, Figures figures, boolean apart) implements KeepQuote.Paper {
    @Override
    public KeptQuote.Pages apply(Quote quote, QuoteName name) {
        return new KeptQuote.Pages(
                TradePages.forFile(shop, quote, figures), TradePages.forCustomer(shop, quote, figures, apart));
    }
}
