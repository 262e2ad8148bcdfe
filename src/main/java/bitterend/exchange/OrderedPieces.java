package bitterend.exchange;

import bitterend.day.OrderBook;
import bitterend.stock.Ordered;
import java.util.Map;

/** What the orders of a shop ask for now. */
public final class OrderedPieces {
    private OrderedPieces() {}

    public static OrderBook book(Shop shop) {
        return new OrderBook(shop.orders().stream()
                .map(line -> new OrderBook.Line(line.assembly(), line.demanded().pieces()))
                .toList());
    }

    /** What is ordered of every piece, as the ledger keeps it with a cut; by piece id. */
    public static Map<String, Ordered> of(Shop shop) {
        return book(shop).ordered();
    }
}
