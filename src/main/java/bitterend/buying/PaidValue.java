package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.StockValue;
import java.math.BigInteger;

/**
 * The worth of a reel that would have to be bought: while it is whole, what is paid for it, so that it is charged in full
 * when it is opened; what is left of it, its value on the rack as the aim weighs it, but never more than its share of the
 * price. A committed reel is bought whatever happens, and is worth no more whole than its value on the rack.
 *
 * @param aim how what is not paid now is weighed
 * @param usual what a length is worth on the rack
 * @param paid price and freight of the reel
 * @param price the same without freight: what the rope on it costs
 * @param whole its usable length
 * @param committed whether it is bought even if it is not opened
 */
record PaidValue(Aim aim, StockValue usual, Cost paid, Cost price, Length whole, boolean committed)
        implements StockValue {
    /** Nothing weighed. */
    PaidValue(StockValue usual, Cost paid, Length whole, boolean committed) {
        this(Aim.LEAST_COST, usual, paid, paid, whole, committed);
    }

    @Override
    public Cost of(Length length) {
        return !committed && !length.isShorterThan(whole) ? paid : aim.of(capped(usual.of(length), length));
    }

    /** A worth on the rack, but never more than the share of the price that a length has; rounded down. */
    Cost capped(Cost value, Length length) {
        Cost share = share(length);
        return value.compareTo(share) < 0 ? value : share;
    }

    private Cost share(Length length) {
        boolean holds = Math.multiplyHigh(price.millis(), length.mm()) == 0 && price.millis() * length.mm() >= 0;
        return new Cost(
                holds
                        ? price.millis() * length.mm() / whole.mm()
                        : BigInteger.valueOf(price.millis())
                                .multiply(BigInteger.valueOf(length.mm()))
                                .divide(BigInteger.valueOf(whole.mm()))
                                .longValueExact());
    }
}
