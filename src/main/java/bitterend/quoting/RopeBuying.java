package bitterend.quoting;

import bitterend.market.LeftOut;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.UnitPrice;
import java.util.List;

/**
 * The new reels that a rope is priced on, and the offers that it is not priced on.
 *
 * @param sizes the reels, the shortest first; empty where nobody offers any, and the usual reel at the price of the rope stands in
 * @param leftOut offers that can be had by nobody this day
 * @param notTaken prices that this request does not get
 * @param lowest what the cheapest reel to be had costs by the metre, whether this request gets it or not; nothing paid where
 *     none can be had
 */
public record RopeBuying(List<Size> sizes, List<LeftOut> leftOut, List<NotTaken> notTaken, UnitPrice lowest) {
    public RopeBuying {
        sizes = List.copyOf(sizes);
        leftOut = List.copyOf(leftOut);
        notTaken = List.copyOf(notTaken);
    }

    /**
     * Reels of an offer at one price.
     *
     * @param offer the offer
     * @param from the fewest reels in one order that have this price
     * @param paid for one, freight by reel and by weight included
     * @param reels how many of them the lines take, cut by themselves; may be 0
     * @param but why they cannot be had so, although nothing else holds the pieces; empty for most
     */
    public record Size(Offer offer, int from, Cost paid, int reels, List<Why> but) {
        public Size {
            but = List.copyOf(but);
        }

        /** What of that is freight by reel and by weight. */
        public Cost freight() {
            return paid.minus(offer.terms().price().at(from).fine());
        }
    }

    /**
     * Reels that the request is not priced on.
     *
     * @param offer the offer
     * @param from the fewest reels in one order that have the price
     * @param why why not
     */
    public record NotTaken(Offer offer, int from, Why why) {}

    /** Why a request does not get a price. */
    public enum Why {
        /** The first piece must be cut before a reel of it is counted on. */
        TOO_LATE,
        /** The request takes fewer reels than the minimum of the offer. */
        BELOW_MINIMUM,
        /** The request takes fewer reels than have this price. */
        BREAK_NOT_REACHED,
        /** The request takes more reels than there are. */
        ABOVE_SUPPLY
    }

    /** Whether nobody offers the rope, so that the usual reel at the rope's own price stands in. */
    public boolean isAtRopesPrice() {
        return sizes.isEmpty();
    }
}
