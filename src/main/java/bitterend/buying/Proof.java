package bitterend.buying;

import bitterend.measure.Cost;
import java.util.Map;

/**
 * What is proven of ropes that belong together.
 *
 * @param cost no set that leaves no more unplanned costs less
 * @param paid none pays less, where the freight of reels is charged and whatever it is
 */
record Proof(Cost cost, Map<Freight, Cost> paid) {
    static final Proof NOTHING = new Proof(Cost.ZERO, Map.of());

    /** Of fewer sets as much is proven at least: what is proven of them beside, where that is more. */
    Proof raised(Cost costMore, Cost paidMore) {
        return new Proof(
                largest(cost, costMore),
                Map.of(
                        Freight.CHARGED,
                        largest(paid.getOrDefault(Freight.CHARGED, Cost.ZERO), paidMore),
                        Freight.PAID_BY_SUPPLIER,
                        paid.getOrDefault(Freight.PAID_BY_SUPPLIER, Cost.ZERO)));
    }

    private static Cost largest(Cost one, Cost other) {
        return one.compareTo(other) < 0 ? other : one;
    }
}
