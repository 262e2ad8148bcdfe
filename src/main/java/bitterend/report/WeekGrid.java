package bitterend.report;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.ReelDraw;
import bitterend.packing.Unplanned;
import bitterend.packing.WorkingDays;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
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
    private final CutDays cutDays;
    private final List<ReelDraw> draws;
    private final List<LocalDate> days = new ArrayList<>();
    private final boolean later;

    WeekGrid(PlanView view) {
        this.view = view;
        cutDays = view.byId().days();
        draws = view.draws();
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
        draws.forEach(draw -> draw.cuts().forEach(cut -> all.add(cutDays.lastFor(cut))));
        undone().forEach(piece -> all.add(cutDays.lastFor(piece)));
        return all.stream().max(Comparator.naturalOrder()).orElseThrow();
    }

    private List<Piece> undone() {
        return view.plan().unplanned().stream()
                .map(Unplanned::piece)
                .map(view.pieces()::get)
                .filter(Objects::nonNull)
                .toList();
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

    /** The reels that are shown, in the order in which they are cut. */
    List<ReelDraw> draws() {
        return draws;
    }

    /** The day on which a reel is cut; today where its sheet is out. */
    LocalDate cutOn(ReelDraw draw) {
        return view.isPromise(draw) ? cutDays.of(draw) : view.plan().day();
    }

    /** Whether a piece could be cut on a later day than it is. */
    boolean isAhead(ReelDraw draw, Cut cut) {
        return cutDays.lastFor(cut).isAfter(cutOn(draw));
    }

    /** How many pieces of a reel must be cut by the day of each column. */
    int[] needed(ReelDraw draw) {
        int[] needed = new int[columns()];
        draw.cuts().forEach(cut -> needed[column(cutDays.lastFor(cut))]++);
        return needed;
    }

    /** What each day asks that is not empty, the last column's days one by one. */
    Map<LocalDate, Load> loads() {
        Map<LocalDate, Load> loads = new TreeMap<>();
        for (ReelDraw draw : draws) {
            int ahead =
                    (int) draw.cuts().stream().filter(cut -> isAhead(draw, cut)).count();
            Load load = new Load(1, draw.cuts().size(), ahead, view.book(draw).drawn(), 0);
            loads.merge(cutOn(draw), load, Load::plus);
        }
        undone().forEach(piece -> loads.merge(cutDays.lastFor(piece), new Load(0, 0, 0, Length.ZERO, 1), Load::plus));
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

    /** The reels on order that are counted on from a day of each column. */
    List<List<String>> coming() {
        List<List<String>> columns = new ArrayList<>();
        for (int i = 0; i < columns(); i++) {
            columns.add(new ArrayList<>());
        }
        view.problem().arrivals().forEach((reel, arrival) -> columns.get(column(arrival.from()))
                .add(reel));
        return columns;
    }
}
