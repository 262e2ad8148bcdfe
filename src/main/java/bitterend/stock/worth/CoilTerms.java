package bitterend.stock.worth;

import bitterend.measure.Cost;
import bitterend.measure.Length;
import bitterend.measure.Ratio;
import bitterend.measure.UnitPrice;

/**
 * What a shop's money and place cost, for one rope.
 *
 * @param price of new rope
 * @param reel usable length of the reel that is usually bought; positive
 * @param interest of a year, not negative
 * @param room what the place of one coil costs a week, with the care for it; not negative
 * @param floor shorter coils are scrap whatever they could save; zero for none
 * @param grid the curve rises in steps of this; positive
 * @param steps how many; beyond them the curve is level; at least 1
 */
public record CoilTerms(UnitPrice price, Length reel, Ratio interest, Cost room, Length floor, Length grid, int steps) {
    private static final int STEPS_OF_A_REEL = 2_000;
    /** More steps than this take more time than a finer grid is worth. */
    public static final int MOST_STEPS = 8_000;

    private static final long FINEST_MM = 10;

    public CoilTerms {
        boolean sound = reel.isPositive()
                && grid.isPositive()
                && !floor.isNegative()
                && !interest.isNegative()
                && room.millis() >= 0
                && steps >= 1
                && steps <= MOST_STEPS;
        if (!sound) {
            throw new IllegalArgumentException("reel " + reel + ", interest " + interest + ", room " + room + ", floor "
                    + floor + ", " + steps + " steps of " + grid);
        }
    }

    /** What money and place cost a shop, and from which length it keeps a coil at all. */
    public record Holding(Ratio interest, Cost room, Length floor) {}

    /** A grid of about 2,000 steps to the usual reel, as far as the longest reel there is. */
    public static CoilTerms of(UnitPrice price, Length reel, Length longest, Holding holding) {
        Length far = Length.max(reel, longest);
        long fine = Math.max(dividedUp(reel.mm(), STEPS_OF_A_REEL), dividedUp(far.mm(), MOST_STEPS));
        long grid = dividedUp(Math.max(1, fine), FINEST_MM) * FINEST_MM;
        return new CoilTerms(price, reel, holding.interest(), holding.room(), holding.floor(), new Length(grid), (int)
                dividedUp(far.mm(), grid));
    }

    private static long dividedUp(long amount, long by) {
        return -Math.floorDiv(-amount, by);
    }
}
