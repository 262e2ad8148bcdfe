package bitterend.buying.reorder;

import bitterend.measure.Cost;
import bitterend.measure.Money;
import bitterend.measure.Ratio;

/**
 * What a shop asks of its orders.
 *
 * @param service share of the rope that is to be there in time; below 1
 * @param budget the most that is paid now, freight included; {@link #NO_BUDGET}
 * @param asked the most that was asked to be paid, where the budget of the shop is smaller; else the budget
 * @param mostWeeks the most weeks that rope is bought for, where an offer allows it
 * @param interest of a year
 * @param room what the place of one reel costs a week
 * @param seed of every draw
 */
public record Terms(Ratio service, Money budget, Money asked, int mostWeeks, Ratio interest, Cost room, long seed) {
    /** Whatever it costs. */
    public static final Money NO_BUDGET = new Money(Long.MAX_VALUE);

    /** Whether there is a most to be paid. */
    public boolean hasBudget() {
        return !budget.equals(NO_BUDGET);
    }

    /** Whether more was asked for than the shop pays. */
    public boolean isHeldByShop() {
        return !asked.equals(NO_BUDGET) && asked.compareTo(budget) > 0;
    }

    /** Half a year. Our own choice, no source. */
    public static final int USUAL_WEEKS = 26;
}
