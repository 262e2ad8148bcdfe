package bitterend.report;

import bitterend.packing.ReelDraw;
import bitterend.packing.order.OrderOfWork.Need;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.Locale;

/** On which day a reel is cut, in a word or two: the first on which one of its pieces must be. */
public final class DueWords {
    private DueWords() {}

    /** {@code Thu 2026-03-05}. */
    public static String named(LocalDate day) {
        return weekday(day) + " " + day;
    }

    /** {@code Thu}. */
    static String weekday(LocalDate day) {
        return day.getDayOfWeek().getDisplayName(TextStyle.SHORT, Locale.ENGLISH);
    }

    /** {@code today}, {@code overdue}, a day; {@code first} in front where the order says so. */
    static String of(PlanView view, ReelDraw draw) {
        Need need = view.byId().order().need(draw);
        LocalDate today = view.plan().day();
        LocalDate day = view.byId().days().of(draw);
        String when = need.cutBy().isBefore(today)
                ? "overdue"
                : need.cutBy().equals(LocalDate.MAX) ? "no day" : day.equals(today) ? "today" : day.toString();
        return isFirst(view, draw) ? "first, " + when : when;
    }

    /** Whether a piece on it has the first priority. */
    static boolean isFirst(PlanView view, ReelDraw draw) {
        return view.byId().order().need(draw).priority() == 1;
    }
}
