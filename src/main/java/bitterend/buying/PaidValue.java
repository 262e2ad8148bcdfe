package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.StockValue;
import java.math.BigInteger;

/**
 * The worth of a reel that would have to be bought: while it is whole, what is paid for it, so that it is charged in full
 * when it is opened; what is left of it, its value on the rack, but never more than its share of the price. A committed
 * reel is bought whatever happens, and is worth no more whole than its value on the rack.
 *
 * @param usual what a length is worth on the rack
 * @param paid price and freight of the reel
 * @param whole its usable length
 * @param committed whether it is bought even if it is not opened
 */
record PaidValue(StockValue usual, Cost paid, Length whole, boolean committed) implements StockValue {
    @Override
    public Cost of(Length length) {
        return !committed && !length.isShorterThan(whole) ? paid : left(length);
    }

    /** What a length off this reel is worth on the rack, rounded down. */
    Cost left(Length length) {
        Cost share = share(length);
        Cost value = usual.of(length);
        return value.compareTo(share) < 0 ? value : share;
    }

    private Cost share(Length length) {
        boolean holds = Math.multiplyHigh(paid.millis(), length.mm()) == 0 && paid.millis() * length.mm() >= 0;
        return new Cost(
                holds
                        ? paid.millis() * length.mm() / whole.mm()
                        : BigInteger.valueOf(paid.millis())
                                .multiply(BigInteger.valueOf(length.mm()))
                                .divide(BigInteger.valueOf(whole.mm()))
                                .longValueExact());
    }
}
