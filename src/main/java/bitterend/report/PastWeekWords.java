package bitterend.report;

import bitterend.quoting.WasteView.PastWeeks;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Which weeks of the past a figure rests on, in words: weeks that follow one another as one stretch. */
final class PastWeekWords {
    private PastWeekWords() {}

    static String of(PastWeeks weeks) {
        String taken = weeks.mondays().size() < weeks.outOf() ? ", taken evenly from " + weeks.outOf() : "";
        return "Usual rests on " + FindingsPage.count(weeks.mondays().size(), "week") + " with work in this rope"
                + (weeks.ofSeason()
                        ? ", those about this time of year (up to 45 days before or after it)"
                        : ", of all of the past")
                + taken + ": the weeks from " + String.join(", ", stretches(weeks.mondays())) + ".";
    }

    private static List<String> stretches(List<LocalDate> mondays) {
        List<String> stretches = new ArrayList<>();
        int from = 0;
        for (int i = 1; i <= mondays.size(); i++) {
            if (i == mondays.size() || !mondays.get(i).equals(mondays.get(i - 1).plusWeeks(1))) {
                LocalDate first = mondays.get(from);
                LocalDate last = mondays.get(i - 1);
                stretches.add(first.equals(last) ? first.toString() : first + " to " + last);
                from = i;
            }
        }
        return stretches;
    }
}
