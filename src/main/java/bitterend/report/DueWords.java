package bitterend.report;

import bitterend.packing.ReelDraw;
import bitterend.packing.order.OrderOfWork.Need;
import java.time.LocalDate;

/** On which day a reel is cut, in a word or two: the first on which one of its pieces must be. */
final class DueWords {
    private DueWords() {}

    /** {@code today}, {@code overdue}, a day; {@code first} in front where the order says so. */
    static String of(PlanView view, ReelDraw draw) {
        Need need = view.byId().order().need(draw);
        LocalDate today = view.plan().day();
        LocalDate day = view.byId().days().of(draw);
        String when = need.cutBy().isBefore(today)
                ? "overdue"
                : need.cutBy().equals(LocalDate.MAX) ? "no day" : day.equals(today) ? "today" : day.toString();
        return need.priority() == 1 ? "first, " + when : when;
    }
}
