package bitterend.buying;

import bitterend.market.Offer;
import java.util.Map;
import java.util.TreeMap;

/**
 * How many reels of each offer may be bought, and how many are bought whatever happens.
 *
 * @param most by offer id; offers that are not named are limited by their supply alone
 * @param committed by offer id
 */
record Limits(Map<String, Integer> most, ReelSet committed) {
    static final Limits NONE = new Limits(Map.of(), ReelSet.EMPTY);

    Limits {
        most = Map.copyOf(most);
    }

    /** At most so many of one offer, and no more than before. */
    Limits atMost(String offer, int count) {
        Map<String, Integer> changed = new TreeMap<>(most);
        changed.merge(offer, count, Math::min);
        return new Limits(changed, committed);
    }

    Limits committing(String offer, int count) {
        return new Limits(most, committed.with(offer, count));
    }

    /** The most reels of an offer that may be bought, those committed to included. */
    int mostOf(Offer offer) {
        return Math.min(offer.terms().supply(), most.getOrDefault(offer.id(), Integer.MAX_VALUE));
    }
}
