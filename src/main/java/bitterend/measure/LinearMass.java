package bitterend.measure;

import java.math.BigInteger;

/**
 * Mass of rope by length.
 *
 * @param milligramsPerMetre whole milligrams per metre; zero when not known
 */
public record LinearMass(long milligramsPerMetre) {
    private static final BigInteger NANOGRAMS_PER_GRAM = BigInteger.valueOf(1_000_000);

    public LinearMass {
        if (milligramsPerMetre < 0) {
            throw new IllegalArgumentException("a mass cannot be negative: " + milligramsPerMetre);
        }
    }

    /** The mass of a length, rounded up to the next gram. */
    public Mass of(Length length) {
        BigInteger[] grams = BigInteger.valueOf(milligramsPerMetre)
                .multiply(BigInteger.valueOf(length.mm()))
                .divideAndRemainder(NANOGRAMS_PER_GRAM);
        return new Mass(grams[0].add(BigInteger.valueOf(grams[1].signum())).longValueExact());
    }
}
