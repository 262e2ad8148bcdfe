package bitterend.packing.explain;

import bitterend.demand.Piece;
import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.packing.Unplanned;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.Predicate;

/** On which of the days ahead a plan cuts each reel, and what it leaves undone on which. */
public final class CutWeek {
    private final LocalDate today;
    private final CutDays days;
    private final Predicate<ReelDraw> promised;
    private final List<ReelDraw> draws;
    private final List<Piece> undone;

    private CutWeek(PackingProblem problem, List<ReelDraw> draws, List<Piece> undone, Predicate<ReelDraw> promised) {
        today = problem.day();
        days = new CutDays(problem);
        this.promised = promised;
        this.draws = List.copyOf(draws);
        this.undone = List.copyOf(undone);
    }

    /**
     * Of a plan.
     *
     * @param draws its reels, in any order that is kept
     * @param unplanned what it leaves undone
     * @param promised which of them need not be cut today, and have no sheet that is out
     */
    public static CutWeek of(
            PackingProblem problem,
            List<ReelDraw> draws,
            Collection<Unplanned> unplanned,
            Predicate<ReelDraw> promised) {
        Map<String, Piece> pieces = new HashMap<>();
        problem.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        List<Piece> undone = unplanned.stream()
                .map(Unplanned::piece)
                .map(pieces::get)
                .filter(Objects::nonNull)
                .toList();
        return new CutWeek(problem, draws, undone, promised);
    }

    /**
     * One day on which something is cut, or ought to be.
     *
     * @param draws the reels that are cut
     * @param undone pieces that ought to be cut by then and are on no reel
     */
    public record Day(List<ReelDraw> draws, List<Piece> undone) {
        public Day {
            draws = List.copyOf(draws);
            undone = List.copyOf(undone);
        }

        /** How many pieces are cut. */
        public int pieces() {
            return draws.stream().mapToInt(draw -> draw.cuts().size()).sum();
        }
    }

    /** The reels, in the order in which they were given. */
    public List<ReelDraw> draws() {
        return draws;
    }

    /** What is on no reel. */
    public List<Piece> undone() {
        return undone;
    }

    /** Whether a reel is a promise: it need not be cut today, and its sheet is not out. */
    public boolean isPromise(ReelDraw draw) {
        return promised.test(draw);
    }

    /** The day on which a reel is cut; today where its sheet is out. */
    public LocalDate cutOn(ReelDraw draw) {
        return isPromise(draw) ? days.of(draw) : today;
    }

    /** The last day on which a piece may be cut. */
    public LocalDate lastFor(Cut cut) {
        return days.lastFor(cut);
    }

    /** The same of a piece on no reel. */
    public LocalDate lastFor(Piece piece) {
        return days.lastFor(piece);
    }

    /** Whether a piece could be cut on a later day than it is. */
    public boolean isAhead(ReelDraw draw, Cut cut) {
        return lastFor(cut).isAfter(cutOn(draw));
    }

    /** How many pieces of a reel could be cut later. */
    public int ahead(ReelDraw draw) {
        return (int) draw.cuts().stream().filter(cut -> isAhead(draw, cut)).count();
    }

    /** The days on which there is anything, in order. */
    public Map<LocalDate, Day> days() {
        Map<LocalDate, List<ReelDraw>> cut = new TreeMap<>();
        Map<LocalDate, List<Piece>> left = new TreeMap<>();
        draws.forEach(draw ->
                cut.computeIfAbsent(cutOn(draw), any -> new ArrayList<>()).add(draw));
        undone.forEach(piece ->
                left.computeIfAbsent(lastFor(piece), any -> new ArrayList<>()).add(piece));
        Map<LocalDate, Day> days = new TreeMap<>();
        cut.forEach((day, reels) -> days.put(day, new Day(reels, left.getOrDefault(day, List.of()))));
        left.forEach((day, pieces) -> days.putIfAbsent(day, new Day(List.of(), pieces)));
        return days;
    }
}
