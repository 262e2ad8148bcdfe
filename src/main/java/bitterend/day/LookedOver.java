package bitterend.day;

import bitterend.measure.Written;

/**
 * What was found when a finished piece was measured and looked over.
 *
 * @param made what it measures, as it was typed; zero while nobody has measured it
 * @param verdict {@code passed}, {@code accepted by NAME} where it is outside of what passes; empty while it is neither
 */
public record LookedOver(Written made, String verdict) {
    public static final LookedOver NOT_YET = new LookedOver(Written.NOTHING, "");

    /** What a piece that is good is booked as. */
    public static final String PASSED = "passed";

    /** What stands before the name of who accepts a piece outside of what passes. */
    public static final String ACCEPTED_BY = "accepted by ";

    /** Whether it may go out. */
    public boolean isGood() {
        return !verdict.isEmpty();
    }

    public boolean isMeasured() {
        return made.exact().isPositive();
    }

    LookedOver passed() {
        return isGood() ? this : new LookedOver(made, PASSED);
    }

    /** Whether a verdict lets a piece go out. */
    public static boolean isGood(String verdict) {
        return verdict.equals(PASSED) || verdict.startsWith(ACCEPTED_BY);
    }
}
