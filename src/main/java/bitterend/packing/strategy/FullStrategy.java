package bitterend.packing.strategy;

import bitterend.finding.Findings;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.search.Profile;
import bitterend.packing.search.Search;
import bitterend.threads.SideBySide;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Everything we have: each group of ropes gets its greedy starts, its patterns with a bound and its search; groups are
 * packed side by side, the small ones first, and what one leaves of its time goes to those after it.
 */
public final class FullStrategy implements Packer {
    /** With nothing to search on from it a limited work is better spent on bounds: a hundredth of it divides two runs. */
    private static final int DIVIDING_ALONE = 1;

    private final PartPacker.Improver improver;
    private final int dividing;

    FullStrategy(PartPacker.Improver improver) {
        this(improver, Share.ALL);
    }

    private FullStrategy(PartPacker.Improver improver, int dividing) {
        this.improver = improver;
        this.dividing = dividing;
    }

    /** Starts and patterns, without the search over all rules. */
    public static FullStrategy patternsAlone() {
        return new FullStrategy((problem, start, effort, bound) -> start, DIVIDING_ALONE);
    }

    /** Starts, patterns and search at a level of effort. */
    public static FullStrategy at(EffortLevel level) {
        return searching(level.profile());
    }

    /** Starts, patterns and the search that a file describes; every problem of the file is told and there is none. */
    public static Optional<FullStrategy> fromFile(Path solverConfig, Findings findings) {
        return Profile.read(solverConfig, findings).map(FullStrategy::searching);
    }

    private static FullStrategy searching(Profile profile) {
        return new FullStrategy(
                (problem, start, effort, bound) -> Search.improve(problem, start, effort, profile, bound));
    }

    @Override
    public Result pack(PackingProblem problem, Effort effort) {
        List<PackingProblem> parts = RopeGroups.of(problem).stream()
                .sorted(Comparator.comparingInt(part -> part.pieces().size()))
                .toList();
        List<PartPacker.Answer> answers = sideBySide(parts, effort);
        Packing packing = RopeGroups.together(
                answers.stream().map(PartPacker.Answer::packing).toList());
        Cost cost = new PlanPrice(problem).of(packing);
        return new Result(
                packing,
                cost,
                answers.stream()
                        .map(PartPacker.Answer::bound)
                        .sorted(Comparator.comparing(bound -> bound.ropes().get(0)))
                        .toList(),
                answers.stream().flatMap(answer -> answer.unsound().stream()).toList());
    }

    private List<PartPacker.Answer> sideBySide(List<PackingProblem> parts, Effort effort) {
        TimeTable times = new TimeTable(parts, effort, dividing);
        boolean coreToSpare = effort.threads() > parts.size();
        List<Callable<PartPacker.Answer>> tasks = new ArrayList<>();
        for (PackingProblem part : parts) {
            tasks.add(() -> new PartPacker(part, times.shareOf(part), coreToSpare).pack(improver));
        }
        return SideBySide.all(tasks, effort.threads());
    }

    /**
     * Hands out the time that is left in proportion to the pieces that are left, as if every part had some more: a part of
     * three pieces is not proven in the time of three.
     */
    private static final class TimeTable {
        private static final int MORE = 20;

        private final Effort effort;
        private final int dividing;
        private final long deadline;
        private final long allPieces;
        private final AtomicLong toCome;

        TimeTable(List<PackingProblem> parts, Effort effort, int dividing) {
            this.effort = effort;
            this.dividing = dividing;
            deadline = System.nanoTime() + effort.time().toNanos();
            allPieces = Math.max(
                    1, parts.stream().mapToLong(part -> part.pieces().size()).sum());
            toCome = new AtomicLong(parts.stream().mapToLong(TimeTable::weight).sum());
        }

        private static long weight(PackingProblem part) {
            return (long) part.pieces().size() + MORE;
        }

        Share shareOf(PackingProblem part) {
            long pieces = part.pieces().size();
            long waiting = toCome.getAndAdd(-weight(part));
            long left = Math.max(0, deadline - System.nanoTime());
            long atOnce = Math.min(waiting, weight(part) * Math.max(1, effort.threads()));
            long work = effort.work() == Long.MAX_VALUE ? Long.MAX_VALUE : effort.work() / allPieces * pieces;
            return new Share(effort, Duration.ofNanos(left).multipliedBy(atOnce).dividedBy(waiting), work, dividing);
        }
    }
}
