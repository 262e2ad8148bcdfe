package bitterend.report;

import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.packing.WorkingDays;
import bitterend.packing.explain.CutWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The days ahead as columns, and what of a plan belongs in each: working days one after another from the day of the plan;
 * what lies behind the last of them shares one column.
 */
final class WeekGrid {
    /** So many days have a column of their own. */
    private static final int MOST_DAYS = 7;

    /** A week has at least so many. */
    private static final int LEAST_DAYS = 5;

    private final PlanView view;
    private final CutWeek week;
    private final List<LocalDate> days = new ArrayList<>();
    private final boolean later;

    WeekGrid(PlanView view) {
        this.view = view;
        week = view.week();
        LocalDate last = last();
        WorkingDays working = new WorkingDays(view.problem().calendar());
        LocalDate day = view.plan().day();
        while (days.size() < MOST_DAYS && (days.size() < LEAST_DAYS || !day.isAfter(last))) {
            days.add(day);
            day = working.after(day, 1);
        }
        later = last.isAfter(days.get(days.size() - 1));
    }

    /** The last day on which something is or ought to be cut, or comes in. */
    private LocalDate last() {
        List<LocalDate> all = new ArrayList<>(List.of(view.plan().day()));
        draws().forEach(draw -> draw.cuts().forEach(cut -> all.add(week.lastFor(cut))));
        week.undone().forEach(piece -> all.add(week.lastFor(piece)));
        view.problem().arrivals().values().forEach(arrival -> all.add(arrival.from()));
        return all.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    /**
     * What one column asks of the bench.
     *
     * @param reels reels that are cut
     * @param pieces pieces that are cut
     * @param ahead how many of these could be cut later
     * @param drawn rope that is drawn
     * @param undone pieces that ought to be cut by then and are on no reel
     */
    record Load(int reels, int pieces, int ahead, Length drawn, int undone) {
        static final Load NONE = new Load(0, 0, 0, Length.ZERO, 0);

        Load plus(Load other) {
            return new Load(
                    reels + other.reels,
                    pieces + other.pieces,
                    ahead + other.ahead,
                    drawn.plus(other.drawn),
                    undone + other.undone);
        }
    }

    /** The days with a column of their own. */
    List<LocalDate> days() {
        return List.copyOf(days);
    }

    /** Whether there is a column for what lies behind them. */
    boolean hasLater() {
        return later;
    }

    int columns() {
        return days.size() + (later ? 1 : 0);
    }

    /** The column of a day. */
    int column(LocalDate day) {
        for (int i = 0; i < days.size(); i++) {
            if (!day.isAfter(days.get(i))) {
                return i;
            }
        }
        return columns() - 1;
    }

    /** The days on which a reel that is in the house is cut: they have sheets. */
    List<LocalDate> withSheets() {
        return week.days().entrySet().stream()
                .filter(day -> day.getValue().draws().stream()
                        .anyMatch(draw -> !view.problem().isComing(draw.reel())))
                .map(Map.Entry::getKey)
                .toList();
    }

    /** The reels that are shown, in the order in which they are cut. */
    List<ReelDraw> draws() {
        return week.draws();
    }

    /** The day on which a reel is cut; today where its sheet is out. */
    LocalDate cutOn(ReelDraw draw) {
        return week.cutOn(draw);
    }

    /** Whether a piece could be cut on a later day than it is. */
    boolean isAhead(ReelDraw draw, Cut cut) {
        return week.isAhead(draw, cut);
    }

    /** How many of its pieces could. */
    int ahead(ReelDraw draw) {
        return week.ahead(draw);
    }

    /** How many pieces of a reel must be cut by the day of each column. */
    int[] needed(ReelDraw draw) {
        int[] needed = new int[columns()];
        draw.cuts().forEach(cut -> needed[column(week.lastFor(cut))]++);
        return needed;
    }

    /** What each day asks that is not empty, the last column's days one by one. */
    Map<LocalDate, Load> loads() {
        Map<LocalDate, Load> loads = new TreeMap<>();
        week.days().forEach((day, cut) -> {
            int ahead = cut.draws().stream().mapToInt(week::ahead).sum();
            Length drawn =
                    cut.draws().stream().map(draw -> view.book(draw).drawn()).reduce(Length.ZERO, Length::plus);
            loads.put(
                    day,
                    new Load(
                            cut.draws().size(),
                            cut.pieces(),
                            ahead,
                            drawn,
                            cut.undone().size()));
        });
        return loads;
    }

    /** The same by column. */
    List<Load> byColumn() {
        List<Load> columns = new ArrayList<>();
        for (int i = 0; i < columns(); i++) {
            columns.add(Load.NONE);
        }
        loads().forEach((day, load) ->
                columns.set(column(day), columns.get(column(day)).plus(load)));
        return columns;
    }

    /** The reels on order that are expected on a day of each column; today, where that day is past. */
    List<List<String>> coming() {
        List<List<String>> columns = new ArrayList<>();
        for (int i = 0; i < columns(); i++) {
            columns.add(new ArrayList<>());
        }
        view.problem().arrivals().forEach((reel, arrival) -> columns.get(
                        column(arrival.earliest(view.problem().day())))
                .add(reel));
        return columns;
    }
}
