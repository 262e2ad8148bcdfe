package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is planned whole or not at all: a matched set, or a piece by itself.
 *
 * @param pieces its pieces
 * @param urgency the class it is left undone in, from 1
 * @param undone what leaving it undone adds to the work left undone
 * @param cut cut lengths together, on the rope that was ordered
 * @param due the first day any of it is due
 */
record Job(List<Piece> pieces, int urgency, Undone undone, Length cut, LocalDate due) {
    /** Class by class, the longest first. */
    static final Comparator<Job> LONGEST =
            byClass(Comparator.comparing(Job::cut).reversed());

    /** Class by class, the first due first. */
    static final Comparator<Job> FIRST_DUE = byClass(Comparator.comparing(Job::due)
            .thenComparing(Comparator.comparing(Job::cut).reversed()));

    /** Class by class, the shortest first: the most pieces. */
    static final Comparator<Job> SHORTEST = byClass(Comparator.comparing(Job::cut));

    /** Class by class, what weighs most first. */
    static final Comparator<Job> HEAVIEST =
            byClass(Comparator.comparing(Job::undone).reversed().thenComparing(Job::cut));

    /** Class by class, what weighs most by the metre first: where rope is short, the most work. */
    static final Comparator<Job> DENSEST = byClass(Comparator.comparingDouble(Job::lengthOfAWeight));

    Job {
        pieces = List.copyOf(pieces);
    }

    /** Class by class, sets behind the single pieces of all classes. */
    static Comparator<Job> setsLast() {
        return Comparator.comparing(Job::isSet).thenComparing(LONGEST);
    }

    static Comparator<Job> byClass(Comparator<Job> within) {
        return Comparator.comparingInt(Job::urgency).thenComparing(within).thenComparing(Job::id);
    }

    /** The jobs that some pieces make. */
    static List<Job> of(List<Piece> pieces, Urgency urgency) {
        Map<String, List<Piece>> jobs = new LinkedHashMap<>();
        for (Piece piece : pieces) {
            String name = piece.isMatched() ? "set " + piece.matching().set() : "piece " + piece.id();
            jobs.computeIfAbsent(name, job -> new ArrayList<>()).add(piece);
        }
        return jobs.values().stream().map(job -> of(urgency, job)).toList();
    }

    private static Job of(Urgency urgency, List<Piece> pieces) {
        return new Job(
                pieces,
                urgency.classOf(pieces.get(0)),
                pieces.stream().map(urgency::of).reduce(Undone.NONE, Undone::plus),
                pieces.stream().map(Piece::cut).reduce(Length.ZERO, Length::plus),
                pieces.stream()
                        .map(piece -> piece.source().due())
                        .min(Comparator.naturalOrder())
                        .orElseThrow());
    }

    boolean isSet() {
        return pieces.get(0).isMatched();
    }

    private double lengthOfAWeight() {
        return (double) cut.mm() / undone.in(urgency);
    }

    Piece first() {
        return pieces.get(0);
    }

    private String id() {
        return first().id();
    }
}
