package bitterend.buying.steady;

import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import java.util.Map;
import java.util.Set;

/**
 * A size of reel that can be bought again and again.
 *
 * @param offer what is on a reel
 * @param lead how long reels of it are on their way
 * @param market what an order of it comes to
 */
public record SizeOnOffer(Offer offer, LeadTime lead, Market market) {
    /** Longer than any reel or piece. */
    static final int LONGEST = 1_000_000_000;

    /** Millimetres of a reel that can be counted on. */
    int usable() {
        return (int) Math.min(LONGEST, offer.usable().mm());
    }

    /** Price and freight of each reel in an order of so many that goes out by itself, rounded up to 1/1000 minor unit. */
    public Cost paid(int reels) {
        long sum = market.bill(Map.of(offer.id(), reels)).sum().fine().millis();
        return new Cost(-Math.floorDiv(-sum, reels));
    }

    /** Numbers of reels from which on each costs less. */
    Set<Integer> breaks() {
        return offer.terms().price().breaks().keySet();
    }

    int minimum() {
        return offer.terms().minimum();
    }
}
