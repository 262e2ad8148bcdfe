package bitterend.buying;

import bitterend.market.Offer;
import bitterend.measure.Cost;
import java.util.List;
import java.util.Map;

/**
 * What was found for ropes that belong together.
 *
 * @param found every set, what their suppliers charge by order left out; a single one where nothing is to be bought
 * @param costBound proven: no set that leaves no more unplanned costs less
 * @param paidBound proven: none pays less, where the freight of reels is charged and whatever it is
 * @param offers what could be bought
 * @param next sets that do without a size of those before them, cheapest first
 * @param unheld pieces that nothing on offer can hold
 * @param late ids of pieces whose rope comes after they are due
 * @param tooLong what would cost less, if rope might last longer
 */
record PartFound(
        List<Purchase> found,
        Cost costBound,
        Map<Freight, Cost> paidBound,
        List<Offer> offers,
        List<Purchase> next,
        List<Unheld> unheld,
        List<String> late,
        List<TooLong> tooLong) {
    PartFound {
        found = List.copyOf(found);
        offers = List.copyOf(offers);
        next = List.copyOf(next);
        unheld = List.copyOf(unheld);
        late = List.copyOf(late);
        tooLong = List.copyOf(tooLong);
    }

    /** One way, whatever the aim. */
    static PartFound of(Purchase only, List<Unheld> unheld, List<String> late) {
        return new PartFound(
                List.of(only),
                only.bound(),
                Map.of(Freight.CHARGED, only.paid(), Freight.PAID_BY_SUPPLIER, only.paid()),
                List.of(),
                List.of(),
                unheld,
                late,
                List.of());
    }

    /** The least cost that was found. */
    Cost leastCost() {
        return Pool.best(found, Aim.LEAST_COST).cost();
    }

    /** The same with every set that is known by now. */
    PartFound with(List<Purchase> all) {
        return new PartFound(all, costBound, paidBound, offers, next, unheld, late, tooLong);
    }
}
