package bitterend.report;

import bitterend.buying.reorder.Line;
import bitterend.buying.reorder.Need;
import bitterend.buying.reorder.Position;
import bitterend.measure.Length;
import bitterend.report.page.Wording;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Why a rope is to be ordered again, in words. */
final class ReorderWords {
    private final Figures figures;

    ReorderWords(Figures figures) {
        this.figures = figures;
    }

    /**
     * {@code 34.000 m free, 149.000 m of P-88 come on 2026-03-06, 120.000 m booked: 63.000 m left; 3 weeks of this season use
     * 150.000 m on the average, and from 210.000 m on enough is there.}
     */
    String why(Need need) {
        String weeks = FindingsPage.count(need.weeks(), "week") + (need.isOfTheSeason() ? " of this season" : "");
        return there(need.position(), need.until()) + ": " + left(need.left()) + ". " + weeks + " use "
                + figures.length(need.use()) + " as a rule; to have enough it takes "
                + figures.length(need.enough()) + ".";
    }

    private static String plain(String words) {
        return Wording.printable(words);
    }

    private String left(Length left) {
        return left.isNegative()
                ? figures.length(Length.ZERO.minus(left)) + " more booked than there is"
                : figures.length(left) + " left";
    }

    /** What is there, comes and is booked. */
    String there(Position position, LocalDate until) {
        List<String> parts = new ArrayList<>();
        parts.add(figures.length(position.free()) + " free");
        position.coming()
                .forEach(each -> parts.add(figures.length(each.length()) + " of " + plain(each.order())
                        + (each.day().isAfter(until) ? " come too late, on " : " come on ") + each.day()));
        parts.add(position.booked().isPositive() ? figures.length(position.booked()) + " booked" : "nothing booked");
        return parts.stream().collect(Collectors.joining(", "));
    }

    /** Why it is ordered now although it is not due, or why no more of it; empty where neither is so. */
    static String pulledIn(Line line) {
        return switch (line.why()) {
            case DUE -> "";
            case WITHIN_BUDGET -> " The least that is paid for it now: the budget allows no more.";
            case SAVES_FREIGHT -> " Not due before " + line.orderBy() + ", but its way costs less with the others.";
            case MINIMUM_ORDER -> " Not due before " + line.orderBy()
                    + ", but the order is then as large as its supplier asks.";
        };
    }
}
