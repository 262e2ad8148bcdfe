package bitterend.buying.reorder;

import bitterend.market.Offer;
import bitterend.measure.Money;
import java.time.LocalDate;

/**
 * Reels that are to be ordered.
 *
 * @param offer what is ordered
 * @param reels how many
 * @param orderBy by which day
 * @param expected the day on which they are there, as their supplier says
 * @param counted the day from which they are counted on
 * @param why why now
 * @param need of the rope
 */
public record Line(
        Offer offer, int reels, LocalDate orderBy, LocalDate expected, LocalDate counted, Why why, Need need) {

    /** Why it is ordered now. */
    public enum Why {
        /** Less is left than the point. */
        DUE,
        /** Less is left than the point; there would be more reels of it, or others, did the budget allow. */
        WITHIN_BUDGET,
        /** It would have to be ordered soon, and with the others its way costs less. */
        SAVES_FREIGHT,
        /** It would have to be ordered soon, and with it the order is as large as its supplier asks. */
        MINIMUM_ORDER
    }

    /** Whether it was not pulled in for the sake of others. */
    boolean isDue() {
        return why == Why.DUE || why == Why.WITHIN_BUDGET;
    }

    /** What its reels cost without freight by order. */
    Money paid() {
        return each().plus(offer.terms().freight()).times(reels);
    }

    /** The same reels for another reason. */
    Line because(Why other) {
        return new Line(offer, reels, orderBy, expected, counted, other, need);
    }

    /** The same with so many reels. */
    Line of(int other) {
        return new Line(offer, other, orderBy, expected, counted, why, need);
    }

    /** Whether every piece that is booked can be cut with them, on one stretch each. */
    public boolean holdsWhatIsBooked() {
        return need.position().waiting().isHeldWith(reels, offer.usable(), counted);
    }

    /** What one of its reels costs in an order of so many. */
    public Money each() {
        return offer.terms().price().at(reels);
    }
}
