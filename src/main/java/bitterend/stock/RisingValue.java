package bitterend.stock;

import bitterend.catalogue.Rope;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import java.math.BigInteger;

/**
 * Nothing below {@code keepFrom}; there a share of the price, rising in a straight line to the full price at
 * {@code asGoodAsNew}; less a fixed charge for every coil on the rack, never below zero.
 *
 * @param price replacement price of the rope
 * @param worth the two lengths
 * @param shareAtKeepFrom share of the price at {@code keepFrom}, 0 to 1
 * @param coilCharge charge per kept coil
 */
public record RisingValue(UnitPrice price, Rope.Worth worth, Ratio shareAtKeepFrom, Cost coilCharge)
        implements StockValue {
    /** Products of two numbers up to this, and the sum of two such products, stay in a {@code long}. */
    private static final long SMALL = 1L << 30;

    public RisingValue {
        if (shareAtKeepFrom.isNegative() || shareAtKeepFrom.compareTo(Ratio.ONE) > 0) {
            throw new IllegalArgumentException("share from 0 to 1: " + shareAtKeepFrom);
        }
    }

    /** Rounded down once, to 1/1000 minor unit. */
    @Override
    public Cost of(Length length) {
        if (length.isShorterThan(worth.keepFrom())) {
            return Cost.ZERO;
        }
        Cost gross = length.isShorterThan(worth.asGoodAsNew()) ? rising(length) : price.of(length);
        return gross.compareTo(coilCharge) <= 0 ? Cost.ZERO : gross.minus(coilCharge);
    }

    /** price * length * (f0 + (1 - f0) * (length - k) / (n - k)), exact until the one rounding. */
    private Cost rising(Length length) {
        long span = worth.asGoodAsNew().minus(worth.keepFrom()).mm();
        long above = length.minus(worth.keepFrom()).mm();
        long f0 = shareAtKeepFrom.numerator();
        long whole = shareAtKeepFrom.denominator();
        return span <= SMALL && whole <= SMALL
                ? rising(length, f0 * span + (whole - f0) * above, whole * span)
                : exactly(
                        length, big(f0).multiply(big(span)).add(big(whole - f0).multiply(big(above))), whole, span);
    }

    /** The same in {@code long} where that holds it: the engines ask for millions of values. */
    private Cost rising(Length length, long share, long of) {
        long byMetre = price.millisPerMetre();
        boolean holds = byMetre <= SMALL
                && length.mm() <= SMALL
                && Math.multiplyHigh(byMetre * length.mm(), share) == 0
                && byMetre * length.mm() * share >= 0
                && of <= Long.MAX_VALUE / 1000;
        return holds ? new Cost(byMetre * length.mm() * share / (1000 * of)) : exactly(length, big(share), 1, of);
    }

    private Cost exactly(Length length, BigInteger share, long whole, long span) {
        return new Cost(big(price.millisPerMetre())
                .multiply(big(length.mm()))
                .multiply(share)
                .divide(big(1000L).multiply(big(whole)).multiply(big(span)))
                .longValueExact());
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }
}
