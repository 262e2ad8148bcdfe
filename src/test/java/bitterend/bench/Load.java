package bitterend.bench;

import bitterend.measure.Cost;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Whether a plan made beside busy threads is as good as one made alone in half the time. */
@Command(name = "load")
final class Load implements Callable<Integer> {
    private static final int FORGIVEN_OF = 10;
    private static final double MILLIS_OF_A_UNIT = 100.0 * Cost.MILLIS_PER_MINOR;

    @Option(names = "--seed")
    private long seed;

    @Option(names = "--days")
    private int days = 10;

    @Option(names = "--time")
    private double seconds = 10;

    @Option(names = "--busy")
    private int busy = 2;

    @Parameters(arity = "0..*", paramLabel = "PIECES")
    private List<Integer> sizes = List.of(60);

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    /** What is left undone, then what it costs; less is better. */
    private record Plan(Undone undone, Packer.Result result) {
        boolean isWorseThan(Plan other) {
            return other.undone.isLessThan(undone)
                    || (other.undone.equals(undone) && result.cost().compareTo(other.result.cost()) > 0);
        }

        @Override
        public String toString() {
            return String.format(Locale.ROOT, "%s\t%.2f", undone, result.cost().millis() / MILLIS_OF_A_UNIT);
        }
    }

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "--days", days);
        Benchmarks.positive(spec, "--time", seconds);
        Benchmarks.positive(spec, "--busy", busy);
        sizes.forEach(size -> Benchmarks.positive(spec, "PIECES", size));
        plan(RealDay.of(seed - 1, sizes.get(0)), seed, Math.min(1, seconds));
        out().println("pieces\tseed\tcalm_undone\tcalm_cost\tbusy_undone\tbusy_cost\tworse");
        int worse = sizes.stream().mapToInt(this::rows).sum();
        int all = days * sizes.size();
        out().printf(Locale.ROOT, "no worse on %d of %d%n", all - worse, all);
        return worse * FORGIVEN_OF > all ? Benchmarks.PLAN_REFUSED : 0;
    }

    private int rows(int pieces) {
        int worse = 0;
        for (long day = seed; day < seed + days; day++) {
            PackingProblem problem = RealDay.of(day, pieces);
            Plan calm = plan(problem, day, seconds / 2);
            Plan loaded = besideBusyThreads(problem, day);
            boolean isWorse = loaded.isWorseThan(calm);
            worse += isWorse ? 1 : 0;
            out().println(pieces + "\t" + day + "\t" + calm + "\t" + loaded + "\t" + (isWorse ? "worse" : ""));
        }
        return worse;
    }

    private Plan besideBusyThreads(PackingProblem problem, long day) {
        BusyThreads threads = BusyThreads.start(busy);
        try {
            return plan(problem, day, seconds);
        } finally {
            threads.close();
        }
    }

    private static Plan plan(PackingProblem problem, long seed, double seconds) {
        Packer.Result result = new Stopwatch(seconds, false)
                .lap(seed, progress -> {}, effort -> Way.BOTH.pack(problem, effort))
                .result();
        return new Plan(new PlanPrice(problem).undone(result.packing()), result);
    }

    /** Threads that do nothing but keep cores busy, until closed. */
    private static final class BusyThreads {
        private final List<Thread> threads;

        private BusyThreads(List<Thread> threads) {
            this.threads = threads;
        }

        static BusyThreads start(int number) {
            List<Thread> threads = Stream.generate(() -> new Thread(BusyThreads::spin, "busy"))
                    .limit(number)
                    .toList();
            threads.forEach(thread -> {
                thread.setDaemon(true);
                thread.start();
            });
            return new BusyThreads(threads);
        }

        private static void spin() {
            while (!Thread.currentThread().isInterrupted()) {
                Thread.onSpinWait();
            }
        }

        void close() {
            threads.forEach(Thread::interrupt);
        }
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
