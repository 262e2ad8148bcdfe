package bitterend.catalogue;

import bitterend.measure.Diameter;
import bitterend.measure.Sentence;

/**
 * The thickest rope a row of a table is for.
 *
 * @param diameter the limit; {@link Diameter#NONE} for no limit
 * @param included whether a rope of just that diameter is within it
 */
public record DiameterLimit(Diameter diameter, boolean included) {
    public static final DiameterLimit ANY = new DiameterLimit(Diameter.NONE, false);

    public boolean admits(Diameter rope) {
        if (diameter.equals(Diameter.NONE)) {
            return true;
        }
        int side = rope.compareTo(diameter);
        return side < 0 || (included && side == 0);
    }

    /** {@code  (rope up to 12.7 mm)}, with a space in front; empty without a limit. */
    Sentence words() {
        if (diameter.equals(Diameter.NONE)) {
            return Sentence.NONE;
        }
        return Sentence.of(" (rope " + (included ? "up to " : "below "))
                .and(diameter)
                .and(")");
    }
}
