package bitterend.buying;

import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Cost;

/** Whether the freight of each reel is charged, where an order may come freight paid. */
enum Freight {
    /** It is. */
    CHARGED,
    /** A supplier who sends large orders freight paid charges nothing: what is proven so holds of every order. */
    PAID_BY_SUPPLIER;

    private static final int MANY = 1000;

    /**
     * Freight by reel and by the mass of the rope on it, rounded down: many reels on one bill are charged no less. What a
     * supplier charges by order is not in it.
     */
    Cost of(Market market, Offer offer) {
        Supplier.Freight terms = market.supplier(offer.supplier()).freight();
        if (this == PAID_BY_SUPPLIER && mayBeFree(market, offer)) {
            return Cost.ZERO;
        }
        Cost byMass = market.mass(offer, MANY)
                .map(mass -> new Cost(
                        Math.max(0, Math.floorDiv(terms.byMass().of(mass).millis(), MANY) - 1)))
                .orElse(Cost.ZERO);
        return offer.terms().freight().fine().plus(byMass);
    }

    /** Whether a large order of this offer's supplier comes freight paid. */
    static boolean mayBeFree(Market market, Offer offer) {
        return market.supplier(offer.supplier()).freight().freeFrom().compareTo(Supplier.Freight.NEVER) < 0;
    }
}
