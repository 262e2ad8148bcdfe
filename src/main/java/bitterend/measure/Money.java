package bitterend.measure;

/**
 * An amount of money that a person sees: whole minor units (cents, pence, øre) of the shop's one currency.
 *
 * @param minor whole minor units
 */
public record Money(long minor) implements Comparable<Money> {
    public static final Money ZERO = new Money(0);

    public Money plus(Money other) {
        return new Money(Math.addExact(minor, other.minor));
    }

    public Money minus(Money other) {
        return new Money(Math.subtractExact(minor, other.minor));
    }

    public Money times(long factor) {
        return new Money(Math.multiplyExact(minor, factor));
    }

    /** The same amount in the fine unit of packing; exact. */
    public Cost fine() {
        return new Cost(Math.multiplyExact(minor, Cost.MILLIS_PER_MINOR));
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(minor, other.minor);
    }
}
