package bitterend.buying;

import bitterend.market.Offer;
import bitterend.measure.Mass;
import java.time.LocalDate;

/**
 * A line of an order of reels, ready to be sent: always one length to a reel, without joins.
 *
 * @param offer what is ordered
 * @param reels how many
 * @param orderBy last day to order, so that the first piece cut from them is not late; {@link LocalDate#MAX} when no
 *     piece has a due day
 * @param mass of the rope on all of them; zero when not known
 * @param oneLot whether they must come from one lot, for the sake of a matched set
 */
public record ReelLine(Offer offer, int reels, LocalDate orderBy, Mass mass, boolean oneLot) {}
