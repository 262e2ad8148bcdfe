package bitterend.bench;

import bitterend.packing.patterns.Effort;
import bitterend.packing.patterns.PatternPacker;
import bitterend.packing.patterns.PatternPlan;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Published packing problems, solved and timed: the sub-commands {@code one} and {@code sizes} of {@code .ci/bench}. */
public final class PackingBench {
    private final Duration limit;
    private final boolean each;

    private PackingBench(Duration limit, boolean each) {
        this.limit = limit;
        this.each = each;
    }

    /** Arguments: {@code [--time seconds] [--each] FILE...}. */
    public static void main(String[] args) throws IOException {
        Duration limit = Duration.ofSeconds(10);
        boolean each = false;
        String only = "";
        List<Path> files = new ArrayList<>();
        for (int a = 0; a < args.length; a++) {
            switch (args[a]) {
                case "--time" -> limit = Duration.ofMillis(Math.round(1000 * Double.parseDouble(args[++a])));
                case "--only" -> only = args[++a];
                case "--each" -> each = true;
                default -> files.add(Path.of(args[a]));
            }
        }
        System.out.println("set\tinstances\tproven\tbest\tmedian_s\tp95_s\tmax_s\tworst_gap");
        for (Path file : files) {
            new PackingBench(limit, each).run(file, only);
        }
    }

    private void run(Path file, String only) throws IOException {
        List<Instance> instances = new ArrayList<>(Instance.read(file));
        instances.removeIf(instance -> !instance.name().contains(only));
        double[] seconds = new double[instances.size()];
        int proven = 0;
        int best = 0;
        double worst = 0;
        for (int i = 0; i < seconds.length; i++) {
            Instance instance = instances.get(i);
            long start = System.nanoTime();
            PatternPlan plan = PatternPacker.pack(instance.problem(), Effort.ofTime(limit));
            seconds[i] = (System.nanoTime() - start) / 1e9;
            proven += plan.complete() && plan.proven() ? 1 : 0;
            best += plan.complete() && plan.cost() <= instance.upper() ? 1 : 0;
            double gap = plan.complete() ? (plan.cost() - plan.bound()) / (double) Math.max(1, plan.cost()) : 1;
            worst = Math.max(worst, gap);
            if (each) {
                print(instance, plan, seconds[i]);
            }
        }
        Arrays.sort(seconds);
        System.out.printf(
                Locale.ROOT,
                "%s\t%d\t%d\t%d\t%.3f\t%.3f\t%.3f\t%.4f%%%n",
                file.getFileName().toString().replaceFirst("\\.tsv$", ""),
                seconds.length,
                proven,
                best,
                at(seconds, 0.5),
                at(seconds, 0.95),
                at(seconds, 1),
                100 * worst);
    }

    private static void print(Instance instance, PatternPlan plan, double seconds) {
        String wrong = plan.bound() > instance.upper() || (plan.complete() && plan.cost() < instance.lower())
                ? "\tCONTRADICTS THE PUBLISHED BOUNDS"
                : "";
        System.out.printf(
                Locale.ROOT,
                "  %s\tcost %d\tbound %d\tpublished %d-%d\t%s\t%.3f s%s%n",
                instance.name(),
                plan.cost(),
                plan.bound(),
                instance.lower(),
                instance.upper(),
                plan.complete() && plan.proven() ? (plan.boundByBranching() ? "proven by search" : "proven") : "open",
                seconds,
                wrong);
    }

    private static double at(double[] sorted, double share) {
        return sorted.length == 0 ? 0 : sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
    }
}
