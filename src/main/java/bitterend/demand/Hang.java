package bitterend.demand;

import bitterend.measure.FineLength;

/**
 * How a leg of a sling hangs between its upper and its lower point, each leg by itself.
 *
 * @param height what it spans from the one down to the other
 * @param out how far its lower point lies from below the upper one
 * @param angle from the vertical
 * @param words as the order says it; empty for a leg of which it says nothing
 * @param lengthWorkedOut whether the finished length was worked out from it
 */
public record Hang(FineLength height, FineLength out, LegAngle angle, String words, boolean lengthWorkedOut) {
    /** The order does not say how its legs hang. */
    public static final Hang NOT_STATED = new Hang(FineLength.ZERO, FineLength.ZERO, new LegAngle(0), "", false);

    public Hang {
        if (height.isNegative() || out.isNegative()) {
            throw new IllegalArgumentException("height " + height + ", out " + out);
        }
    }

    /** Whether the order says how the leg hangs. */
    public boolean isStated() {
        return !words.isEmpty();
    }

    /** Between the lower points of two opposite legs alike. */
    public FineLength spread() {
        return out.times(2);
    }
}
