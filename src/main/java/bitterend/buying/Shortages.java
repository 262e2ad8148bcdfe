package bitterend.buying;

import bitterend.demand.Piece;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Arrival;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Eligibility;
import bitterend.packing.HeldWords;
import bitterend.packing.PackingProblem;
import bitterend.packing.Reason;
import bitterend.packing.ReelDraw;
import bitterend.packing.Rule;
import bitterend.packing.Unplanned;
import bitterend.stock.Reel;
import bitterend.stock.Run;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;

/** Reads out of a plan of the days ahead where rope is short. */
public final class Shortages {
    /** So many reels that would do are named for each day. */
    private static final int HELP = 4;

    private final PackingProblem problem;
    private final Function<String, String> customers;
    private final CutDays days;
    private final Eligibility rules;
    private final Set<String> undone = new HashSet<>();
    private final Map<String, TreeMap<LocalDate, Length>> taken = new HashMap<>();

    private Shortages(PackingProblem problem, CutPlan plan, Function<String, String> customers) {
        this.problem = problem;
        this.customers = customers;
        days = new CutDays(problem);
        rules = new Eligibility(problem);
        plan.unplanned().stream().map(Unplanned::piece).forEach(undone::add);
        plan.draws().forEach(this::take);
    }

    /** What the pieces of each day take of a reel. */
    private void take(ReelDraw draw) {
        Length loss = problem.ropeOn(problem.reel(draw.reel())).cutting().loss();
        draw.cuts().forEach(cut -> taken.computeIfAbsent(draw.reel(), any -> new TreeMap<>())
                .merge(days.lastFor(cut), cut.length().plus(loss), Length::plus));
    }

    /**
     * Every rope that anything is ordered in, by id.
     *
     * @param plan a plan of the problem
     * @param customers the customer of an order; empty for none
     */
    public static List<Shortage> of(PackingProblem problem, CutPlan plan, Function<String, String> customers) {
        return new Shortages(problem, plan, customers).all();
    }

    private List<Shortage> all() {
        Map<String, Map<LocalDate, List<Piece>>> byRope = new TreeMap<>(NaturalOrder.IDS);
        for (Piece piece : problem.pieces()) {
            byRope.computeIfAbsent(piece.orderedRope(), rope -> new TreeMap<>())
                    .computeIfAbsent(days.lastFor(piece), day -> new ArrayList<>())
                    .add(piece);
        }
        return byRope.entrySet().stream()
                .map(rope -> rope(rope.getKey(), rope.getValue()))
                .toList();
    }

    private Shortage rope(String rope, Map<LocalDate, List<Piece>> byDay) {
        List<Shortage.Day> list = new ArrayList<>();
        LocalDate last = problem.day();
        Length shortUpTo = Length.ZERO;
        for (Map.Entry<LocalDate, List<Piece>> day : byDay.entrySet()) {
            List<Piece> waiting = day.getValue().stream()
                    .filter(piece -> undone.contains(piece.id()))
                    .sorted(Comparator.comparing(Piece::id, NaturalOrder.IDS))
                    .toList();
            shortUpTo = shortUpTo.plus(wanted(waiting));
            last = day.getKey();
            list.add(new Shortage.Day(
                    last,
                    wanted(day.getValue()),
                    room(rope, last, last),
                    waiting.stream()
                            .map(piece -> new Shortage.Undone(piece, customers.apply(piece.order())))
                            .toList(),
                    shortUpTo,
                    help(waiting)));
        }
        return new Shortage(rope, room(rope, last, problem.day()), list);
    }

    private Length wanted(List<Piece> pieces) {
        return pieces.stream()
                .map(piece -> piece.cut()
                        .plus(problem.rope(piece.orderedRope()).cutting().loss()))
                .reduce(Length.ZERO, Length::plus);
    }

    /** What there may be by a day, less what is cut before another. */
    private Shortage.Room room(String rope, LocalDate day, LocalDate cutBefore) {
        Length there = Length.ZERO;
        Length held = Length.ZERO;
        Length onOrder = Length.ZERO;
        for (Reel reel : problem.reels()) {
            if (!reel.rope().equals(rope) || !isUsable(reel)) {
                continue;
            }
            Length sound = left(reel, cutBefore);
            Optional<Arrival> arrival = Optional.ofNullable(problem.arrivals().get(reel.id()));
            if (arrival.isPresent()) {
                onOrder = arrival.get().from().isAfter(day) ? onOrder : onOrder.plus(sound);
            } else if (reel.custody().isReserved()) {
                held = held.plus(sound);
            } else {
                there = there.plus(sound);
                held = held.plus(reel.contents().held());
            }
        }
        return new Shortage.Room(there, held, onOrder);
    }

    private boolean isUsable(Reel reel) {
        return !reel.custody().isOnHold()
                && !reel.custody().isCustomersOwn()
                && !reel.papers().useBy().isBefore(problem.day());
    }

    /** The sound rope of a reel, less what the plan cuts off it before a day. */
    private Length left(Reel reel, LocalDate cutBefore) {
        Length sound = reel.runs().stream().map(Run::length).reduce(Length.ZERO, Length::plus);
        Length cut = taken.getOrDefault(reel.id(), new TreeMap<>()).headMap(cutBefore).values().stream()
                .reduce(Length.ZERO, Length::plus);
        return Length.max(Length.ZERO, sound.minus(cut));
    }

    /** Reels that would take a piece if one thing were settled, each named once. */
    private List<Sentence> help(List<Piece> waiting) {
        return waiting.stream().flatMap(this::help).distinct().limit(HELP).toList();
    }

    private Stream<Sentence> help(Piece piece) {
        Stream<Sentence> barred = problem.reels().stream()
                .filter(reel -> takes(piece, reel))
                .flatMap(reel -> settled(piece, reel).stream());
        List<Reel> open = problem.reels().stream()
                .filter(reel -> rules.allows(piece, reel))
                .toList();
        return Stream.concat(barred, HeldWords.inTheWayOf(piece, open, problem.day()).stream());
    }

    /** The one thing to settle about a reel, in words that are the same for every piece that waits for it. */
    private Optional<Sentence> settled(Piece piece, Reel reel) {
        List<Reason> bars = rules.all(piece, reel);
        Arrival arrival = problem.arrivals().get(reel.id());
        if (bars.size() != 1) {
            return Optional.empty();
        }
        Rule bar = bars.get(0).rule();
        boolean ofTheReel = Rule.toSettle().contains(bar) && bar != Rule.CERTIFICATE;
        if (!ofTheReel && bar != Rule.COMES_IN_TIME) {
            return Optional.empty();
        }
        return Optional.of(
                arrival == null
                        ? bars.get(0).sentence()
                        : Sentence.of("order " + arrival.order() + " is counted on from " + arrival.from()
                                + ", too late for it"));
    }

    private static boolean takes(Piece piece, Reel reel) {
        return piece.lengthOn(reel.rope())
                .filter(cut -> reel.runs().stream().anyMatch(run -> !cut.isLongerThan(run.length())))
                .isPresent();
    }
}
