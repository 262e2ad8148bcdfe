package bitterend.buying;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;
import bitterend.stock.StockValue;
import java.math.BigInteger;
import java.util.List;

/**
 * A value curve of a shop's own: at each knot a length is worth a share of its price; between two knots the share
 * runs in a straight line, below the first nothing is worth anything, and above the last its share holds. Shares never
 * fall, so that cutting a length up never creates value.
 *
 * @param price replacement price of the rope
 * @param knots at least one, each longer than the one before, its share from 0 to 1 and not below the one before
 */
public record KnotValue(UnitPrice price, List<Knot> knots) implements StockValue {
    public KnotValue {
        knots = List.copyOf(knots);
        if (knots.isEmpty()) {
            throw new IllegalArgumentException("no knots");
        }
        for (int i = 0; i < knots.size(); i++) {
            Ratio share = knots.get(i).share();
            boolean rises = i == 0
                    || (knots.get(i).length().isLongerThan(knots.get(i - 1).length())
                            && share.compareTo(knots.get(i - 1).share()) >= 0);
            if (!rises || share.isNegative() || share.compareTo(Ratio.ONE) > 0) {
                throw new IllegalArgumentException("knots must rise from 0 to 1: " + knots);
            }
        }
    }

    /**
     * What a length is worth.
     *
     * @param length of a coil; positive
     * @param share of the price of so much rope, from 0 to 1
     */
    public record Knot(Length length, Ratio share) {
        public Knot {
            if (!length.isPositive()) {
                throw new IllegalArgumentException("length must be positive: " + length);
            }
        }
    }

    /** Rounded down once, to 1/1000 minor unit. */
    @Override
    public Cost of(Length length) {
        if (length.isShorterThan(knots.get(0).length())) {
            return Cost.ZERO;
        }
        int above = 1;
        while (above < knots.size() && !length.isShorterThan(knots.get(above).length())) {
            above++;
        }
        Knot low = knots.get(above - 1);
        return above == knots.size() ? worth(length, low, low) : worth(length, low, knots.get(above));
    }

    /** price * length * (low + (high - low) * (length - from) / (to - from)), exact until the one rounding. */
    private Cost worth(Length length, Knot low, Knot high) {
        long span = Math.max(1, high.length().minus(low.length()).mm());
        BigInteger below =
                big(low.share().denominator()).multiply(big(high.share().denominator()));
        BigInteger from = big(low.share().numerator()).multiply(big(high.share().denominator()));
        BigInteger to = big(high.share().numerator()).multiply(big(low.share().denominator()));
        BigInteger share = from.multiply(big(span))
                .add(to.subtract(from).multiply(big(length.minus(low.length()).mm())));
        if (low.equals(high)) {
            share = from.multiply(big(span));
        }
        return new Cost(big(price.millisPerMetre())
                .multiply(big(length.mm()))
                .multiply(share)
                .divide(big(1000).multiply(below).multiply(big(span)))
                .longValueExact());
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }
}
