package bitterend.buying.steady;

/**
 * A figure with the interval that holds the truth nineteen times in twenty: chance and the weeks recorded together.
 *
 * @param value what was found
 * @param low end of the interval
 * @param high end of it
 * @param known whether an interval could be told; else both its ends are the value
 */
public record Figure(long value, long low, long high, boolean known) {
    public Figure {
        if (low > value || high < value) {
            throw new IllegalArgumentException(value + " from " + low + " to " + high);
        }
    }

    /** Whether the interval holds nothing: a difference that cannot be seen. */
    public boolean mayBeNothing() {
        return low <= 0 && high >= 0;
    }

    /** The same with no end below nothing. */
    Figure notNegative() {
        return new Figure(Math.max(0, value), Math.max(0, low), Math.max(0, high), known);
    }

    /** The same with no end above this. */
    Figure notAbove(long most) {
        return new Figure(Math.min(most, value), Math.min(most, low), Math.min(most, high), known);
    }

    /** The same reaching up to at least this. */
    Figure reaching(long least) {
        return new Figure(value, low, Math.max(high, least), known);
    }
}
