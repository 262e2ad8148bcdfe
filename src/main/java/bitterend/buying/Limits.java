package bitterend.buying;

import java.util.Map;
import java.util.TreeMap;

/**
 * How many reels may be bought of each offer at each price, and how many are bought whatever happens.
 *
 * @param most by id of the {@link Tier}; those that are not named are limited by their supply alone
 * @param committed by the same
 */
record Limits(Map<String, Integer> most, ReelSet committed) {
    static final Limits NONE = new Limits(Map.of(), ReelSet.EMPTY);

    Limits {
        most = Map.copyOf(most);
    }

    /** At most so many at one price, and no more than before. */
    Limits atMost(String tier, int count) {
        Map<String, Integer> changed = new TreeMap<>(most);
        changed.merge(tier, count, Math::min);
        return new Limits(changed, committed);
    }

    Limits committing(String tier, int count) {
        return new Limits(most, committed.with(tier, count));
    }

    /** The most reels that may be bought, those committed to included. */
    int mostOf(Tier tier) {
        return Math.min(tier.offer().terms().supply(), most.getOrDefault(tier.id(), Integer.MAX_VALUE));
    }
}
