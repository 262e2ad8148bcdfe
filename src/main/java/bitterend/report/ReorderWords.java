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
    private static final String WITHOUT_PAST =
            " Nothing is recorded of its past: with these reels every piece booked has its rope.";
    private static final String NOT_BY_ONE_OFFER =
            " Nothing is recorded of its past, and no one offer was found that holds every piece booked: it is as much as is missing;"
                    + " bitterend buy SHOP works out which pieces can be cut.";

    private final Figures figures;

    ReorderWords(Figures figures) {
        this.figures = figures;
    }

    /**
     * {@code 34.0 m free, 149.0 m of P-88 come on 2026-03-06, 120.0 m booked: 63.0 m left; 3 weeks of this season use
     * 150.0 m as a rule; to have enough it takes 210 m.}
     */
    String why(Line line) {
        Need need = line.need();
        LocalDate shortFrom = need.position().shortFrom();
        String there = there(need.position(), need.until()) + ": " + left(need.position(), need.left()) + ".";
        String soon = line.expected().isAfter(shortFrom) ? " No offer comes before that day." : "";
        return there
                + soon
                + (need.hasPast() ? use(need) : line.holdsWhatIsBooked() ? WITHOUT_PAST : NOT_BY_ONE_OFFER)
                + pulledIn(line);
    }

    private String use(Need need) {
        return " " + FindingsPage.count(need.weeks(), "week") + (need.isOfTheSeason() ? " of this season" : "")
                + " use "
                + figures.total(need.use()) + " as a rule; to have enough it takes "
                + figures.wholeUp(need.enough()) + ".";
    }

    /** Of a rope that nobody offers: what is there and comes, and how much more is booked. */
    String beyond(Position position) {
        return there(position, LocalDate.MAX) + ": " + left(position, position.leftBy(LocalDate.MAX)) + ".";
    }

    private static String plain(String words) {
        return Wording.printable(words);
    }

    private String left(Position position, Length left) {
        String first =
                position.shortFrom().equals(LocalDate.MAX) ? "" : ", wanted from " + position.shortFrom() + " on";
        return (left.isNegative()
                        ? figures.total(Length.ZERO.minus(left)) + " more booked than there is"
                        : figures.total(left) + " left")
                + first;
    }

    /** What is there, comes and is booked. */
    private String there(Position position, LocalDate until) {
        List<String> parts = new ArrayList<>();
        parts.add(figures.total(position.free()) + " free");
        position.coming()
                .forEach(each -> parts.add(figures.total(each.length()) + " of " + plain(each.order())
                        + (each.day().isAfter(until) ? " come too late, on " : " come on ") + each.day()));
        parts.add(position.booked().isPositive() ? figures.total(position.booked()) + " booked" : "nothing booked");
        return parts.stream().collect(Collectors.joining(", "));
    }

    /** Why it is ordered now although it is not due, or why no more of it; empty where neither is so. */
    private static String pulledIn(Line line) {
        return switch (line.why()) {
            case DUE -> "";
            case WITHIN_BUDGET -> " The least that is paid for it now, since its usual order is above the budget.";
            case SAVES_FREIGHT -> " Not due before " + line.orderBy() + ", but its way costs less with the others.";
            case MINIMUM_ORDER -> " Not due before " + line.orderBy()
                    + ", but the order is then as large as its supplier asks.";
        };
    }
}
