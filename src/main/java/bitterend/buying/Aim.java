package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.packing.Prices;
import bitterend.stock.StockValue;

/**
 * What a way to buy is after: it weighs the money paid now in full, and whatever is not money paid now (worth left over, worth
 * drawn from the rack, work at the bench) by a share.
 */
public enum Aim {
    /** The least money paid to suppliers now; of sets at the same money the least cost. */
    LEAST_PAID(0),
    /** Half of each. */
    BETWEEN(1),
    /** The least cost. */
    LEAST_COST(2);

    private static final int WHOLE = 2;

    private final int share;

    Aim(int share) {
        this.share = share;
    }

    /** An amount that is not paid now as it is weighed; rounded down. */
    Cost of(Cost amount) {
        return switch (this) {
            case LEAST_PAID -> Cost.ZERO;
            case BETWEEN -> new Cost(Math.floorDiv(amount.millis(), WHOLE));
            case LEAST_COST -> amount;
        };
    }

    /** A worth as it is weighed. */
    StockValue of(StockValue value) {
        return this == LEAST_COST ? value : new Weighed(this, value);
    }

    /** What the soft rules cost as it is weighed. */
    Prices of(Prices prices) {
        return this == LEAST_COST
                ? prices
                : new Prices(
                        of(prices.opening()),
                        of(prices.changing()),
                        of(prices.handling()),
                        of(prices.splitOrder()),
                        of(prices.movedPiece()),
                        of(prices.ageCredit()));
    }

    /** What a purchase of this price and cost comes to as it is weighed, in halves. */
    Cost of(Cost paid, Cost cost) {
        return paid.times(WHOLE - (long) share).plus(cost.times(share));
    }

    private record Weighed(Aim aim, StockValue value) implements StockValue {
        @Override
        public Cost of(Length length) {
            return aim.of(value.of(length));
        }

        @Override
        public Cost unopened(Length length) {
            return aim.of(value.unopened(length));
        }
    }
}
