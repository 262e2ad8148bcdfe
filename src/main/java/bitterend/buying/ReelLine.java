package bitterend.buying;

import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.Mass;
import java.time.LocalDate;

/**
 * A line of an order of reels, ready to be sent: always one length to a reel, without joins.
 *
 * @param offer what is ordered
 * @param reels how many
 * @param each price of a reel
 * @param freight of a reel, as far as it goes by reel
 * @param orderBy last working day to order, so that the reels are counted on by the last day on which the first piece cut
 *     from them may be cut; {@link LocalDate#MAX} when no piece has a due day
 * @param mass of the rope on all of them; zero when not known
 * @param oneLot whether they must come from one lot, for the sake of a matched set
 * @param need what they are bought for
 */
public record ReelLine(
        Offer offer, int reels, Cost each, Cost freight, LocalDate orderBy, Mass mass, boolean oneLot, Need need) {
    /** The reels without freight. */
    public Cost goods() {
        return each.times(reels);
    }

    ReelLine needed(Need found) {
        return new ReelLine(offer, reels, each, freight, orderBy, mass, oneLot, found);
    }
}
