package bitterend.bench;

import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.search.Profile;
import bitterend.packing.search.Search;
import bitterend.packing.strategy.FullStrategy;
import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What each way of packing costs on generated real days: the sub-command {@code days} of {@code .ci/bench}. Every way gets
 * the same processor time, so that a busy machine changes nothing.
 */
public final class Days {
    private static final OperatingSystemMXBean CLOCK = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);

    private final long cpuNanos;

    private Days(double seconds) {
        cpuNanos = Math.round(seconds * 1e9);
    }

    /** A plan by what is left undone and what it costs. */
    private record Plan(long weight, long millis) {
        boolean isBetterThan(Plan other) {
            return weight < other.weight || (weight == other.weight && millis < other.millis);
        }
    }

    /** The plans of one day: first fit, best fit, greedy start, search, patterns, search from the patterns' plan. */
    private record Day(List<Plan> plans) {
        Plan bestFit() {
            return plans.get(1);
        }
    }

    /** Days of each size, seconds for each way on each day, then the numbers of pieces. */
    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        Days bench = new Days(args.length > 1 ? Double.parseDouble(args[1]) : 3);
        List<Integer> sizes = new ArrayList<>();
        for (int a = 2; a < args.length; a++) {
            sizes.add(Integer.valueOf(args[a]));
        }
        System.out.println(
                "pieces\tdays\tway\tmean_cost\tbetter_than_best_fit\tmedian_saving\tmax_saving\tplans_more\tplans_less");
        for (int pieces : sizes.isEmpty() ? List.of(30, 100, 300, 1000) : sizes) {
            List<Day> days = new ArrayList<>();
            for (long seed = 0; seed < count; seed++) {
                days.add(bench.day(seed, pieces));
            }
            print(pieces, days);
        }
    }

    private Day day(long seed, int pieces) {
        PackingProblem problem = RealDay.of(seed, pieces);
        PlanPrice price = new PlanPrice(problem);
        GreedyPacker greedy = new GreedyPacker(problem);
        Packing start = greedy.best();
        Packing patterns =
                FullStrategy.patternsAlone().pack(problem, effort(seed)).packing();
        List<Packing> all = List.of(
                greedy.firstFit(),
                greedy.bestFit(),
                start,
                Search.improve(problem, start, effort(seed), Profile.thorough(), Cost.ZERO),
                patterns,
                Search.improve(problem, patterns, effort(seed), Profile.thorough(), Cost.ZERO));
        return new Day(all.stream()
                .map(packing -> new Plan(
                        price.unplannedWeight(packing), price.of(packing).millis()))
                .toList());
    }

    /** Ends by the processor time of the program, whichever of its threads does the work. */
    private Effort effort(long seed) {
        long from = CLOCK.getProcessCpuTime();
        return new Effort(
                Duration.ofMillis(cpuNanos / 1_000_000 * 20),
                Long.MAX_VALUE,
                seed,
                1,
                () -> CLOCK.getProcessCpuTime() - from > cpuNanos,
                progress -> {});
    }

    private static void print(int pieces, List<Day> days) {
        List<String> ways = List.of("first fit", "best fit", "greedy start", "search", "patterns", "patterns+search");
        for (int way = 0; way < ways.size(); way++) {
            List<Double> savings = new ArrayList<>();
            long better = 0;
            long more = 0;
            long less = 0;
            double sum = 0;
            for (Day day : days) {
                Plan plan = day.plans().get(way);
                Plan fit = day.bestFit();
                better += plan.isBetterThan(fit) ? 1 : 0;
                more += plan.weight() < fit.weight() ? 1 : 0;
                less += plan.weight() > fit.weight() ? 1 : 0;
                sum += plan.millis() / 100_000.0;
                if (plan.weight() == fit.weight()) {
                    savings.add(100.0 * (fit.millis() - plan.millis()) / fit.millis());
                }
            }
            savings.sort(null);
            System.out.printf(
                    Locale.ROOT,
                    "%d\t%d\t%s\t%.2f\t%.0f %%\t%.2f %%\t%.2f %%\t%d\t%d%n",
                    pieces,
                    days.size(),
                    ways.get(way),
                    sum / days.size(),
                    100.0 * better / days.size(),
                    savings.isEmpty() ? 0 : savings.get(savings.size() / 2),
                    savings.isEmpty() ? 0 : savings.get(savings.size() - 1),
                    more,
                    less);
        }
    }
}
