package bitterend.buying;

import bitterend.measure.Cost;

/**
 * Money paid to suppliers.
 *
 * @param price of the reels
 * @param freight of the reels
 */
public record Paid(Cost price, Cost freight) {
    static final Paid NOTHING = new Paid(Cost.ZERO, Cost.ZERO);

    /** Both. */
    public Cost sum() {
        return price.plus(freight);
    }

    Paid plus(Paid other) {
        return new Paid(price.plus(other.price), freight.plus(other.freight));
    }

    Paid minus(Paid part) {
        return new Paid(price.minus(part.price), freight.minus(part.freight));
    }
}
