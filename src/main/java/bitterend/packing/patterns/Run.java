package bitterend.packing.patterns;

/**
 * A sound stretch of a reel.
 *
 * @param length usable length
 * @param handling price of cutting this run off unused, to reach a later one
 */
public record Run(long length, long handling) {
    public Run {
        if (length < 0 || handling < 0) {
            throw new IllegalArgumentException("length and handling must not be negative: " + length + ", " + handling);
        }
    }

    /** A run that costs nothing to cut off. */
    public static Run of(long length) {
        return new Run(length, 0);
    }
}
