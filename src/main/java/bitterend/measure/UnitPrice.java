package bitterend.measure;

/**
 * The price of rope by length.
 *
 * @param millisPerMetre thousandths of a minor unit per metre; never negative
 */
public record UnitPrice(long millisPerMetre) {
    public UnitPrice {
        if (millisPerMetre < 0) {
            throw new IllegalArgumentException("a price cannot be negative: " + millisPerMetre);
        }
    }

    /** The price of a length, rounded down to 1/1000 minor unit. */
    public Cost of(Length length) {
        return new Cost(Math.floorDiv(Math.multiplyExact(millisPerMetre, length.mm()), 1000L));
    }
}
