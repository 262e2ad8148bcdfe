package bitterend.work.trade;

import bitterend.catalogue.Rope;
import bitterend.day.BookedMinutes;
import bitterend.measure.UnitPrice;
import bitterend.quoting.QuoteComparison;
import bitterend.quoting.QuoteComparison.Compared;
import bitterend.quoting.QuoteComparison.Labour;
import bitterend.quoting.QuotedWork;
import bitterend.stock.Standing;
import bitterend.work.ShopNow;
import java.util.Map;
import java.util.stream.Collectors;

/** Holds a quote against what the ledger says was cut for its order: a question that writes nothing. */
public final class CompareQuote {
    private final ShopNow now;

    /** The shop may be read without its ledger. */
    public CompareQuote(ShopNow shop) {
        now = shop;
    }

    /**
     * What was quoted and what was cut, rope by rope, and the minutes that were quoted and booked.
     *
     * @param order number of the order that came of it
     */
    public Compared compared(QuotedWork work, String order) {
        Map<String, UnitPrice> prices =
                now.shop().catalogue().ropes().stream().collect(Collectors.toMap(Rope::id, Rope::price));
        return now.at()
                .reading(ledger -> ledger.read(stock -> {
                    BookedMinutes booked = BookedMinutes.of(stock, order);
                    return new Compared(
                            new QuoteComparison(order, Standing.movements(stock.movements()), prices).rows(work),
                            new Labour(work.minutes(), booked.minutes(), booked.pieces()));
                }));
    }
}
