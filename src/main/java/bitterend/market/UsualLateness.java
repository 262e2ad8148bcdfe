package bitterend.market;

import bitterend.packing.ShopCalendar;
import bitterend.packing.ShopCalendar.Ahead;
import bitterend.packing.WorkingDays;
import java.time.LocalDate;

/**
 * From when rope that is on order is counted on: later than its supplier says, by what suppliers are usually late. Usual
 * lateness is this one function: what receipts tell of a supplier belongs here.
 */
public final class UsualLateness {
    /** Two working days. Our own choice, no source: with known receipts the shop can type what it sees. */
    public static final Ahead USUAL = new Ahead(2, true);

    private final WorkingDays working;
    private final Ahead typed;

    /** @param typed how late reels usually come, as the shop says */
    public UsualLateness(ShopCalendar calendar, Ahead typed) {
        working = new WorkingDays(calendar);
        this.typed = typed;
    }

    /**
     * The first working day on which an order of reels is counted on: the day it is expected and what its supplier is
     * usually late. What is later than that already is expected anew from {@code today}, and never before the working day after
     * it, since it is not in the house.
     */
    public LocalDate from(OnOrder order, LocalDate today) {
        LocalDate late = usuallyLate(order.expected());
        LocalDate next = working.after(today, 1);
        if (late.isAfter(today)) {
            return late;
        }
        LocalDate anew = usuallyLate(today);
        return anew.isBefore(next) ? next : anew;
    }

    private LocalDate usuallyLate(LocalDate expected) {
        return working.firstFrom(working.ahead(working.firstFrom(expected), typed));
    }
}
