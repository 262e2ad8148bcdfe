package bitterend.packing;

import java.time.LocalDate;

/**
 * A reel that is on order and not in the house yet: when it comes.
 *
 * @param order the shop's number for the order of reels
 * @param expected the day it is on the rack, as the supplier says
 * @param from the first day its rope is counted on: later by what its supplier is usually late
 */
public record Arrival(String order, LocalDate expected, LocalDate from) {
    /** The day it is expected; today where that is past, since it may come any day. */
    public LocalDate earliest(LocalDate today) {
        return expected.isBefore(today) ? today : expected;
    }

    /**
     * The id of a reel before it comes: {@code P-88:1}. No reel of a rack has a colon in its id.
     *
     * @param order the shop's number for the order of reels
     * @param number which reel of that order, from 1
     */
    public static String idOf(String order, int number) {
        return order + ":" + number;
    }

    /** Which reel of its order one with such an id is. */
    public static int numberOf(String reel) {
        return Integer.parseInt(reel.substring(reel.lastIndexOf(':') + 1));
    }

    /** Whether an id is one of a reel that was on order, and not one of the rack. */
    public static boolean isIdOfOne(String reel) {
        return reel.indexOf(':') >= 0;
    }
}
