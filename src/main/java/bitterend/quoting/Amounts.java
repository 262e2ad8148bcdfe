package bitterend.quoting;

import bitterend.measure.Money;
import bitterend.measure.Ratio;
import java.math.BigInteger;

/** Shares of amounts of money in whole coins. */
public final class Amounts {
    private Amounts() {}

    /** To the nearest coin; halves go up. */
    static Money share(Money amount, Ratio share) {
        BigInteger twice = BigInteger.valueOf(amount.minor())
                .multiply(BigInteger.valueOf(share.numerator()))
                .shiftLeft(1)
                .add(BigInteger.valueOf(share.denominator()));
        return new Money(floor(twice, BigInteger.valueOf(share.denominator()).shiftLeft(1)));
    }

    /** The least price of which {@code margin} and these costs are the parts, in whole coins. */
    static Money priceWith(Money costs, Ratio margin) {
        long rest = margin.denominator() - margin.numerator();
        BigInteger needed = BigInteger.valueOf(costs.minor()).multiply(BigInteger.valueOf(margin.denominator()));
        return new Money(-floor(needed.negate(), BigInteger.valueOf(rest)));
    }

    /** Minutes at an hourly rate, to the nearest coin. */
    public static Money labour(Money perHour, long minutes) {
        return share(perHour.times(minutes), new Ratio(1, 60));
    }

    private static long floor(BigInteger amount, BigInteger by) {
        BigInteger[] parts = amount.divideAndRemainder(by);
        return (parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0]).longValueExact();
    }
}
