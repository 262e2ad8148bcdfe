package bitterend.packing;

import java.time.LocalDate;
import java.util.Set;

/**
 * The shop's days off, and how far ahead work is urgent.
 *
 * @param closed days on which the shop is closed, beside Saturdays and Sundays
 * @param next what is due no later than this is in the third class of urgency
 * @param soon what is due no later than this is in the fourth; later and undated work is in the fifth
 * @param horizon what must be cut no later than this is planned; the rest is for later plans
 */
public record ShopCalendar(Set<LocalDate> closed, Ahead next, Ahead soon, Ahead horizon) {
    /** Closed at weekends alone; the next working day, seven days, and a horizon of five working days. */
    public static final ShopCalendar USUAL =
            new ShopCalendar(Set.of(), new Ahead(1, true), new Ahead(7, false), new Ahead(5, true));

    public ShopCalendar {
        closed = Set.copyOf(closed);
    }

    /** With the usual horizon. */
    public ShopCalendar(Set<LocalDate> closed, Ahead next, Ahead soon) {
        this(closed, next, soon, USUAL.horizon);
    }

    /**
     * A number of days after the day of the plan.
     *
     * @param days how many, from 0 to 366
     * @param working whether only working days count
     */
    public record Ahead(int days, boolean working) {
        /** The most that may be looked ahead. */
        public static final int MOST = 366;

        public Ahead {
            if (days < 0 || days > MOST) {
                throw new IllegalArgumentException("from 0 to " + MOST + " days: " + days);
            }
        }

        /** How far that usually reaches, to compare one with another: in fifths of a day, a working day being 7 of them. */
        public int inFifths() {
            return days * (working ? 7 : 5);
        }
    }
}
