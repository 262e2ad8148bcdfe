package bitterend.packing;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Horizon.Line;
import bitterend.packing.Horizon.Waiting;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Holds back what would be cut ahead while rope is short, so that urgent work that nobody knows of yet finds rope. Of a rope the house has, less what is known and must be cut before more of it is counted on or is pinned to a reel of the house, as
 * what rope is held for is, less what urgent work may come until
 * then, that much may be cut ahead for days after; where that is less than nothing, nothing is cut ahead. First-class work is
 * never held back, nor what must be cut today. What is held back is left out of the question, and counted.
 */
public final class Brake {
    private final PackingProblem all;
    private final Terms terms;
    private final CutDays days;
    private final Urgency urgency;
    private final Map<String, List<Length>> runs = new HashMap<>();
    private final Set<String> pinnedHere;

    /** @param all every piece that is known, however far ahead */
    public Brake(PackingProblem all, Terms terms) {
        this.all = all;
        this.terms = terms;
        days = new CutDays(all);
        urgency = new Urgency(all);
        pinnedHere = all.pins().stream()
                .filter(pin -> !all.isComing(pin.reel()))
                .map(Pin::piece)
                .collect(Collectors.toSet());
    }

    /**
     * What a shop keeps for work it does not know of.
     *
     * @param times how many times the usual urgent work is kept; 0 for no brake at all
     * @param urgentADay first-class work of a working day that was ordered a day before at most, by rope; none for nothing
     * @param offered the day from which rope that is ordered today is counted on, by rope
     */
    public record Terms(int times, Map<String, Length> urgentADay, Map<String, LocalDate> offered) {
        /** Nothing is held back. */
        public static final Terms OFF = new Terms(0, Map.of(), Map.of());

        public Terms {
            urgentADay = Map.copyOf(urgentADay);
            offered = Map.copyOf(offered);
            if (times < 0) {
                throw new IllegalArgumentException("times: " + times);
            }
        }
    }

    /** When more of a rope is counted on, and the order of reels that comes then; empty where none is on order. */
    private record Next(LocalDate day, String order) {}

    /**
     * A question about some of the pieces without what may not be cut ahead.
     *
     * @param atTheBench ids of pieces that stay, since sheets at the bench have them
     */
    public PackingProblem held(PackingProblem near, Set<String> atTheBench) {
        if (terms.times() == 0) {
            return near;
        }
        Set<String> stay = Horizon.whole(near, atTheBench, this::isDue).stream()
                .map(Piece::id)
                .collect(Collectors.toSet());
        Map<String, List<List<Piece>>> byRope = new TreeMap<>();
        near.pieces().stream()
                .filter(piece -> !stay.contains(piece.id()) && fitsInTheHouse(piece))
                .collect(Collectors.groupingBy(Brake::job, TreeMap::new, Collectors.toList()))
                .values()
                .forEach(job -> byRope.computeIfAbsent(job.get(0).orderedRope(), rope -> new ArrayList<>())
                        .add(job));
        List<Waiting> waiting = new ArrayList<>();
        byRope.forEach((rope, jobs) -> {
            Next next = next(rope);
            List<String> ids = heldBack(
                    jobs, next.day(), spare(rope, next.day(), near.horizon().until()));
            if (!ids.isEmpty()) {
                waiting.add(new Waiting(rope, ids, next.day(), next.order()));
            }
        });
        return waiting.isEmpty() ? near : without(near, waiting, Set.of());
    }

    /**
     * A question about some of the pieces without these that wait.
     *
     * @param undone ids of pieces that find no rope though nothing waits
     */
    public static PackingProblem without(PackingProblem near, List<Waiting> waiting, Set<String> undone) {
        Set<String> ids = new HashSet<>();
        waiting.forEach(each -> ids.addAll(each.pieces()));
        Horizon far = near.horizon();
        return near.about(near.pieces().stream()
                        .filter(piece -> !ids.contains(piece.id()))
                        .toList())
                .looking(new Horizon(far.until(), far.later(), far.asked(), told(near, waiting, undone)));
    }

    private static List<Waiting> told(PackingProblem near, List<Waiting> waiting, Set<String> undone) {
        Map<String, Piece> pieces = new HashMap<>();
        near.pieces().forEach(piece -> pieces.put(piece.id(), piece));
        return waiting.stream()
                .map(each -> new Waiting(
                        each.rope(),
                        each.pieces(),
                        each.until(),
                        each.order(),
                        lines(
                                each.pieces().stream()
                                        .map(pieces::get)
                                        .filter(Objects::nonNull)
                                        .toList(),
                                undone)))
                .toList();
    }

    /** The order lines of pieces, in their order. */
    private static List<Line> lines(List<Piece> pieces, Set<String> undone) {
        Map<Piece.Source, List<String>> ids = new LinkedHashMap<>();
        pieces.forEach(piece ->
                ids.computeIfAbsent(piece.source(), any -> new ArrayList<>()).add(piece.id()));
        List<Line> lines = new ArrayList<>();
        ids.forEach((source, all) -> lines.add(new Line(
                source.lineId(),
                source.due(),
                all.size(),
                all.stream().filter(undone::contains).toList())));
        return lines;
    }

    /** First-class, or to be cut today. */
    private boolean isDue(Piece piece) {
        return urgency.classOf(piece) == 1 || days.lastFor(piece).equals(all.day());
    }

    /** The pieces of a set go together. */
    private static String job(Piece piece) {
        return piece.isMatched() ? "set " + piece.matching().set() : "piece " + piece.id();
    }

    private Next next(String rope) {
        return all.reels().stream()
                .filter(reel -> reel.rope().equals(rope) && all.isComing(reel.id()))
                .map(reel -> all.arrivals().get(reel.id()))
                .map(arrival -> new Next(arrival.from(), arrival.order()))
                .min(Comparator.comparing(Next::day).thenComparing(Next::order))
                .orElseGet(() -> new Next(terms.offered().getOrDefault(rope, LocalDate.MAX), ""));
    }

    /** Ids of what is held back of one rope, the earliest day first. */
    private List<String> heldBack(List<List<Piece>> jobs, LocalDate more, Length atFirst) {
        Length spare = atFirst;
        List<String> held = new ArrayList<>();
        for (List<Piece> job : jobs.stream()
                .sorted(Comparator.comparing(this::lastFor)
                        .thenComparing(job -> job.get(0).id()))
                .toList()) {
            boolean before = lastFor(job).isBefore(more);
            Length wanted = job.stream().map(this::sizeOf).reduce(Length.ZERO, Length::plus);
            if (spare.isNegative() || (!before && wanted.isLongerThan(spare))) {
                job.forEach(piece -> held.add(piece.id()));
            } else if (!before) {
                spare = spare.minus(wanted);
            }
        }
        return held;
    }

    private LocalDate lastFor(List<Piece> job) {
        return job.stream().map(days::lastFor).min(LocalDate::compareTo).orElse(all.day());
    }

    private Length sizeOf(Piece piece) {
        return piece.cut().plus(all.rope(piece.orderedRope()).cutting().loss());
    }

    /** The sound runs of a rope that are in the house and not kept for anybody. */
    private List<Length> house(String rope) {
        return runs.computeIfAbsent(rope, any -> all.reels().stream()
                .filter(reel -> reel.rope().equals(rope) && !all.isComing(reel.id()))
                .filter(reel ->
                        reel.custody().notForSale().isEmpty() && !reel.custody().isOnHold())
                .flatMap(reel -> reel.runs().stream())
                .map(Run::length)
                .toList());
    }

    /** What the house cannot give anyhow is no reason to keep rope, and stays in the question to be told of. */
    private boolean fitsInTheHouse(Piece piece) {
        return house(piece.orderedRope()).stream().anyMatch(run -> !piece.cut().isLongerThan(run));
    }

    /** What may be cut ahead of the day on which more comes. */
    private Length spare(String rope, LocalDate more, LocalDate until) {
        Length known = all.pieces().stream()
                .filter(piece -> piece.orderedRope().equals(rope) && !piece.ownRope())
                .filter(piece -> pinnedHere.contains(piece.id())
                        || (days.lastFor(piece).isBefore(more) && fitsInTheHouse(piece)))
                .map(this::sizeOf)
                .reduce(Length.ZERO, Length::plus);
        return house(rope).stream()
                .reduce(Length.ZERO, Length::plus)
                .minus(known)
                .minus(unknown(rope, more.equals(LocalDate.MAX) ? until : more));
    }

    private Length unknown(String rope, LocalDate end) {
        long n = end.equals(LocalDate.MAX) ? 0 : new WorkingDays(all.calendar()).between(all.day(), end);
        return terms.urgentADay().getOrDefault(rope, Length.ZERO).times(Math.multiplyExact(terms.times(), n));
    }
}
