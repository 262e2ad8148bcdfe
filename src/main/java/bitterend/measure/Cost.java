package bitterend.measure;

/**
 * Money inside a computation, in 1/1000 of a minor unit, so that the value of a millimetre of rope does not vanish.
 * Rounded once, when shown.
 *
 * @param millis thousandths of a minor unit
 */
public record Cost(long millis) implements Comparable<Cost> {
    public static final long MILLIS_PER_MINOR = 1000;
    public static final Cost ZERO = new Cost(0);

    public Cost plus(Cost other) {
        return new Cost(Math.addExact(millis, other.millis));
    }

    public Cost minus(Cost other) {
        return new Cost(Math.subtractExact(millis, other.millis));
    }

    public Cost times(long factor) {
        return new Cost(Math.multiplyExact(millis, factor));
    }

    /** To the nearest minor unit; halves go up. */
    public Money rounded() {
        return new Money(Math.floorDiv(Math.addExact(millis, MILLIS_PER_MINOR / 2), MILLIS_PER_MINOR));
    }

    /** To the minor unit below: what nothing costs less than. */
    public Money roundedDown() {
        return new Money(Math.floorDiv(millis, MILLIS_PER_MINOR));
    }

    /** To the minor unit above: what is saved at most. */
    public Money roundedUp() {
        return new Money(-Math.floorDiv(-millis, MILLIS_PER_MINOR));
    }

    @Override
    public int compareTo(Cost other) {
        return Long.compare(millis, other.millis);
    }
}
