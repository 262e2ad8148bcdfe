package bitterend.bench;

import bitterend.packing.check.FewestCheck;
import bitterend.packing.patterns.Effort;
import bitterend.packing.patterns.PatternPacker;
import bitterend.packing.patterns.PatternPlan;
import bitterend.packing.patterns.ReelKind;
import bitterend.packing.proof.FewestProof;
import java.io.IOException;
import java.io.PrintWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Published packing problems, solved and timed: the sub-commands {@code one} and {@code sizes} of {@code .ci/bench}. */
@Command(name = "one")
final class PackingBench implements Callable<Integer> {
    @Option(names = "--time")
    private double seconds = 10;

    @Option(names = "--cpu")
    private boolean cpu;

    @Option(names = "--each")
    private boolean each;

    @Option(names = "--only")
    private String only = "";

    @Option(names = "--threads")
    private int threads = 1;

    @Parameters(arity = "1..*", paramLabel = "FILE")
    private List<Path> files = List.of();

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    /** @param checked what was found wrong with a proof by cases, and the seconds that took; empty where there is none */
    private record Outcome(Instance instance, PatternPlan plan, double seconds, Optional<Checked> checked) {
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

    private boolean refused;

    private record Checked(String fault, double seconds) {}

    @Override
    public Integer call() throws IOException, InterruptedException, ExecutionException {
        Benchmarks.positive(spec, "--time", seconds);
        Benchmarks.positive(spec, "--threads", threads);
        for (Path file : files) {
            if (!Files.isReadable(file)) {
                throw new ParameterException(spec.commandLine(), "FILE: cannot read " + file);
            }
        }
        out().println("set\tinstances\tproven\tbest\tmedian_s\tp95_s\tmax_s\tworst_gap\tby_cases\tcheck_max_s");
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            for (Path file : files) {
                List<Instance> instances = new ArrayList<>(Instance.read(file));
                instances.removeIf(instance -> !instance.name().contains(only));
                run(file.getFileName().toString().replaceFirst("\\.tsv$", ""), instances, pool);
            }
        } finally {
            pool.shutdownNow();
        }
        return refused ? Benchmarks.PLAN_REFUSED : 0;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
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
        refused |= outcomes.stream().anyMatch(outcome -> outcome.checked()
                .filter(checked -> !checked.fault().isEmpty())
                .isPresent());
    }

    private Outcome solve(Instance instance) {
        long start = now();
        PatternPlan plan = PatternPacker.pack(instance.problem(), effort(start));
        double taken = (now() - start) / 1e9;
        return new Outcome(instance, plan, taken, plan.denial().map(proof -> checked(instance, plan, proof)));
    }

    /** Has the checker look at why one reel less is too few. */
    private Checked checked(Instance instance, PatternPlan plan, FewestProof proof) {
        long start = now();
        ReelKind reel = instance.problem().reels().get(0);
        Map<Long, Integer> pieces = new TreeMap<>();
        for (int i = 0; i < reel.lengths().size(); i++) {
            pieces.merge(
                    reel.lengths().get(i) + reel.cutLoss(),
                    instance.problem().items().get(i).demand(),
                    Integer::sum);
        }
        long room = reel.runs().get(0).length() + reel.cutLoss();
        String fault = FewestCheck.fault(proof, room, pieces, plan.cost() / reel.opening() - 1);
        return new Checked(fault, (now() - start) / 1e9);
    }

    private long now() {
        return cpu ? ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() : System.nanoTime();
    }

    private Effort effort(long start) {
        Duration limit = Duration.ofMillis(Math.round(1000 * seconds));
        return cpu
                ? Effort.ofTime(limit.multipliedBy(50)).withCancel(() -> now() - start > limit.toNanos())
                : Effort.ofTime(limit);
    }

    private void summary(String set, List<Outcome> outcomes) {
        Percentiles times =
                new Percentiles(outcomes.stream().map(Outcome::seconds).toList());
        out().printf(
                        Locale.ROOT,
                        "%s\t%d\t%d\t%d\t%.3f\t%.3f\t%.3f\t%.4f%%\t%d\t%.3f%n",
                        set,
                        outcomes.size(),
                        outcomes.stream().filter(Outcome::proven).count(),
                        outcomes.stream().filter(Outcome::best).count(),
                        times.median(),
                        times.at(0.95),
                        times.most(),
                        100 * outcomes.stream().mapToDouble(Outcome::gap).max().orElse(0),
                        outcomes.stream()
                                .filter(outcome -> outcome.checked().isPresent())
                                .count(),
                        outcomes.stream()
                                .flatMap(outcome -> outcome.checked().stream())
                                .mapToDouble(Checked::seconds)
                                .max()
                                .orElse(0));
    }

    private void print(Outcome outcome) {
        PatternPlan plan = outcome.plan();
        Instance instance = outcome.instance();
        boolean wrong = plan.bound() > instance.upper() || (plan.complete() && plan.cost() < instance.lower());
        out().printf(
                        Locale.ROOT,
                        "  %s\tcost %d\tbound %d\tpublished %d-%d\t%s\t%.3f s%s%s%n",
                        instance.name(),
                        plan.cost(),
                        plan.bound(),
                        instance.lower(),
                        instance.upper(),
                        outcome.proven() ? (plan.boundByBranching() ? how(outcome) : "proven") : "open",
                        outcome.seconds(),
                        outcome.checked().map(PackingBench::said).orElse(""),
                        wrong ? "\tCONTRADICTS THE PUBLISHED BOUNDS" : "");
    }

    private static String how(Outcome outcome) {
        return outcome.checked().isPresent() ? "proven by cases" : "proven by search";
    }

    private static String said(Checked checked) {
        return checked.fault().isEmpty()
                ? String.format(Locale.ROOT, "\tconfirmed in %.3f s", checked.seconds())
                : "\tREFUSED: " + checked.fault();
    }
}
