package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.FineLength;

/**
 * A lining that fixes the size of an eye.
 *
 * @param id the shop's short name for it
 * @param groove length of the groove from throat to throat, on the inside line of the rope; positive
 * @param throatToBearing throat to the inside of the thimble's crown, where the pin bears; positive
 * @param crown thickness of the thimble at its crown, between pin and rope
 * @param throatAngle angle at which the rope leaves it
 * @param ropeFrom thinnest rope it takes
 * @param ropeTo thickest rope it takes
 * @param provenance where its sizes come from; verified once the shop has typed its own
 */
public record Thimble(
        String id,
        FineLength groove,
        FineLength throatToBearing,
        FineLength crown,
        ThroatAngle throatAngle,
        Diameter ropeFrom,
        Diameter ropeTo,
        Provenance provenance) {
    public Thimble {
        if (!groove.isPositive() || !throatToBearing.isPositive() || crown.isNegative()) {
            throw new IllegalArgumentException(
                    "thimble " + id + ": groove " + groove + ", bearing " + throatToBearing + ", crown " + crown);
        }
        if (ropeFrom.compareTo(ropeTo) > 0) {
            throw new IllegalArgumentException("thimble " + id + " takes rope from " + ropeFrom + " to " + ropeTo);
        }
    }

    /** Whether a rope of this diameter lies in its groove. */
    public boolean takes(Diameter rope) {
        return ropeFrom.compareTo(rope) <= 0 && rope.compareTo(ropeTo) <= 0;
    }
}
