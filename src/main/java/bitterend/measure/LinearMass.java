package bitterend.measure;

/**
 * Mass of rope by length.
 *
 * @param milligramsPerMetre whole milligrams per metre; zero when not known
 */
public record LinearMass(long milligramsPerMetre) {
    public LinearMass {
        if (milligramsPerMetre < 0) {
            throw new IllegalArgumentException("a mass cannot be negative: " + milligramsPerMetre);
        }
    }

    /** The mass of a length, rounded up to the next gram. */
    public Mass of(Length length) {
        long nanograms = Math.multiplyExact(milligramsPerMetre, length.mm());
        return new Mass(-Math.floorDiv(-nanograms, 1_000_000L));
    }
}
