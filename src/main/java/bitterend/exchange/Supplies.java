package bitterend.exchange;

import bitterend.buying.LearnedValue;
import bitterend.buying.Offer;
import bitterend.buying.OnOrder;
import bitterend.history.History;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a shop knows about buying rope; every part may be missing.
 *
 * @param offers what suppliers offer, by id
 * @param onOrder reels on their way, by number
 * @param history past orders
 * @param learned value curves learned from the past, by rope id
 */
public record Supplies(List<Offer> offers, List<OnOrder> onOrder, History history, Map<String, LearnedValue> learned) {
    public static final Supplies NONE = new Supplies(List.of(), List.of(), History.NONE, Map.of());

    public Supplies {
        offers = List.copyOf(offers);
        onOrder = List.copyOf(onOrder);
        learned = Collections.unmodifiableMap(new TreeMap<>(learned));
    }
}
