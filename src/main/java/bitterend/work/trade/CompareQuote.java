package bitterend.work.trade;

import bitterend.catalogue.Rope;
import bitterend.measure.UnitPrice;
import bitterend.quoting.QuoteComparison;
import bitterend.quoting.QuotedWork;
import bitterend.stock.Movement;
import bitterend.stock.Standing;
import bitterend.work.ShopNow;
import java.util.List;
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
     * What was quoted and what was cut, rope by rope.
     *
     * @param order number of the order that came of it
     */
    public List<QuoteComparison.Row> rows(QuotedWork work, String order) {
        Map<String, UnitPrice> prices =
                now.shop().catalogue().ropes().stream().collect(Collectors.toMap(Rope::id, Rope::price));
        List<Movement> posted = now.at().reading(ledger -> ledger.read(stock -> Standing.movements(stock.movements())));
        return new QuoteComparison(order, posted, prices).rows(work);
    }
}
