package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;

/**
 * A metal end such as a fork, an eye or a stud, swaged or socketed onto the rope.
 *
 * @param id the shop's short name for it
 * @param pinToBore centre of the pin to the bottom of the bore; positive
 * @param length of its bore or basket; where it is not known, {@code pinToBore}, which is longer
 * @param growth how much its shank grows when it is pressed; not negative
 * @param ropeFrom thinnest rope it takes
 * @param ropeTo thickest rope it takes
 */
public record Fitting(
        String id, FineLength pinToBore, FineLength length, FineLength growth, Diameter ropeFrom, Diameter ropeTo) {
    public Fitting {
        if (!pinToBore.isPositive() || !length.isPositive() || growth.isNegative()) {
            throw new IllegalArgumentException("fitting " + id + ": pin to bore " + pinToBore);
        }
        if (ropeFrom.compareTo(ropeTo) > 0) {
            throw new IllegalArgumentException("fitting " + id + " takes rope from " + ropeFrom + " to " + ropeTo);
        }
    }

    /** Whether a rope of this diameter fits its bore. */
    public boolean takes(Diameter rope) {
        return ropeFrom.compareTo(rope) <= 0 && rope.compareTo(ropeTo) <= 0;
    }
}
