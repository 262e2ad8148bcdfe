package bitterend.buying;

import bitterend.finding.NaturalOrder;
import java.util.Collections;
import java.util.Set;
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

    /** The reels that another set does not have. */
    public ReelSet beyond(ReelSet other) {
        TreeMap<String, Integer> more = new TreeMap<>(counts);
        more.replaceAll((offer, count) -> Math.max(0, count - other.of(offer)));
        return new ReelSet(more);
    }

    /** The ids of the offers of which there is a reel. */
    Set<String> sizes() {
        return counts.keySet();
    }

    /** All reels together. */
    public int reels() {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }
}
