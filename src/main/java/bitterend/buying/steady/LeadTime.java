package bitterend.buying.steady;

import bitterend.market.Offer;
import java.util.SplittableRandom;

/**
 * How long a reel is on its way.
 *
 * @param days from the order to the rack, as its supplier says
 * @param spread it may come up to so many days later, each day as likely
 * @param late by so many days reels come later than their supplier says, as a rule
 */
public record LeadTime(int days, int spread, int late) {
    private static final int DAYS_OF_A_WEEK = 7;

    public LeadTime {
        if (days < 0 || spread < 0 || late < 0) {
            throw new IllegalArgumentException("days " + days + ", spread " + spread + ", late " + late);
        }
    }

    /**
     * That of an offer.
     *
     * @param lead as its supplier says, and what orders of it were later
     * @param usual how many days reels of its supplier usually are later; what the spread does not cover of it counts
     */
    public static LeadTime of(Offer.Lead lead, int usual) {
        return new LeadTime(lead.days(), lead.spread(), Math.max(0, usual - lead.spread()));
    }

    /** The longest that is counted on, in weeks; an order goes out when a week is done, and is there for the next at best. */
    public int mostWeeks() {
        return weeks(days + spread + late);
    }

    /** In how many weeks an order comes. */
    int weeks(SplittableRandom dice) {
        return weeks(days + late + (spread == 0 ? 0 : dice.nextInt(spread + 1)));
    }

    private static int weeks(int days) {
        return Math.max(1, (days + DAYS_OF_A_WEEK - 1) / DAYS_OF_A_WEEK);
    }
}
