package bitterend.exchange;

import bitterend.history.History;
import bitterend.market.Offer;
import bitterend.market.OnOrder;
import bitterend.market.Supplier;
import bitterend.stock.Delivery;
import java.util.List;

/**
 * What a shop knows about buying rope; every part may be missing.
 *
 * @param offers what suppliers offer, by id, whether it can be had or not: {@link Shop#market} says what can
 * @param suppliers whose terms are known
 * @param onOrder reels on their way, by number
 * @param history past orders
 * @param values curves that the shop has of its own
 * @param deliveries reels that came of orders of reels, as the ledger keeps them
 */
public record Supplies(
        List<Offer> offers,
        List<Supplier> suppliers,
        List<OnOrder> onOrder,
        History history,
        ShopValues values,
        List<Delivery> deliveries) {
    public static final Supplies NONE =
            new Supplies(List.of(), List.of(), List.of(), History.NONE, ShopValues.NONE, List.of());

    public Supplies {
        offers = List.copyOf(offers);
        suppliers = List.copyOf(suppliers);
        onOrder = List.copyOf(onOrder);
        deliveries = List.copyOf(deliveries);
    }

    /** The same with other reels on their way. */
    public Supplies expecting(List<OnOrder> coming) {
        return new Supplies(offers, suppliers, coming, history, values, deliveries);
    }
}
