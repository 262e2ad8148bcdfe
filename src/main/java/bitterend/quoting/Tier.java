package bitterend.quoting;

import bitterend.market.Market;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Mass;
import bitterend.quoting.sharing.NewReel;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Reels of an offer at one of its prices.
 *
 * @param offer the offer
 * @param from the fewest reels in one order that have this price
 * @param paid for one of them: its price, its freight by reel and, rounded up to 1/1000 of the smallest coin, by mass
 */
record Tier(Offer offer, int from, Cost paid) {

    /**
     * The prices of an offer, the one of the fewest reels first.
     *
     * @param freightPaid suppliers whose order is so large that nothing is charged for its way
     */
    static List<Tier> of(Market market, Offer offer, Set<String> freightPaid) {
        int minimum = offer.terms().minimum();
        Cost freight = freightPaid.contains(offer.supplier()) ? Cost.ZERO : freight(market, offer);
        List<Tier> tiers = new ArrayList<>();
        tiers.add(at(offer, minimum, freight));
        offer.terms().price().breaks().keySet().stream()
                .filter(from -> from > minimum && from <= offer.terms().supply())
                .forEach(from -> tiers.add(at(offer, from, freight)));
        return tiers;
    }

    private static Tier at(Offer offer, int from, Cost freight) {
        return new Tier(offer, from, offer.terms().price().at(from).fine().plus(freight));
    }

    private static Cost freight(Market market, Offer offer) {
        Supplier.Freight terms = market.supplier(offer.supplier()).freight();
        return offer.terms()
                .freight()
                .fine()
                .plus(terms.byMass().of(market.mass(offer, 1).orElse(Mass.ZERO)));
    }

    Length length() {
        return offer.usable();
    }

    NewReel reel() {
        return new NewReel(length(), paid);
    }

    /** The reel without freight. */
    NewReel goods() {
        return new NewReel(length(), offer.terms().price().at(from).fine());
    }

    boolean isTooFew(int reels) {
        return reels < from;
    }

    boolean isTooMany(int reels) {
        return reels > offer.terms().supply();
    }
}
