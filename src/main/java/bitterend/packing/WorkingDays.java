package bitterend.packing;

import bitterend.demand.Piece;
import java.time.DayOfWeek;
import java.time.LocalDate;

/** The days a shop works on, and by which of them a piece is cut so that what follows the cut is done by its due day. */
public final class WorkingDays {
    private final ShopCalendar calendar;

    public WorkingDays(ShopCalendar calendar) {
        this.calendar = calendar;
    }

    /** Whether the shop works on a day: Monday to Friday, less the days it is closed. */
    public boolean isWorking(LocalDate date) {
        DayOfWeek weekday = date.getDayOfWeek();
        return weekday != DayOfWeek.SATURDAY
                && weekday != DayOfWeek.SUNDAY
                && !calendar.closed().contains(date);
    }

    /** The first working day from a day on. */
    public LocalDate firstFrom(LocalDate day) {
        return isWorking(day) ? day : after(day, 1);
    }

    /** So many working days after a day; the day itself for none. */
    public LocalDate after(LocalDate day, int days) {
        return counted(day, days, 1);
    }

    /** So many working days before a day; the day itself for none. */
    public LocalDate before(LocalDate day, int days) {
        return counted(day, days, -1);
    }

    /** How many working days lie behind a day, up to a later one; none when that is no later. */
    public int between(LocalDate day, LocalDate later) {
        return (int) day.plusDays(1)
                .datesUntil(later.isAfter(day) ? later.plusDays(1) : day.plusDays(1))
                .filter(this::isWorking)
                .count();
    }

    /** The day that lies so far ahead of another. */
    public LocalDate ahead(LocalDate day, ShopCalendar.Ahead far) {
        return far.working() ? after(day, far.days()) : day.plusDays(far.days());
    }

    /**
     * The last working day on which a piece may be cut: its due day less its days of splicing and finishing, the working day
     * before that where the shop is closed then; {@link LocalDate#MAX} without one.
     */
    public LocalDate cutBy(Piece piece) {
        LocalDate due = piece.source().due();
        return due.equals(LocalDate.MAX)
                ? due
                : lastUpTo(before(due, piece.source().finishing()));
    }

    /** The last working day up to a day. */
    public LocalDate lastUpTo(LocalDate day) {
        return isWorking(day) ? day : before(day, 1);
    }

    private LocalDate counted(LocalDate from, int days, int step) {
        LocalDate date = from;
        for (int i = 0; i < days; i++) {
            do {
                date = date.plusDays(step);
            } while (!isWorking(date));
        }
        return date;
    }
}
