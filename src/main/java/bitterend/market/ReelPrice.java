package bitterend.market;

import bitterend.measure.Money;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What a reel costs, by how many of its offer are taken in one order. Every reel of the order has the price of the last
 * break it reaches: twelve reels at breaks from 5 and from 10 all have the price from 10.
 *
 * @param one price of a reel below the first break
 * @param breaks price of a reel by the fewest reels that have it, above 1; the more reels, the lower
 */
public record ReelPrice(Money one, SortedMap<Integer, Money> breaks) {
    public ReelPrice {
        breaks = Collections.unmodifiableSortedMap(new TreeMap<>(breaks));
        Money before = one;
        for (Map.Entry<Integer, Money> each : breaks.entrySet()) {
            if (each.getKey() < 2 || each.getValue().compareTo(before) >= 0) {
                throw new IllegalArgumentException("price " + one + ", breaks " + breaks);
            }
            before = each.getValue();
        }
        if (before.minor() < 0) {
            throw new IllegalArgumentException("price " + one + ", breaks " + breaks);
        }
    }

    /** The same price however many are taken. */
    public static ReelPrice of(Money price) {
        return new ReelPrice(price, Collections.emptySortedMap());
    }

    /** The price of one reel in an order of so many. */
    public Money at(int quantity) {
        SortedMap<Integer, Money> reached = breaks.headMap(quantity + 1);
        return reached.isEmpty() ? one : breaks.getOrDefault(reached.lastKey(), one);
    }
}
