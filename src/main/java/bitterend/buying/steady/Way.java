package bitterend.buying.steady;

import bitterend.measure.Length;
import java.util.List;

/**
 * A way to buy, kept to week after week.
 *
 * @param rules the reels that are usually bought; behind it, where there is one, a size that comes sooner, as a stopgap
 */
public record Way(List<Rule> rules) {
    public Way {
        rules = List.copyOf(rules);
        if (rules.isEmpty() || rules.size() > 2) {
            throw new IllegalArgumentException(rules.size() + " rules");
        }
    }

    /**
     * When one size is ordered, and how many.
     *
     * @param size what is bought
     * @param point ordered when less than this is there and coming, less what waits; of a stopgap only what comes before it counts
     * @param reels at a time; more where a lump has taken more
     */
    public record Rule(SizeOnOffer size, Length point, int reels) {
        public Rule {
            if (reels < 1 || point.isNegative()) {
                throw new IllegalArgumentException("point " + point + ", reels " + reels);
            }
        }

        /** What one order brings. */
        public Length order() {
            return size.offer().usable().times(reels);
        }
    }

    /** The size that is usually bought. */
    public Rule usual() {
        return rules.get(0);
    }

    /** Whether a second size is bought when rope runs short. */
    public boolean hasStopgap() {
        return rules.size() > 1;
    }

    /** The offers of its sizes: ways with the same are compared for their points and numbers alone. */
    public List<String> offers() {
        return rules.stream().map(rule -> rule.size().offer().id()).toList();
    }

    /** The way as it is written down. */
    public WayNote note() {
        return new WayNote(rules.stream()
                .map(rule -> new WayNote.RuleNote(rule.size().offer().id(), rule.point(), rule.reels()))
                .toList());
    }
}
