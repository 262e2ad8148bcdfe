package bitterend.bench;

import bitterend.packing.patterns.Effort;
import bitterend.packing.patterns.PatternPacker;
import bitterend.packing.patterns.PatternPlan;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Published packing problems, solved and timed: the sub-commands {@code one} and {@code sizes} of {@code .ci/bench}. */
public final class PackingBench {
    private final Duration limit;
    private final boolean cpu;
    private final boolean each;

    private record Outcome(Instance instance, PatternPlan plan, double seconds) {
        boolean proven() {
            return plan.complete() && plan.proven();
        }

        boolean best() {
            return plan.complete() && plan.cost() <= instance.upper();
        }

        double gap() {
            return plan.complete() ? (plan.cost() - plan.bound()) / (double) Math.max(1, plan.cost()) : 1;
        }
    }

    private PackingBench(Duration limit, boolean cpu, boolean each) {
        this.limit = limit;
        this.cpu = cpu;
        this.each = each;
    }

    /** Arguments as {@code .ci/bench} documents them, without the sub-command. */
    public static void main(String[] args) throws IOException, InterruptedException, ExecutionException {
        Duration limit = Duration.ofSeconds(10);
        boolean cpu = false;
        boolean each = false;
        String only = "";
        int threads = 1;
        List<Path> files = new ArrayList<>();
        for (int a = 0; a < args.length; a++) {
            switch (args[a]) {
                case "--time" -> limit = Duration.ofMillis(Math.round(1000 * Double.parseDouble(args[++a])));
                case "--only" -> only = args[++a];
                case "--threads" -> threads = Integer.parseInt(args[++a]);
                case "--cpu" -> cpu = true;
                case "--each" -> each = true;
                default -> files.add(Path.of(args[a]));
            }
        }
        PackingBench bench = new PackingBench(limit, cpu, each);
        System.out.println("set\tinstances\tproven\tbest\tmedian_s\tp95_s\tmax_s\tworst_gap");
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            for (Path file : files) {
                List<Instance> instances = new ArrayList<>(Instance.read(file));
                String name = only;
                instances.removeIf(instance -> !instance.name().contains(name));
                bench.run(file.getFileName().toString().replaceFirst("\\.tsv$", ""), instances, pool);
            }
        } finally {
            pool.shutdownNow();
        }
    }

    private void run(String set, List<Instance> instances, ExecutorService pool)
            throws InterruptedException, ExecutionException {
        List<Future<Outcome>> running = new ArrayList<>();
        for (Instance instance : instances) {
            running.add(pool.submit(() -> solve(instance)));
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (Future<Outcome> future : running) {
            Outcome outcome = future.get();
            outcomes.add(outcome);
            if (each) {
                print(outcome);
            }
        }
        summary(set, outcomes);
    }

    private Outcome solve(Instance instance) {
        long start = now();
        PatternPlan plan = PatternPacker.pack(instance.problem(), effort(start));
        return new Outcome(instance, plan, (now() - start) / 1e9);
    }

    private long now() {
        return cpu ? ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() : System.nanoTime();
    }

    private Effort effort(long start) {
        return cpu
                ? Effort.ofTime(limit.multipliedBy(50)).withCancel(() -> now() - start > limit.toNanos())
                : Effort.ofTime(limit);
    }

    private static void summary(String set, List<Outcome> outcomes) {
        double[] seconds =
                outcomes.stream().mapToDouble(Outcome::seconds).sorted().toArray();
        System.out.printf(
                Locale.ROOT,
                "%s\t%d\t%d\t%d\t%.3f\t%.3f\t%.3f\t%.4f%%%n",
                set,
                seconds.length,
                outcomes.stream().filter(Outcome::proven).count(),
                outcomes.stream().filter(Outcome::best).count(),
                at(seconds, 0.5),
                at(seconds, 0.95),
                at(seconds, 1),
                100 * outcomes.stream().mapToDouble(Outcome::gap).max().orElse(0));
    }

    private static void print(Outcome outcome) {
        PatternPlan plan = outcome.plan();
        Instance instance = outcome.instance();
        boolean wrong = plan.bound() > instance.upper() || (plan.complete() && plan.cost() < instance.lower());
        System.out.printf(
                Locale.ROOT,
                "  %s\tcost %d\tbound %d\tpublished %d-%d\t%s\t%.3f s%s%n",
                instance.name(),
                plan.cost(),
                plan.bound(),
                instance.lower(),
                instance.upper(),
                outcome.proven() ? (plan.boundByBranching() ? "proven by search" : "proven") : "open",
                outcome.seconds(),
                wrong ? "\tCONTRADICTS THE PUBLISHED BOUNDS" : "");
    }

    private static double at(double[] sorted, double share) {
        int place = (int) Math.ceil(share * sorted.length) - 1;
        return sorted.length == 0 ? 0 : sorted[Math.max(0, place)];
    }
}
