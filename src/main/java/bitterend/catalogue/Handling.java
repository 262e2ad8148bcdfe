package bitterend.catalogue;

import bitterend.measure.Mass;
import bitterend.measure.Ratio;

/**
 * What people handle without a hoist. Limits for lifting with both hands, close to the body and not often; a shop with people
 * who should lift less types its own.
 *
 * @param one the most that one person handles; zero for no limit
 * @param two the most that two people handle together; not less than {@code one}
 */
public record Handling(Mass one, Mass two) {
    /** Nothing is too heavy. */
    public static final Handling UNLIMITED = new Handling(Mass.ZERO, Mass.ZERO);

    /** Two thirds of what each can alone, added up: guidance to the Manual Handling Operations Regulations 1992, as quoted. */
    private static final Ratio OF_THE_SUM = new Ratio(2, 3);

    public Handling {
        if (two.compareTo(one) < 0) {
            throw new IllegalArgumentException("one " + one + ", two " + two);
        }
    }

    /** By the limit of one person: two together handle two thirds of twice that, rounded down to the gram. */
    public static Handling of(Mass one) {
        return new Handling(one, new Mass(OF_THE_SUM.timesRoundedDown(Math.multiplyExact(one.grams(), 2L))));
    }

    /** Who is needed. */
    public enum Hands {
        ONE(""),
        TWO("two people or a hoist"),
        HOIST("a hoist");

        private final String words;

        Hands(String words) {
            this.words = words;
        }

        /** {@code two people or a hoist}; empty where one person is enough. */
        public String words() {
            return words;
        }
    }

    /** Who is needed for so much. */
    public Hands needed(Mass mass) {
        if (one.grams() == 0 || mass.compareTo(one) <= 0) {
            return Hands.ONE;
        }
        return mass.compareTo(two) <= 0 ? Hands.TWO : Hands.HOIST;
    }
}
