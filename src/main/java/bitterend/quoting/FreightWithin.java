package bitterend.quoting;

import bitterend.measure.Money;

/**
 * Freight by reel and by weight that is in what a line pays for its rope, for the rope that is drawn for it; that of samples is
 * not among it.
 *
 * @param rope in the rope in its pieces
 * @param waste in its waste
 */
public record FreightWithin(Money rope, Money waste) {
    /** Of a line whose rope nobody brings. */
    public static final FreightWithin NONE = new FreightWithin(Money.ZERO, Money.ZERO);

    /** Both. */
    public Money all() {
        return rope.plus(waste);
    }
}
