package bitterend.work.plans;

import bitterend.finding.Findings;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.AheadPlanner;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.EffortLevel;
import bitterend.packing.strategy.FullStrategy;
import bitterend.threads.SideBySide;
import bitterend.work.Watcher;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How a plan is looked for.
 *
 * @param packer the engines
 * @param level how hard they try
 * @param time no longer than this
 * @param seed of every random choice
 * @param threads so many at most
 * @param begun {@link System#nanoTime} when somebody began to wait
 */
public record PlanSearch(Packer packer, EffortLevel level, Duration time, long seed, int threads, long begun) {
    /** A plan gets so long, however late it is. */
    private static final long LEAST_NANOS = 20_000_000;

    /** With the usual engines, on all cores. */
    public static PlanSearch of(EffortLevel level, Duration time, long seed) {
        return new PlanSearch(FullStrategy.at(level), level, time, seed, SideBySide.cores(), System.nanoTime());
    }

    /** With the search that a file describes, on all cores, where one is given; nothing when it has errors, which are told. */
    public static Optional<PlanSearch> of(
            EffortLevel level, Duration time, long seed, @Nullable Path solverConfig, Findings findings) {
        return solverConfig == null
                ? Optional.of(of(level, time, seed))
                : FullStrategy.fromFile(solverConfig, findings)
                        .map(packer ->
                                new PlanSearch(packer, level, time, seed, SideBySide.cores(), System.nanoTime()));
    }

    /** The same for somebody who began to wait then. */
    public PlanSearch since(long moment) {
        return new PlanSearch(packer, level, time, seed, threads, moment);
    }

    /** The same on so many threads. */
    public PlanSearch on(int most) {
        return new PlanSearch(packer, level, time, seed, most, begun);
    }

    /** The same in half of the time, for one of two plans. */
    PlanSearch halved() {
        return new PlanSearch(packer, level, time.dividedBy(2), seed, threads, begun);
    }

    /** The plan of a day: what is planned more than once for it keeps to the time all the same. */
    AheadPlanner.Planned ahead(DayQuestion question, Watcher watcher) {
        DayPlanner planner = new DayPlanner(packer);
        long end = System.nanoTime() + left().toNanos();
        return new AheadPlanner((problem, quarters) -> {
                    long nanos = (end - System.nanoTime()) / AheadPlanner.QUARTERS * quarters;
                    return planner.checked(
                            problem, effort(problem, watcher, Duration.ofNanos(Math.max(LEAST_NANOS, nanos))));
                })
                .plan(question.problem(), question.held(), question.atTheBench());
    }

    /** A further plan in what is left of the time. */
    CutPlan inWhatIsLeft(PackingProblem problem, Watcher watcher) {
        long nanos = time.toNanos() - (System.nanoTime() - begun);
        return new DayPlanner(packer)
                .plan(problem, effort(problem, watcher, Duration.ofNanos(Math.max(LEAST_NANOS, nanos))));
    }

    /** The level in a word. */
    String word() {
        return level.name().toLowerCase(Locale.ROOT);
    }

    /** The effort for a problem. */
    Effort effort(PackingProblem problem, Watcher watcher) {
        return effort(problem, watcher, left());
    }

    private Effort effort(PackingProblem problem, Watcher watcher, Duration limit) {
        return new Effort(limit, level.work(problem), seed, threads, watcher.stop(), watcher.progress());
    }

    /**
     * What of the time is left to pack in. What reading the shop took is taken off twice, since checking and writing the plan take
     * about as long again, up to half of the time.
     */
    private Duration left() {
        Duration half = time.dividedBy(2);
        Duration left = time.minusNanos(2 * (System.nanoTime() - begun));
        return left.compareTo(half) < 0 ? half : left;
    }
}
