package bitterend.packing.strategy;

import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.patterns.Effort.Depth;
import bitterend.packing.patterns.Progress;
import java.time.Duration;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/**
 * One part's share of the effort of a day. Patterns may take up to three fifths of it where they see all that is
 * paid for, else a third, packing around the sets a tenth, and what they leave is shared by three searches.
 */
final class Share {
    private static final long PATTERN_STEPS_PER_UNIT = 100;
    private static final int SEARCHES = 3;
    /** Of the work, in per cent. */
    static final int ALL = 100;

    private static final long DIVIDING_PER_PIECE = 5_000;
    private static final long TIMES_BESIDE = 3;
    private static final long MOST_PIECES_ON_RUNS = 200_000;
    private static final long LEAST_NANOS = 20_000_000;

    private final Effort effort;
    private final long deadline;
    private final long work;
    private final int dividing;

    /**
     * @param effort of the whole day
     * @param time of this part
     * @param work of this part, in score calculations of the search; a hundred steps of the pattern engine make one
     */
    Share(Effort effort, Duration time, long work) {
        this(effort, time, work, ALL);
    }

    /** @param dividing per cent of the work that dividing the pieces of two runs may take */
    Share(Effort effort, Duration time, long work, int dividing) {
        this.effort = effort;
        this.dividing = dividing;
        deadline = System.nanoTime() + time.toNanos();
        this.work = work;
    }

    /** @param isAllTheySee whether nothing is paid for that patterns do not see */
    bitterend.packing.patterns.Effort forPatterns(boolean isAllTheySee, Consumer<Progress> listener) {
        return patterns(isAllTheySee ? 60 : 35, Depth.FULL).withListener(listener);
    }

    /** A short look, before single reels are bounded. */
    bitterend.packing.patterns.Effort forPatternsFirst(Consumer<Progress> listener) {
        return patterns(12, Depth.FULL).withListener(listener);
    }

    /** For bounds by single reels. */
    Effort forLoads() {
        return new Effort(part(78), work, effort.seed(), 1, effort.cancelled(), progress -> {});
    }

    long seed() {
        return effort.seed();
    }

    /** A fifth of the time that is left, for the work left undone; each turn has a seed of its own. */
    Effort forUndone(int turn) {
        return new Effort(part(20), work, effort.seed() + turn, 1, effort.cancelled(), progress -> {});
    }

    /** To divide the pieces of two runs anew again and again: a tenth of the time that is left, later a third. */
    Effort forDividing(int turn, int pieces) {
        long divisions = Math.min(forDividing(work), DIVIDING_PER_PIECE * pieces);
        return new Effort(
                part(turn == 0 ? 10 : 33), divisions, effort.seed() + turn, 1, effort.cancelled(), progress -> {});
    }

    /** The same in front of a search beside all else: a third of its time. */
    Effort forDividing(PackingProblem problem, Effort search) {
        long divisions = Math.min(
                forDividing(search.work()),
                TIMES_BESIDE * DIVIDING_PER_PIECE * problem.pieces().size());
        return new Effort(search.time().dividedBy(3), divisions, ~search.seed(), 1, search.cancelled(), progress -> {});
    }

    private long forDividing(long work) {
        return work == Long.MAX_VALUE ? work : Math.max(1, work / ALL * dividing);
    }

    bitterend.packing.patterns.Effort aroundSets() {
        return patterns(15, Depth.FULL);
    }

    /**
     * For one of three searches.
     *
     * @param search 0 to 2; each has a seed of its own, and a third of the work
     * @param percent of the time that is left
     */
    Effort forSearch(int search, int percent) {
        long third = work == Long.MAX_VALUE ? work : Math.max(1, work / SEARCHES);
        return new Effort(part(percent), third, effort.seed() + search, 1, effort.cancelled(), effort.progress());
    }

    /** For a search beside all else that says nothing and can be called off. */
    Effort besides(int search, int percent, BooleanSupplier calledOff) {
        Effort alone = forSearch(search, percent);
        BooleanSupplier either =
                () -> calledOff.getAsBoolean() || effort.cancelled().getAsBoolean();
        return new Effort(alone.time(), alone.work(), alone.seed(), 1, either, progress -> {});
    }

    void tell(PackingProblem part, Cost cost, Cost bound, int unplanned) {
        effort.progress()
                .accept(new Effort.Progress(String.join(", ", part.ropes().keySet()), cost, bound, unplanned));
    }

    private bitterend.packing.patterns.Effort patterns(int percent, Depth depth) {
        long steps = work == Long.MAX_VALUE
                ? Long.MAX_VALUE
                : Math.multiplyExact(Math.min(work, Long.MAX_VALUE / 1000), PATTERN_STEPS_PER_UNIT);
        return new bitterend.packing.patterns.Effort(
                steps, part(percent), effort.cancelled(), progress -> {}, effort.seed(), depth);
    }

    /** Partial ways to cut a few pieces, a hundred for a unit of work; no more than so many. */
    long ways(long most) {
        return work == Long.MAX_VALUE ? most : Math.min(most, Math.min(work, most) * PATTERN_STEPS_PER_UNIT);
    }

    /** Whether so much of the time that is left by now is over. */
    BooleanSupplier over(int percent) {
        long end = System.nanoTime() + part(percent).toNanos();
        return () -> System.nanoTime() > end || effort.cancelled().getAsBoolean();
    }

    /**
     * Whether the quick starts have had their time; without a search and by work alone those that look at every piece on every
     * run again and again are left out where that is much.
     */
    BooleanSupplier overForStarts(long piecesOnRuns) {
        boolean tooMany = dividing < ALL && work < Long.MAX_VALUE && piecesOnRuns > MOST_PIECES_ON_RUNS;
        return tooMany ? () -> true : over(15);
    }

    /** Whether so little time is left that nothing more is worth beginning. */
    boolean isSpent() {
        return deadline - System.nanoTime() < LEAST_NANOS;
    }

    private Duration part(int percent) {
        return Duration.ofNanos(Math.max(0, deadline - System.nanoTime()))
                .multipliedBy(percent)
                .dividedBy(100);
    }
}
