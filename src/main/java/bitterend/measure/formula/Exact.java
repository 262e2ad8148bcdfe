package bitterend.measure.formula;

import java.math.BigDecimal;
import java.math.BigInteger;

/**
 * An exact fraction of any size: what is worked out in steps is rounded once, at the end.
 *
 * @param above any whole number
 * @param below above nothing; what divides both is taken out
 */
record Exact(BigInteger above, BigInteger below) implements Comparable<Exact> {
    Exact {
        if (below.signum() <= 0) {
            throw new IllegalArgumentException("below must be above nothing: " + below);
        }
        BigInteger both = above.gcd(below);
        above = above.divide(both);
        below = below.divide(both);
    }

    static Exact of(BigDecimal value) {
        int scale = Math.max(0, value.scale());
        return new Exact(value.movePointRight(scale).toBigIntegerExact(), BigInteger.TEN.pow(scale));
    }

    static Exact of(long whole) {
        return new Exact(BigInteger.valueOf(whole), BigInteger.ONE);
    }

    Exact plus(Exact other) {
        return new Exact(above.multiply(other.below).add(other.above.multiply(below)), below.multiply(other.below));
    }

    Exact negated() {
        return new Exact(above.negate(), below);
    }

    Exact times(Exact other) {
        return new Exact(above.multiply(other.above), below.multiply(other.below));
    }

    /** By something else than nothing. */
    Exact over(Exact other) {
        Exact size = new Exact(above.multiply(other.below), below.multiply(other.above.abs()));
        return other.above.signum() < 0 ? size.negated() : size;
    }

    int signum() {
        return above.signum();
    }

    boolean isWhole() {
        return below.equals(BigInteger.ONE);
    }

    /** The smallest whole number that is not less. */
    BigInteger roundedUp() {
        BigInteger[] parts = above.divideAndRemainder(below);
        return parts[1].signum() > 0 ? parts[0].add(BigInteger.ONE) : parts[0];
    }

    @Override
    public int compareTo(Exact other) {
        return above.multiply(other.below).compareTo(other.above.multiply(below));
    }
}
