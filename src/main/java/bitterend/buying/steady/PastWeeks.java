package bitterend.buying.steady;

import bitterend.history.History;
import bitterend.history.PastOrder;
import bitterend.measure.Length;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * What was cut of one rope in the past: week by week without a gap, order by order.
 *
 * @param monday of the first week
 * @param weeks of each week its orders, of each order its cut lengths; at least one week
 */
public record PastWeeks(LocalDate monday, List<List<List<Length>>> weeks) {
    /** A year has so many; its last days belong to the last of them. */
    public static final int PLACES = 52;

    private static final int DAYS_OF_A_WEEK = 7;

    public PastWeeks {
        weeks = weeks.stream()
                .map(week -> week.stream().map(List::copyOf).toList())
                .toList();
        if (weeks.isEmpty()) {
            throw new IllegalArgumentException("no week");
        }
    }

    /** The past of a rope in a history that is not empty. A customer's own rope is not ours to buy. */
    public static PastWeeks of(History history, String rope) {
        LocalDate first = history.weeks().get(0).orders().get(0).day();
        return new PastWeeks(
                first.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)),
                history.weeks().stream()
                        .map(week -> week.orders().stream()
                                .map(order -> cuts(order, rope))
                                .filter(cuts -> !cuts.isEmpty())
                                .toList())
                        .toList());
    }

    private static List<Length> cuts(PastOrder order, String rope) {
        return order.pieces().stream()
                .filter(piece -> piece.orderedRope().equals(rope) && !piece.ownRope())
                .map(piece -> piece.cut())
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** The same with other lengths in its orders. */
    PastWeeks with(UnaryOperator<List<Length>> change) {
        return new PastWeeks(
                monday,
                weeks.stream()
                        .map(week -> week.stream()
                                .map(change)
                                .filter(cuts -> !cuts.isEmpty())
                                .toList())
                        .toList());
    }

    /** How many weeks there are. */
    public int count() {
        return weeks.size();
    }

    /** The cut lengths of each week. */
    public List<List<Length>> cuts() {
        return weeks.stream()
                .map(week -> week.stream().flatMap(List::stream).toList())
                .toList();
    }

    /** The place of a day in its year, from 0 to 51. */
    public static int placeOf(LocalDate day) {
        return Math.min(PLACES - 1, (day.getDayOfYear() - 1) / DAYS_OF_A_WEEK);
    }

    /** The place of a week in its year: that of its Thursday. */
    int placeOf(int week) {
        return placeOf(monday.plusWeeks(week).plusDays(3));
    }

    /** Millimetres cut in each week, the loss of every cut in them. */
    long[] sums(Length loss) {
        return weeks.stream()
                .mapToLong(week -> week.stream()
                        .flatMap(List::stream)
                        .mapToLong(cut -> cut.plus(loss).mm())
                        .reduce(0, Math::addExact))
                .toArray();
    }
}
