package bitterend.measure;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * An exact fraction, in lowest terms, with a positive denominator: allowances in diameters, extensions, shrinkage.
 *
 * @param numerator any whole number
 * @param denominator a positive whole number
 */
public record Ratio(long numerator, long denominator) implements Comparable<Ratio> {
    public static final Ratio ZERO = new Ratio(0, 1);
    public static final Ratio ONE = new Ratio(1, 1);

    public Ratio {
        if (denominator <= 0) {
            throw new IllegalArgumentException("denominator must be positive: " + denominator);
        }
        long divisor = CommonDivisor.of(numerator, denominator);
        numerator /= divisor;
        denominator /= divisor;
    }

    public static Ratio of(long whole) {
        return new Ratio(whole, 1);
    }

    public static Ratio percent(long percent) {
        return new Ratio(percent, 100);
    }

    /** The exact value of a decimal number. */
    public static Ratio of(BigDecimal value) {
        BigDecimal plain = value.stripTrailingZeros();
        int scale = Math.max(0, plain.scale());
        return new Ratio(
                plain.movePointRight(scale).longValueExact(),
                BigInteger.TEN.pow(scale).longValueExact());
    }

    public Ratio plus(Ratio other) {
        return new Ratio(
                Math.addExact(
                        Math.multiplyExact(numerator, other.denominator),
                        Math.multiplyExact(other.numerator, denominator)),
                Math.multiplyExact(denominator, other.denominator));
    }

    public Ratio minus(Ratio other) {
        return plus(new Ratio(Math.negateExact(other.numerator), other.denominator));
    }

    public Ratio times(Ratio other) {
        return new Ratio(
                Math.multiplyExact(numerator, other.numerator), Math.multiplyExact(denominator, other.denominator));
    }

    /** {@code 1 / this}; this must be positive. */
    public Ratio inverse() {
        return new Ratio(denominator, numerator);
    }

    /** {@code amount * this}, rounded up to a whole number. */
    public long timesRoundedUp(long amount) {
        return Math.negateExact(Math.floorDiv(Math.negateExact(Math.multiplyExact(amount, numerator)), denominator));
    }

    /** {@code amount * this}, rounded down to a whole number. */
    public long timesRoundedDown(long amount) {
        return Math.floorDiv(Math.multiplyExact(amount, numerator), denominator);
    }

    public boolean isPositive() {
        return numerator > 0;
    }

    public boolean isNegative() {
        return numerator < 0;
    }

    @Override
    public int compareTo(Ratio other) {
        return BigInteger.valueOf(numerator)
                .multiply(BigInteger.valueOf(other.denominator))
                .compareTo(BigInteger.valueOf(other.numerator).multiply(BigInteger.valueOf(denominator)));
    }
}
