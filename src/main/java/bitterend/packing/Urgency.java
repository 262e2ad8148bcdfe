package bitterend.packing;

import bitterend.demand.Piece;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/**
 * How much it matters that a piece is planned. Classes come before everything: first priority 1 and what is overdue, then
 * what is due on the day, then by the next working day, then within seven days, then later and undated; the shop may set
 * the limits of the third and fourth. Within a class a piece weighs 10 less its priority. A matched set is in the class
 * of its most urgent piece and weighs what its pieces weigh together.
 */
public final class Urgency {
    private final LocalDate day;
    private final LocalDate next;
    private final LocalDate soon;
    private final Map<String, Integer> classOfSet = new HashMap<>();

    public Urgency(PackingProblem problem) {
        day = problem.day();
        next = end(problem.calendar(), problem.calendar().next());
        soon = end(problem.calendar(), problem.calendar().soon());
        for (Piece piece : problem.pieces()) {
            if (piece.isMatched()) {
                classOfSet.merge(piece.matching().set(), ownClass(piece), Math::min);
            }
        }
    }

    /** The class of a piece, from 1, the most urgent, to {@link Undone#CLASSES}; that of its set if it has one. */
    public int classOf(Piece piece) {
        int own = ownClass(piece);
        return piece.isMatched() ? classOfSet.getOrDefault(piece.matching().set(), own) : own;
    }

    /** What leaving a piece undone adds to the work left undone. */
    public Undone of(Piece piece) {
        return Undone.of(classOf(piece), weight(piece));
    }

    /** Weight of a piece within its class: 10 less its priority, 1 to 9. */
    public static long weight(Piece piece) {
        return 10L - piece.source().priority();
    }

    private int ownClass(Piece piece) {
        LocalDate due = piece.source().due();
        if (piece.source().priority() == 1 || due.isBefore(day)) {
            return 1;
        }
        if (due.equals(day)) {
            return 2;
        }
        return !due.isAfter(next) ? 3 : !due.isAfter(soon) ? 4 : Undone.CLASSES;
    }

    private LocalDate end(ShopCalendar calendar, ShopCalendar.Ahead ahead) {
        if (!ahead.working()) {
            return day.plusDays(ahead.days());
        }
        LocalDate end = day;
        for (int i = 0; i < ahead.days(); i++) {
            do {
                end = end.plusDays(1);
            } while (isOff(calendar, end));
        }
        return end;
    }

    private static boolean isOff(ShopCalendar calendar, LocalDate date) {
        DayOfWeek weekday = date.getDayOfWeek();
        return weekday == DayOfWeek.SATURDAY
                || weekday == DayOfWeek.SUNDAY
                || calendar.closed().contains(date);
    }
}
