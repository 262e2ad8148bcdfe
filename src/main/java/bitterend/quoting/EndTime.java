package bitterend.quoting;

/**
 * Minutes of one end as splicers booked them at the bench.
 *
 * @param termination id of the termination
 * @param rope id of the rope
 * @param minutes mean of one end, to the nearest
 * @param ends how many ends it is the mean of
 */
public record EndTime(String termination, String rope, int minutes, int ends) {
    /** Fewer ends than these say nothing yet; a choice, no source. */
    public static final int LEAST = 5;
}
