package bitterend.buying.steady;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * Finds, for every size and every size with a stopgap, the points and numbers of reels worth a closer look: all of them on a few
 * futures, the better ones on more, all on the same orders. What is clearly dearer then is kept once, so that it can be shown.
 * The futures of the race are none of the study's.
 */
final class Race {
    private static final int FIRST = 8;
    private static final int ALL = 24;
    private static final int SECOND_ROUND = 8;
    /** Of an option that is clearly dearer, the best and what orders sooner, so that it is not called late for a point too low. */
    private static final int CAUTIOUS = 3;

    private final SteadyStudy study;
    private final Trial trial;
    private final Candidates candidates;

    /** Tries ways on the futures from one number to before another: what each came to, by future; fewer when cancelled. */
    @FunctionalInterface
    interface Trial {
        List<List<Lived>> tried(List<Way> ways, int from, int to);
    }

    Race(SteadyStudy study, Trial trial) {
        this.study = study;
        this.trial = trial;
        candidates = new Candidates(study);
    }

    /** A way and what it came to in each future. */
    private record Runner(Way way, List<Lived> lived) {
        long byMetre() {
            return SteadyVerdict.byMetre(lived);
        }

        long late() {
            return SteadyVerdict.late(lived);
        }
    }

    /** The ways, each option's side by side; empty when cancelled. */
    List<Way> shortlist() {
        List<List<Runner>> options = new ArrayList<>();
        for (SizeOnOffer size : study.sizes()) {
            Optional<List<Runner>> raced = raced(candidates.of(size));
            if (raced.isEmpty()) {
                return List.of();
            }
            options.add(raced.get());
            int reels = raced.get().get(0).way().usual().reels();
            candidates.stopgaps(size).stream()
                    .flatMap(stopgap -> raced(candidates.of(size, reels, stopgap)).stream())
                    .min(Comparator.comparing((List<Runner> option) -> option.get(0), order()))
                    .ifPresent(options::add);
        }
        return pruned(options);
    }

    /** The best of the ways of an option first, then those that order sooner and one that orders later; nothing when cancelled. */
    private Optional<List<Runner>> raced(List<Way> ways) {
        List<Runner> first = run(ways, List.of(), 0, FIRST);
        List<Runner> kept = first.stream().sorted(order()).limit(SECOND_ROUND).toList();
        List<Runner> second = run(kept.stream().map(Runner::way).toList(), kept, FIRST, ALL);
        if (first.isEmpty() || second.isEmpty()) {
            return Optional.empty();
        }
        List<Runner> ranked = second.stream().sorted(order()).toList();
        List<Runner> found = new ArrayList<>(List.of(ranked.get(0)));
        List<Runner> byPoint = ranked.stream()
                .filter(each -> each.way().usual().reels()
                        == ranked.get(0).way().usual().reels())
                .sorted(Comparator.comparing((Runner each) -> each.way().usual().point())
                        .thenComparing(each -> each.way()
                                .rules()
                                .get(each.way().rules().size() - 1)
                                .point()))
                .toList();
        int at = byPoint.indexOf(ranked.get(0));
        for (int near : new int[] {at + 1, at + 2, at - 1}) {
            if (near >= 0 && near < byPoint.size()) {
                found.add(byPoint.get(near));
            }
        }
        return Optional.of(found);
    }

    private List<Runner> run(List<Way> ways, List<Runner> before, int from, int to) {
        List<List<Lived>> futures = trial.tried(ways, from, to);
        if (futures.size() < to - from) {
            return List.of();
        }
        List<Runner> runners = new ArrayList<>();
        for (int way = 0; way < ways.size(); way++) {
            List<Lived> lived = new ArrayList<>(
                    before.isEmpty() ? List.of() : before.get(way).lived());
            for (List<Lived> future : futures) {
                lived.add(future.get(way));
            }
            runners.add(new Runner(ways.get(way), lived));
        }
        return runners;
    }

    /** By cost, one more late piece in a hundred than are allowed counting like a tenth of it. */
    private Comparator<Runner> order() {
        return Comparator.comparingLong(runner -> {
            long beyond = Math.max(0, runner.late() - study.goal().mostLate());
            return runner.byMetre() + runner.byMetre() / 1_000 * beyond;
        });
    }

    private List<Way> pruned(List<List<Runner>> options) {
        Optional<Runner> best = options.stream().map(option -> option.get(0)).min(order());
        List<Way> ways = new ArrayList<>();
        for (List<Runner> option : options) {
            boolean kept = best.isPresent() && !isClearlyDearer(option.get(0), best.get());
            option.stream()
                    .limit(kept ? option.size() : CAUTIOUS)
                    .map(Runner::way)
                    .forEach(ways::add);
        }
        return ways;
    }

    private boolean isClearlyDearer(Runner runner, Runner best) {
        long[] more = LongStream.range(0, ALL)
                .map(future -> SteadyVerdict.byMetre(List.of(runner.lived().get((int) future)))
                        - SteadyVerdict.byMetre(List.of(best.lived().get((int) future))))
                .toArray();
        return IntervalFormula.isClearlyAbove(more);
    }
}
