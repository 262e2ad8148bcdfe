package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import bitterend.stock.StockValue;

/**
 * A value curve under which no length is worth more than the same length of the cheapest offer.
 *
 * @param usual the curve
 * @param cheapest price of the cheapest offer by the metre
 */
record CappedValue(StockValue usual, UnitPrice cheapest) implements StockValue {
    @Override
    public Cost of(Length length) {
        return capped(usual.of(length), length);
    }

    @Override
    public Cost unopened(Length length) {
        return capped(usual.unopened(length), length);
    }

    private Cost capped(Cost value, Length length) {
        Cost most = cheapest.of(length);
        return value.compareTo(most) < 0 ? value : most;
    }
}
