package bitterend.stock.worth;

import bitterend.measure.Length;
import java.util.Collection;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How often which length of one rope is cut: what is known of the work that a coil waits for.
 *
 * @param counts how often each length was cut, the loss of its cut in it; lengths and counts positive, at least one
 * @param weeks in how many weeks; positive. Where the usual reel is counted in, both are a multiple of what is known
 * @param source where that is known from
 */
public record PastCuts(SortedMap<Length, Long> counts, int weeks, Source source) {
    /** Fewer past pieces prove no gain over the rule "coils first". */
    public static final int ENOUGH = 35;

    private static final int MOST_LENGTHS = 300;
    private static final int HALF_A_YEAR = 26;

    public PastCuts {
        counts = Collections.unmodifiableSortedMap(new TreeMap<>(counts));
        boolean sound = !counts.isEmpty()
                && counts.entrySet().stream().allMatch(cut -> cut.getKey().isPositive() && cut.getValue() > 0);
        if (!sound || weeks < 1) {
            throw new IllegalArgumentException(weeks + " weeks with " + counts);
        }
    }

    /** Where the cuts are known from. */
    public enum Source {
        HISTORY("history", "past orders"),
        ORDERS("orders", "past orders, orders in hand and the usual reel, since the past alone says too little"),
        FEW_PAST("few past", "past orders and the usual reel, since the past alone says too little"),
        IN_HAND("in hand", "orders in hand and the usual reel, since no past order of this rope is known"),
        REEL("reel", "the usual reel alone, since nobody has ordered this rope");

        private final String word;
        private final String words;

        Source(String word, String words) {
            this.word = word;
            this.words = words;
        }

        /** Its name in a file. */
        public String word() {
            return word;
        }

        /** Its name on a page. */
        public String words() {
            return words;
        }
    }

    /** Counts of these lengths, to each of which the loss of its cut is added. */
    public static PastCuts of(Collection<Length> lengths, Length loss, int weeks, Source source) {
        SortedMap<Length, Long> counts = new TreeMap<>();
        lengths.forEach(length -> counts.merge(length.plus(loss), 1L, Long::sum));
        return new PastCuts(thinned(counts), weeks, source);
    }

    /** Of very many lengths neighbours are counted as the longest of them. */
    private static SortedMap<Length, Long> thinned(SortedMap<Length, Long> counts) {
        if (counts.size() <= MOST_LENGTHS) {
            return counts;
        }
        int together = (counts.size() + MOST_LENGTHS - 1) / MOST_LENGTHS;
        SortedMap<Length, Long> thinned = new TreeMap<>();
        long count = 0;
        int at = 0;
        for (Map.Entry<Length, Long> cut : counts.entrySet()) {
            count += cut.getValue();
            at++;
            if (at % together == 0 || at == counts.size()) {
                thinned.put(cut.getKey(), count);
                count = 0;
            }
        }
        return thinned;
    }

    /**
     * The work of a rope that nobody has ordered, so that a form can be given: a usual reel in half a year, cut to pieces of
     * a hundredth, a fortieth, a twentieth and a tenth of it. Our own choice, no source.
     */
    public static PastCuts ofReel(Length reel) {
        SortedMap<Length, Long> counts = new TreeMap<>();
        counts.merge(part(reel, 100), 10L, Long::sum);
        counts.merge(part(reel, 40), 8L, Long::sum);
        counts.merge(part(reel, 20), 6L, Long::sum);
        counts.merge(part(reel, 10), 4L, Long::sum);
        return new PastCuts(counts, HALF_A_YEAR, Source.REEL);
    }

    private static Length part(Length reel, long parts) {
        return new Length(Math.max(1, reel.mm() / parts));
    }

    /** Few known pieces with the work by its reel added, so that a length nobody has ordered yet is not worth nothing. */
    public static PastCuts thin(PastCuts few, Length reel) {
        int weeks = few.weeks;
        SortedMap<Length, Long> counts = new TreeMap<>();
        few.counts.forEach((length, count) -> counts.merge(length, count * HALF_A_YEAR, Math::addExact));
        ofReel(reel).counts().forEach((length, count) -> counts.merge(length, count * weeks, Math::addExact));
        return new PastCuts(counts, Math.multiplyExact(weeks, HALF_A_YEAR), few.source);
    }

    /** How many pieces. */
    public long pieces() {
        return counts.values().stream().reduce(0L, Math::addExact);
    }

    /** All the rope that was cut. */
    public Length rope() {
        return counts.entrySet().stream()
                .map(cut -> cut.getKey().times(cut.getValue()))
                .reduce(Length.ZERO, Length::plus);
    }

    /** What a week uses, rounded down. */
    public Length weekly() {
        return new Length(rope().mm() / weeks);
    }
}
