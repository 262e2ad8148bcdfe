package bitterend.history;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The past, cut into weeks without a gap from the first order to the last.
 *
 * @param weeks by date; empty when nothing is recorded
 */
public record History(List<Week> weeks) {
    public static final History NONE = new History(List.of());

    public History {
        weeks = List.copyOf(weeks);
    }

    /** The weeks of these orders, in any order of the list. */
    public static History of(List<PastOrder> orders) {
        TreeMap<LocalDate, List<PastOrder>> byMonday = new TreeMap<>();
        for (PastOrder order : orders) {
            byMonday.computeIfAbsent(mondayOf(order.day()), monday -> new ArrayList<>())
                    .add(order);
        }
        List<Week> weeks = new ArrayList<>();
        if (byMonday.isEmpty()) {
            return NONE;
        }
        for (LocalDate monday = byMonday.firstKey();
                !monday.isAfter(byMonday.lastKey());
                monday = monday.plusWeeks(1)) {
            List<PastOrder> placed = new ArrayList<>(byMonday.getOrDefault(monday, List.of()));
            placed.sort(Comparator.comparing(PastOrder::order));
            weeks.add(new Week(monday, placed));
        }
        return new History(weeks);
    }

    /** The ids of the ropes that were ordered. */
    public Set<String> ropes() {
        Set<String> ropes = new TreeSet<>();
        weeks.forEach(week -> week.pieces().forEach(piece -> ropes.add(piece.orderedRope())));
        return ropes;
    }

    /** The cut lengths ordered in one rope, for each week the longest first. A customer's own rope is not ours to buy. */
    public List<List<Length>> cutsOf(String rope) {
        return weeks.stream()
                .map(week -> week.pieces().stream()
                        .filter(piece -> piece.orderedRope().equals(rope) && !piece.ownRope())
                        .map(Piece::cut)
                        .sorted(Comparator.reverseOrder())
                        .toList())
                .toList();
    }

    /** Every piece of each week. */
    public List<List<Piece>> piecesByWeek() {
        return weeks.stream().map(Week::pieces).toList();
    }

    private static LocalDate mondayOf(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
