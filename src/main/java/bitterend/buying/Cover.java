package bitterend.buying;

import bitterend.measure.Length;

/**
 * How long the rope of one kind lasts once the orders in hand are cut.
 *
 * @param rope its id
 * @param free on the rack, for any order
 * @param onOrder on its way
 * @param bought by this way
 * @param wanted by the orders in hand, cut losses included
 * @param weekly what work took of it in a week of the past; zero where that is not known
 */
public record Cover(String rope, Length free, Length onOrder, Length bought, Length wanted, Length weekly) {
    private static final int TENTHS = 10;

    /** What is left; never negative. */
    public Length left() {
        return Length.max(Length.ZERO, free.plus(onOrder).plus(bought).minus(wanted));
    }

    /** Whether anything is known of the past. */
    public boolean isKnown() {
        return weekly.isPositive();
    }

    /** Tenths of a week that what is left lasts, rounded down; 0 where nothing is known. */
    public long tenths() {
        return isKnown() ? left().mm() * TENTHS / weekly.mm() : 0;
    }

    /** The same rounded up, to be held against a most. */
    public long tenthsRoundedUp() {
        return isKnown() ? -Math.floorDiv(-left().mm() * TENTHS, weekly.mm()) : 0;
    }

    /** Whether it lasts longer than so many weeks. */
    boolean isAbove(int weeks) {
        return isKnown() && left().mm() / weeks > weekly.mm();
    }
}
