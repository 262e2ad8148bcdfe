package bitterend.bench;

import bitterend.measure.Length;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Years on one stock: a year of coils first, some years of a policy, two years of coils first again, so that the rack at the
 * end counts for what it truly saves. Every policy sees the same orders; what is printed is the difference to coils first,
 * paired by draw.
 */
@Command(name = "years")
final class Years implements Callable<Integer> {
    private static final int YEAR = 52;
    private static final int PAST = 2 * YEAR;
    private static final int RUN_OUT = 2 * YEAR;
    private static final String REFERENCE = "coils-first";

    @Parameters(index = "0", arity = "0..1", paramLabel = "DRAWS")
    private int draws = 8;

    @Parameters(index = "1", arity = "0..1", paramLabel = "YEARS")
    private int years = 3;

    @Option(names = "--only")
    private String only = "";

    @Option(names = "--short")
    private int shortBy = -1;

    @Option(names = "--lead")
    private int lead = 3;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    /** What a policy came to: money in 1/1000 minor unit, coils when it ended, coils and reels fetched by it, weeks
     * that pieces had to wait for rope. */
    private record Came(double money, int coils, long fetched, long late) {}

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "DRAWS", draws);
        Benchmarks.positive(spec, "YEARS", years);
        out().println(years + " years after one of warm-up, " + draws
                + " draws; per metre used, in % of the price of rope: coils first above the bare price, then the difference"
                + " to it +- standard error; [coils at the end, fetched a year, weeks waited by a hundred pieces]"
                + (shortBy < 0
                        ? ""
                        : "; full reels of a size for " + (lead + 1) + " weeks and one more, less " + shortBy + ", "
                                + lead + " weeks on the way"));
        for (SteadyRope rope : SteadyRope.all()) {
            if (rope.name().contains(only)) {
                row(rope);
            }
        }
        return 0;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    private static Map<String, Function<List<List<Length>>, SteadyPolicy>> policies(SteadyRope rope) {
        Map<String, Function<List<List<Length>>, SteadyPolicy>> policies = new LinkedHashMap<>();
        policies.put(REFERENCE, past -> SteadyPolicy.coilsFirst(rope));
        policies.put("ours", past -> SteadyPolicy.ours(rope, past));
        policies.put("plain-rule", past -> SteadyPolicy.plainRule(rope));
        policies.put("best-fit", past -> SteadyPolicy.bestFit(rope));
        policies.put("older-curve", past -> SteadyPolicy.olderCurve(rope));
        return policies;
    }

    private void row(SteadyRope rope) {
        Map<String, List<Double>> differences = new LinkedHashMap<>();
        Map<String, double[]> sums = new LinkedHashMap<>();
        double above = 0;
        long pieces = 0;
        for (int draw = 0; draw < draws; draw++) {
            List<List<Length>> past = rope.weeks(1_000 + draw, PAST);
            pieces += past.stream().mapToLong(List::size).sum();
            List<List<Length>> weeks = rope.weeks(draw, (1 + years) * YEAR + RUN_OUT);
            double bare = weeks.stream()
                            .skip(YEAR)
                            .flatMap(List::stream)
                            .mapToLong(Length::mm)
                            .sum()
                    / 1000.0
                    * rope.price().millisPerMetre();
            long cut = weeks.subList(YEAR, (1 + years) * YEAR).stream()
                    .mapToLong(List::size)
                    .sum();
            double reference = 0;
            for (var policy : policies(rope).entrySet()) {
                Came came = live(rope, policy.getValue().apply(past), weeks);
                reference = policy.getKey().equals(REFERENCE) ? came.money() : reference;
                differences
                        .computeIfAbsent(policy.getKey(), name -> new ArrayList<>())
                        .add(100 * (came.money() - reference) / bare);
                double[] sum = sums.computeIfAbsent(policy.getKey(), name -> new double[3]);
                sum[0] += came.coils();
                sum[1] += (double) came.fetched() / years;
                sum[2] += 100.0 * came.late() / cut;
            }
            above += 100 * (reference / bare - 1) / draws;
        }
        StringBuilder line = new StringBuilder(
                String.format(Locale.ROOT, "%-11s %4d past pieces, %.2f", rope.name(), pieces / draws, above));
        differences.forEach((name, each) -> {
            double[] sum = sums.getOrDefault(name, new double[3]);
            line.append(String.format(
                    Locale.ROOT,
                    "; %s %s[%.1f, %.0f, %.1f]",
                    name,
                    name.equals(REFERENCE) ? "" : String.format(Locale.ROOT, "%+.2f +- %.2f ", mean(each), error(each)),
                    sum[0] / draws,
                    sum[1] / draws,
                    sum[2] / draws));
        });
        out().println(line);
    }

    private Came live(SteadyRope rope, SteadyPolicy policy, List<List<Length>> weeks) {
        SteadyRack rack = new SteadyRack(rope, shelf(rope));
        SteadyPolicy coilsFirst = SteadyPolicy.coilsFirst(rope);
        List<Length> waiting = new ArrayList<>();
        weeks.subList(0, YEAR).forEach(week -> cut(rack, coilsFirst, week, waiting));
        rack.count(0);
        int end = (1 + years) * YEAR;
        long late = 0;
        for (List<Length> week : weeks.subList(YEAR, end)) {
            cut(rack, policy, week, waiting);
            late += waiting.size();
        }
        int coils = rack.coils().size();
        long fetched = rack.touched();
        weeks.subList(end, weeks.size()).forEach(week -> cut(rack, coilsFirst, week, waiting));
        rack.endless();
        cut(rack, coilsFirst, List.of(), waiting);
        return new Came(rack.spent(), coils, fetched, late);
    }

    /** Reels for the mean use until the next ones come and one more, less what the shelf is short by; at least one. */
    private SteadyRack.Shelf shelf(SteadyRope rope) {
        if (shortBy < 0) {
            return SteadyRack.Shelf.ENDLESS;
        }
        long used = rope.weeks(1_000, PAST).stream()
                .flatMap(List::stream)
                .mapToLong(Length::mm)
                .sum();
        long reel = rope.usual().mm() * PAST;
        int level = (int) -Math.floorDiv(-used * (lead + 1), reel) + 1 - shortBy;
        return new SteadyRack.Shelf(Math.max(1, level), lead);
    }

    /** What waits from the weeks before goes first. */
    private static void cut(SteadyRack rack, SteadyPolicy policy, List<Length> week, List<Length> waiting) {
        List<Length> all = new ArrayList<>(waiting);
        all.addAll(week);
        waiting.clear();
        waiting.addAll(policy.cut(rack, all));
    }

    private static double mean(List<Double> each) {
        return each.stream().mapToDouble(Double::doubleValue).average().orElse(0);
    }

    private static double error(List<Double> each) {
        double mean = mean(each);
        double squares =
                each.stream().mapToDouble(one -> (one - mean) * (one - mean)).sum();
        return each.size() < 2 ? 0 : Math.sqrt(squares / (each.size() - 1) / each.size());
    }
}
