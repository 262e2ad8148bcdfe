package bitterend.buying;

import bitterend.measure.Cost;
import java.util.List;
import java.util.NavigableSet;
import java.util.TreeSet;

/** The sums that whole reels come to: what is paid is one of them, so that a bound between two of them is as good as the next. */
final class PaidSums {
    private static final int MOST = 20_000;

    private PaidSums() {}

    /**
     * The least sum of whole reels that is not below a bound.
     *
     * @param found what a way pays; a bound is not raised above it
     */
    static Cost raised(Cost bound, Cost found, List<Tier> tiers) {
        NavigableSet<Long> sums = new TreeSet<>(List.of(0L));
        for (Tier tier : tiers) {
            for (long before : List.copyOf(sums)) {
                int most = tier.offer().terms().supply();
                for (int reels = tier.from(); reels <= most && sums.size() <= MOST; reels++) {
                    long sum = before + tier.each().millis() * reels;
                    if (sum > found.millis() || tier.each().millis() == 0) {
                        break;
                    }
                    sums.add(sum);
                }
            }
        }
        Long next = sums.ceiling(bound.millis());
        return sums.size() > MOST || next == null ? bound : new Cost(next);
    }
}
