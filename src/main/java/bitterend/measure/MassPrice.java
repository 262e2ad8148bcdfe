package bitterend.measure;

import java.math.BigInteger;

/**
 * A price by mass, as it was typed: so much money for so much mass, so that a price by the pound stays exact.
 *
 * @param millis thousandths of a minor unit; never negative
 * @param micrograms for which they are paid; positive
 */
public record MassPrice(long millis, long micrograms) {
    private static final BigInteger MICROGRAMS_PER_GRAM = BigInteger.valueOf(1_000_000);

    /** Nothing is paid by mass. */
    public static final MassPrice NOTHING = new MassPrice(0, 1);

    public MassPrice {
        if (millis < 0 || micrograms < 1) {
            throw new IllegalArgumentException(millis + " for " + micrograms + " micrograms");
        }
    }

    /** The price of a mass, rounded up to 1/1000 minor unit. */
    public Cost of(Mass mass) {
        BigInteger[] parts = BigInteger.valueOf(millis)
                .multiply(BigInteger.valueOf(mass.grams()))
                .multiply(MICROGRAMS_PER_GRAM)
                .divideAndRemainder(BigInteger.valueOf(micrograms));
        return new Cost(parts[0].add(BigInteger.valueOf(parts[1].signum())).longValueExact());
    }

    public boolean isNothing() {
        return millis == 0;
    }
}
