package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.packing.WorkingDays;
import bitterend.packing.bench.Workbench;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A job of the bench, as the rankings look at it.
 *
 * @param number counts the jobs of the bench from zero
 * @param first its first piece in the list of the day
 * @param isSet whether it is a matched set
 * @param urgency the class it is left undone in, from 1
 * @param weight its weight in that class
 * @param cut cut lengths together in mm, on the rope that was ordered
 * @param cutBy the first day by which any of it must be cut
 */
record Job(int number, Piece first, boolean isSet, int urgency, long weight, long cut, LocalDate cutBy) {
    /** Class by class, the longest first. */
    static final Comparator<Job> LONGEST =
            byClass(Comparator.comparingLong(Job::cut).reversed());

    /** Class by class, what must be cut first. */
    static final Comparator<Job> FIRST_DUE = byClass(Comparator.comparing(Job::cutBy)
            .thenComparing(Comparator.comparingLong(Job::cut).reversed()));

    /** Class by class, the shortest first: the most pieces. */
    static final Comparator<Job> SHORTEST = byClass(Comparator.comparingLong(Job::cut));

    /** Class by class, what weighs most first. */
    static final Comparator<Job> HEAVIEST =
            byClass(Comparator.comparingLong(Job::weight).reversed().thenComparingLong(Job::cut));

    /** Class by class, what weighs most by the metre first: where rope is short, the most work. */
    static final Comparator<Job> DENSEST = byClass(Comparator.comparingDouble(Job::lengthOfAWeight));

    /** Class by class, sets behind the single pieces of all classes. */
    static Comparator<Job> setsLast() {
        return Comparator.comparing(Job::isSet).thenComparing(LONGEST);
    }

    static Comparator<Job> byClass(Comparator<Job> within) {
        return Comparator.comparingInt(Job::urgency).thenComparing(within).thenComparing(job -> job.first()
                .id());
    }

    /** The jobs of a bench. */
    static List<Job> of(Workbench bench) {
        return IntStream.range(0, bench.jobs()).mapToObj(job -> of(bench, job)).toList();
    }

    private static Job of(Workbench bench, int job) {
        WorkingDays working = new WorkingDays(bench.problem().calendar());
        int[] pieces = bench.piecesOf(job);
        return new Job(
                job,
                bench.piece(Arrays.stream(pieces).min().orElseThrow()),
                bench.isSet(job),
                bench.urgencyOf(job),
                bench.weightOfJob(job),
                bench.sizeOfJob(job),
                Arrays.stream(pieces)
                        .mapToObj(piece -> working.cutBy(bench.piece(piece)))
                        .min(Comparator.naturalOrder())
                        .orElseThrow());
    }

    private double lengthOfAWeight() {
        return (double) cut / weight;
    }
}
