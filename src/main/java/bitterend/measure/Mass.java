package bitterend.measure;

/**
 * A mass in whole grams.
 *
 * @param grams whole grams, never negative
 */
public record Mass(long grams) implements Comparable<Mass> {
    public static final Mass ZERO = new Mass(0);

    public Mass {
        if (grams < 0) {
            throw new IllegalArgumentException("a mass cannot be negative: " + grams);
        }
    }

    public Mass plus(Mass other) {
        return new Mass(Math.addExact(grams, other.grams));
    }

    @Override
    public int compareTo(Mass other) {
        return Long.compare(grams, other.grams);
    }
}
