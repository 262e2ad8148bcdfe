package bitterend.quoting.sharing;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.stock.StockValue;

/**
 * The worth of a reel that would have to be bought: while it is whole, what is paid for it, so that it is charged in full
 * when it is opened; what is left of it, its value on the rack, but never more than its share of the price.
 *
 * @param reel the reel
 * @param rack what a length is worth on the rack
 */
record NewReelValue(NewReel reel, StockValue rack) implements StockValue {
    @Override
    public Cost of(Length length) {
        if (!length.isShorterThan(reel.length())) {
            return reel.paid();
        }
        Cost share = reel.share(length);
        Cost value = rack.of(length);
        return value.compareTo(share) < 0 ? value : share;
    }
}
