package bitterend.market;

/**
 * An offer that is not planned with, and why.
 *
 * @param offer the offer as the supplier made it
 * @param why the first reason that holds
 */
public record LeftOut(Offer offer, Why why) {

    /** Why an offer cannot be planned with. */
    public enum Why {
        /** A reel may hold several lengths joined: nobody knows where the joins would lie. */
        JOINED,
        /** The day of the order is after the last one on which the offer stands. */
        NO_LONGER_VALID,
        /** The supplier has none. */
        NOTHING_LEFT,
        /** The supplier has fewer than he sends. */
        SUPPLY_BELOW_MINIMUM
    }
}
