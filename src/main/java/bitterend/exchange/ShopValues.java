package bitterend.exchange;

import bitterend.buying.KnotValue;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * The value curves that a shop has in {@code values.json}, by rope id.
 *
 * @param typed by the shop, which keeps them
 * @param learned from the past once, and written by the program: stale, since they know nothing of the rack of today
 */
public record ShopValues(Map<String, KnotValue> typed, Map<String, KnotValue> learned) {
    public static final ShopValues NONE = new ShopValues(Map.of(), Map.of());

    public ShopValues {
        typed = Collections.unmodifiableMap(new TreeMap<>(typed));
        learned = Collections.unmodifiableMap(new TreeMap<>(learned));
    }
}
