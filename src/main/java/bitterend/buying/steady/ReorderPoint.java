package bitterend.buying.steady;

import bitterend.measure.Length;
import bitterend.measure.Ratio;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * When to order a rope again: once what is on the rack and on order, less what is booked, is below the point. It looks at
 * sums of lengths, not at remnants too short for a piece; the study, which lives it through, does. Point and share in time as in
 * Silver, Pyke and Peterson (docs/bibliography.md, Buying).
 *
 * @param point the metres below which to order
 * @param reels how many at a time
 * @param weeks of use that are covered when the order goes out: the longest lead and a week until the next look
 * @param use what those weeks are expected to use
 */
public record ReorderPoint(Length point, int reels, int weeks, Length use) {
    /** At any time of the year. */
    static final int ANY_PLACE = -1;

    static final int FUTURES = 2_000;

    /**
     * What is asked of a supply.
     *
     * @param reel usable length of a reel; positive
     * @param minimum fewest reels in an order; at least 1
     * @param lead how long they are on their way
     * @param service share of the rope that is to be there in time; below 1
     */
    public record Terms(Length reel, int minimum, LeadTime lead, Ratio service) {
        public Terms {
            if (!reel.isPositive() || minimum < 1 || service.compareTo(Ratio.ONE) >= 0 || service.isNegative()) {
                throw new IllegalArgumentException("reel " + reel + ", minimum " + minimum + ", service " + service);
            }
        }
    }

    /**
     * The point of a rope on a day. What is missed on the average until an order comes may be the share of the order that need
     * not be there in time (the usual definition of a fill rate); but it is never below what is used until then on the average: a
     * large reel would else allow its rope to run dry before each order.
     *
     * @param demand of the rope
     * @param loss of a cut
     * @param day the weeks to cover begin after this day; it tells their season
     * @param seed of every draw
     */
    public static ReorderPoint of(Demand demand, Length loss, Terms terms, LocalDate day, long seed) {
        long[] uses = uses(demand, loss, terms.lead(), PastWeeks.placeOf(day), seed);
        long use = Arrays.stream(uses).sum() / uses.length;
        long each = terms.reel().mm();
        int weeks = terms.lead().mostWeeks() + 1;
        long weekly = use / weeks;
        int reels = (int) Math.max(terms.minimum(), Math.min(1_000, (weekly + each - 1) / each));
        Ratio missed = Ratio.ONE.minus(terms.service());
        long point = Math.max(use, point(uses, missed.timesRoundedUp(each * reels)));
        return new ReorderPoint(new Length(point), reels, weeks, new Length(use));
    }

    /** Metres used in each of many futures until an order comes and a week longer, from the least. */
    static long[] uses(Demand demand, Length loss, LeadTime lead, int place, long seed) {
        return uses(demand.asRecorded(), new Draw(loss, lead, place, seed), FUTURES);
    }

    /**
     * How futures are drawn.
     *
     * @param loss of a cut
     * @param lead until an order comes
     * @param place of the year of the first week's eve; {@link #ANY_PLACE}
     * @param seed of every draw
     */
    record Draw(Length loss, LeadTime lead, int place, long seed) {}

    /** The same of so many futures, drawn from a past that may be another than the one recorded. */
    static long[] uses(Demand.Source source, Draw draw, int futures) {
        long[] uses = new long[futures];
        for (int i = 0; i < futures; i++) {
            SplittableRandom dice = Demand.dice(draw.seed(), i);
            int from = draw.place() == ANY_PLACE ? dice.nextInt(PastWeeks.PLACES) : draw.place() + 1;
            for (int[] week : source.weeks(dice, from, draw.lead().weeks(dice) + 1)) {
                for (int cut : week) {
                    uses[i] = Math.addExact(uses[i], cut + draw.loss().mm());
                }
            }
        }
        Arrays.sort(uses);
        return uses;
    }

    /** The least use such that what goes beyond it is no more on the average than may be missed. */
    private static long point(long[] uses, long missed) {
        long beyond = 0;
        for (int i = uses.length - 1; i > 0; i--) {
            long step = (uses[i] - uses[i - 1]) * (uses.length - i);
            if (beyond + step > missed * uses.length) {
                return uses[i] - (missed * uses.length - beyond) / (uses.length - i);
            }
            beyond += step;
        }
        return Math.max(0, uses[0] - (missed * uses.length - beyond) / uses.length);
    }
}
