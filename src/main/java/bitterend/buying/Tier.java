package bitterend.buying;

import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.measure.Cost;
import bitterend.measure.UnitPrice;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * An offer at one price of a reel: each break of its price wants so many reels in one order.
 *
 * @param offer what is offered
 * @param from the fewest reels of it that have this price
 * @param each price of a reel, with what its freight adds
 * @param freight of a reel, as far as it goes by reel
 */
record Tier(Offer offer, int from, Cost each, Cost freight) {
    /** The offer at every price that it has. */
    static List<Tier> of(Orders orders, Offer offer, Freight freight) {
        int minimum = offer.terms().minimum();
        List<Tier> tiers = new ArrayList<>(List.of(at(orders.market(), offer, minimum, minimum, freight)));
        offer.terms().price().breaks().keySet().stream()
                .filter(reels -> reels > minimum && reels <= offer.terms().supply())
                .forEach(reels -> tiers.add(at(orders.market(), offer, reels, reels, freight)));
        return tiers;
    }

    /** The offer at the price that an order of so many reels has, whatever its minimum. */
    static Tier of(Orders orders, Offer offer, int reels) {
        return at(orders.market(), offer, offer.terms().minimum(), reels, Freight.CHARGED);
    }

    private static Tier at(Market market, Offer offer, int from, int reels, Freight charged) {
        Cost freight = charged.of(market, offer);
        return new Tier(offer, from, offer.terms().price().at(reels).fine().plus(freight), freight);
    }

    /** What the rope on a reel costs. */
    Cost price() {
        return each.minus(freight);
    }

    /** Price and freight by the metre that can be counted on, rounded down. */
    UnitPrice byMetre() {
        return new UnitPrice(BigInteger.valueOf(each.millis())
                .multiply(BigInteger.valueOf(1000))
                .divide(BigInteger.valueOf(offer.usable().mm()))
                .longValueExact());
    }

    /** Tells it from the other prices of its offer. */
    String id() {
        return from <= offer.terms().minimum() ? offer.id() : offer.id() + " from " + from;
    }

    /** The id that its reels and ropes carry inside a packing; no rope of a shop has a colon in its id. */
    String marking() {
        return offer.rope() + ": offer " + id();
    }
}
