package bitterend.quoting.sharing;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.UnitPrice;
import java.math.BigInteger;

/**
 * A reel as it is bought.
 *
 * @param length usable length; positive
 * @param paid what is paid for it
 */
public record NewReel(Length length, Cost paid) {
    public NewReel {
        if (!length.isPositive() || paid.millis() < 0) {
            throw new IllegalArgumentException("reel of " + length + " at " + paid);
        }
    }

    /** A reel at the replacement price of its rope. */
    public static NewReel at(UnitPrice price, Length length) {
        return new NewReel(length, price.of(length));
    }

    /** What is paid for a metre of it, rounded down. */
    public UnitPrice byMetre() {
        return new UnitPrice(BigInteger.valueOf(paid.millis())
                .multiply(BigInteger.valueOf(1000))
                .divide(BigInteger.valueOf(length.mm()))
                .longValueExact());
    }

    /** The share of the price that falls to a length of it, rounded down. */
    Cost share(Length part) {
        return new Cost(BigInteger.valueOf(paid.millis())
                .multiply(BigInteger.valueOf(part.mm()))
                .divide(BigInteger.valueOf(length.mm()))
                .longValueExact());
    }
}
