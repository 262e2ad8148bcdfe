package bitterend.buying;

import bitterend.market.Offer;
import java.util.List;

/**
 * The most weeks that rope which is bought may last once the orders in hand are cut. A rope without a past is not limited, nor
 * is one of which nothing is bought.
 */
final class CoverLimit {
    private static final long PARTS = 10_000;
    private static final long TENTHS = 10;

    private final Covers covers;
    private final Spending spending;

    CoverLimit(Covers covers, Spending spending) {
        this.covers = covers;
        this.spending = spending;
    }

    /** Whether no rope lasts longer than it may. */
    boolean isKept(ReelSet set) {
        return over(set).isEmpty();
    }

    /** The ropes that last longer. */
    List<Cover> over(ReelSet set) {
        return !spending.hasMostWeeks()
                ? List.of()
                : covers.of(set).stream()
                        .filter(cover -> cover.isAbove(spending.mostWeeks()))
                        .toList();
    }

    /** Tenths of a week that the ropes last longer than they may, each rounded up, added up. */
    long excess(ReelSet set) {
        return over(set).stream()
                .mapToLong(cover -> cover.tenths() + 1 - TENTHS * spending.mostWeeks())
                .sum();
    }

    /** The most reels of an offer that keep within, if nothing else is bought; no more than so many. */
    int most(Offer offer, int reels) {
        int kept = 0;
        int over = reels + 1;
        while (over - kept > 1) {
            int middle = kept + (over - kept) / 2;
            if (isKept(ReelSet.EMPTY.with(offer.id(), middle))) {
                kept = middle;
            } else {
                over = middle;
            }
        }
        return kept;
    }

    /** Parts of a week that a reel lasts, to weigh one against another; 1 where no past tells. */
    long weight(Offer offer) {
        long weekly = covers.weekly(offer.rope()).mm();
        return weekly == 0 ? 1 : Math.max(1, offer.usable().mm() * PARTS / weekly);
    }
}
