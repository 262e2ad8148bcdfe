package bitterend.report;

import bitterend.packing.ReelDraw;
import bitterend.packing.order.OrderOfWork.Need;
import java.time.LocalDate;

/** When the most urgent piece of a reel must be cut, in a word or two: its due day where finishing takes none. */
final class DueWords {
    private DueWords() {}

    /** {@code today}, {@code overdue}, a day; {@code first} in front where the order says so. */
    static String of(PlanView view, ReelDraw draw) {
        Need need = view.byId().order().need(draw);
        LocalDate day = view.plan().day();
        String when = need.cutBy().equals(LocalDate.MAX)
                ? "no day"
                : need.cutBy().equals(day)
                        ? "today"
                        : need.cutBy().isBefore(day) ? "overdue" : need.cutBy().toString();
        return need.priority() == 1 ? "first, " + when : when;
    }
}
