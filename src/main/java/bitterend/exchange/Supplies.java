package bitterend.exchange;

import bitterend.history.History;
import bitterend.market.Offer;
import bitterend.market.OnOrder;
import java.util.List;

/**
 * What a shop knows about buying rope; every part may be missing.
 *
 * @param offers what suppliers offer, by id
 * @param onOrder reels on their way, by number
 * @param history past orders
 * @param values curves that the shop has of its own
 */
public record Supplies(List<Offer> offers, List<OnOrder> onOrder, History history, ShopValues values) {
    public static final Supplies NONE = new Supplies(List.of(), List.of(), History.NONE, ShopValues.NONE);

    public Supplies {
        offers = List.copyOf(offers);
        onOrder = List.copyOf(onOrder);
    }
}
