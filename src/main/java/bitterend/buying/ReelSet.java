package bitterend.buying;

import bitterend.finding.NaturalOrder;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * So many reels of each offer.
 *
 * @param counts by offer id; offers without a reel are not named
 */
public record ReelSet(SortedMap<String, Integer> counts) {
    public static final ReelSet EMPTY = new ReelSet(new TreeMap<>());

    public ReelSet {
        TreeMap<String, Integer> named = new TreeMap<>(NaturalOrder.IDS);
        named.putAll(counts);
        named.values().removeIf(count -> count == 0);
        counts = Collections.unmodifiableSortedMap(named);
    }

    /** How many reels of an offer. */
    public int of(String offer) {
        return counts.getOrDefault(offer, 0);
    }

    /** The same with another number of reels of one offer. */
    ReelSet with(String offer, int count) {
        TreeMap<String, Integer> changed = new TreeMap<>(counts);
        changed.put(offer, count);
        return new ReelSet(changed);
    }

    ReelSet plus(ReelSet other) {
        TreeMap<String, Integer> sum = new TreeMap<>(counts);
        other.counts.forEach((offer, count) -> sum.merge(offer, count, Integer::sum));
        return new ReelSet(sum);
    }

    /** The same without the reels of a part of it. */
    ReelSet minus(ReelSet part) {
        TreeMap<String, Integer> rest = new TreeMap<>(counts);
        part.counts.forEach((offer, count) -> rest.merge(offer, -count, Integer::sum));
        return new ReelSet(rest);
    }

    /** Whether this holds at least the reels of the other. */
    boolean covers(ReelSet other) {
        return other.counts.entrySet().stream().allMatch(entry -> of(entry.getKey()) >= entry.getValue());
    }

    /** All reels together. */
    public int reels() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }
}
