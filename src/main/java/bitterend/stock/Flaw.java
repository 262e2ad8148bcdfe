package bitterend.stock;

import bitterend.measure.Length;

/**
 * A stretch that may not end up inside a piece: a maker's join, damage.
 *
 * @param from its beginning, from the working end
 * @param to its end, not before {@code from}
 * @param uncertainty how far either mark may be off
 * @param what what is wrong there
 */
public record Flaw(Length from, Length to, Length uncertainty, String what) {
    public Flaw {
        if (from.isNegative() || to.isShorterThan(from) || uncertainty.isNegative()) {
            throw new IllegalArgumentException("flaw from " + from + " to " + to + " +/- " + uncertainty);
        }
    }

    /** The beginning of the stretch to avoid; never negative. */
    public Length avoidFrom() {
        return Length.max(Length.ZERO, from.minus(uncertainty));
    }

    /** The end of the stretch to avoid. */
    public Length avoidTo() {
        return to.plus(uncertainty);
    }
}
