package bitterend.buying.reorder;

import bitterend.buying.steady.DemandShape;
import bitterend.buying.steady.ReorderPoint;
import bitterend.measure.Length;
import java.time.LocalDate;

/**
 * Why a rope is to be ordered again, or is not yet.
 *
 * @param rope its id
 * @param position what there is of it, and what is booked
 * @param until the day up to which it is looked: an order that goes out when the next look is due is there by then;
 *     {@link LocalDate#MAX} for a rope without a past
 * @param point below how much that is left by then it is ordered again
 * @param shape what its past shows of seasons and trend
 */
public record Need(String rope, Position position, LocalDate until, ReorderPoint point, DemandShape shape) {
    private static final int DAYS_OF_A_WEEK = 7;

    /** Of a rope without a past: what is booked is all that is known of it. */
    static Need booked(String rope, Position position) {
        return new Need(
                rope, position, LocalDate.MAX, new ReorderPoint(Length.ZERO, 1, 1, Length.ZERO), DemandShape.LEVEL);
    }

    /** Whether weeks of the past tell what is used. */
    public boolean hasPast() {
        return !until.equals(LocalDate.MAX);
    }

    /** What is left by then for work that nobody has ordered yet; negative where more is booked. */
    public Length left() {
        return position.leftBy(until);
    }

    /** How much is to be left by then, so that enough is there. */
    public Length enough() {
        return point.point();
    }

    /** What is used by then as a rule. */
    public Length use() {
        return point.use();
    }

    /** How many weeks it is until then. */
    public int weeks() {
        return point.weeks();
    }

    /** Whether the use follows the season. */
    public boolean isOfTheSeason() {
        return shape.season();
    }

    /** Whether it is to be ordered now. */
    public boolean isDue() {
        return left().isShorterThan(point.point());
    }

    /** What a week of this season uses, rounded up to the millimetre. */
    public Length weekly() {
        return new Length(-Math.floorDiv(-point.use().mm(), (long) point.weeks()));
    }

    /** The day by which it is to be ordered; {@link LocalDate#MAX} where nothing of it is used in these weeks. */
    public LocalDate orderBy(LocalDate today) {
        if (isDue()) {
            return today;
        }
        long weekly = weekly().mm();
        return weekly == 0
                ? LocalDate.MAX
                : today.plusDays(left().minus(point.point()).mm() * DAYS_OF_A_WEEK / weekly);
    }

    /** The day on which all that is left is used up; {@link LocalDate#MAX} where nothing of it is used or booked. */
    LocalDate usedUp(LocalDate today) {
        long weekly = weekly().mm();
        long left = Math.max(0, left().mm());
        if (left().isNegative()) {
            return today;
        }
        return weekly == 0 ? LocalDate.MAX : today.plusDays(left * DAYS_OF_A_WEEK / weekly);
    }
}
