package bitterend.measure;

/**
 * A length of rope in whole millimetres. May be negative as the difference of two lengths.
 *
 * @param mm millimetres
 */
public record Length(long mm) implements Comparable<Length> {
    public static final Length ZERO = new Length(0);

    public static Length ofMetres(long metres) {
        return new Length(Math.multiplyExact(metres, 1000L));
    }

    public Length plus(Length other) {
        return new Length(Math.addExact(mm, other.mm));
    }

    public Length minus(Length other) {
        return new Length(Math.subtractExact(mm, other.mm));
    }

    public Length times(long factor) {
        return new Length(Math.multiplyExact(mm, factor));
    }

    public boolean isNegative() {
        return mm < 0;
    }

    public boolean isPositive() {
        return mm > 0;
    }

    public boolean isLongerThan(Length other) {
        return mm > other.mm;
    }

    public boolean isShorterThan(Length other) {
        return mm < other.mm;
    }

    /** The same length in the fine unit of derivations; exact. */
    public FineLength fine() {
        return FineLength.ofMillimetres(mm);
    }

    public static Length max(Length a, Length b) {
        return a.mm >= b.mm ? a : b;
    }

    public static Length min(Length a, Length b) {
        return a.mm <= b.mm ? a : b;
    }

    @Override
    public int compareTo(Length other) {
        return Long.compare(mm, other.mm);
    }
}
