package bitterend.exchange.quotes;

import bitterend.quoting.QuotedWork;
import bitterend.quoting.life.QuoteEvent.Said;
import bitterend.quoting.life.QuoteStanding.Head;
import bitterend.report.page.Document;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * A quote as it was filed: with its prices, its pages and the request it answers, so that nothing in it changes whatever
 * becomes of the catalogue, the prices or the program.
 *
 * @param head number, customer, days and sum
 * @param at when it was filed
 * @param said who filed it, and why
 * @param work what it says about its rope, labour and prices
 * @param rows the lines of the request: what is filled, by column of a request
 * @param pages its two pages, word for word
 */
public record KeptQuote(
        Head head, Instant at, Said said, QuotedWork work, List<Map<String, String>> rows, Pages pages) {
    public KeptQuote {
        rows = rows.stream().map(Map::copyOf).toList();
    }

    /**
     * Its pages.
     *
     * @param forFile with every inside figure
     * @param forCustomer what the customer got
     */
    public record Pages(Document forFile, Document forCustomer) {}
}
