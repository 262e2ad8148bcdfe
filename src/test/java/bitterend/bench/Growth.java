package bitterend.bench;

import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How time and memory of the whole chain grow with the number of pieces, and with the number of different lengths. */
@Command(name = "growth")
final class Growth implements Callable<Integer> {
    private static final int LENGTHS = 200;
    private static final List<String> HEAD = List.of(
            "pieces",
            "lengths",
            "reels",
            "first_plan_s",
            "x",
            "first_bound_s",
            "x",
            "end_s",
            "gap_%",
            "peak_MiB",
            "live_MiB",
            "x");

    @Option(names = "--seed")
    private long seed;

    @Option(names = "--time")
    private double seconds = 30;

    @Option(names = "--pieces")
    private int mostPieces = 12_800;

    @Option(names = "--lengths")
    private int mostLengths = 10_000;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    private Row before = Row.NONE;
    private boolean refused;

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "--time", seconds);
        Benchmarks.positive(spec, "--pieces", mostPieces);
        Benchmarks.positive(spec, "--lengths", mostLengths);
        out().println(String.join("\t", HEAD));
        warmUp();
        doubling(100, mostPieces).forEach(pieces -> row(DayKind.of(pieces, Math.min(LENGTHS, pieces))));
        before = Row.NONE;
        doubling(50, mostLengths).forEach(lengths -> row(DayKind.of(mostLengths, lengths)));
        return refused ? Benchmarks.PLAN_REFUSED : 0;
    }

    /** So that the first row does not pay for the compiler. */
    private void warmUp() {
        DayTrial trial = new DayTrial(RealDay.of(seed - 1, 30));
        trial.run(Way.BOTH, seed, new Stopwatch(Math.min(1, seconds), false), new Firsts());
    }

    /** From the first by doubling, the last itself included. */
    static List<Integer> doubling(int first, int last) {
        List<Integer> sizes = new ArrayList<>();
        for (int size = first; size < last; size *= 2) {
            sizes.add(size);
        }
        sizes.add(last);
        return sizes;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    /** NaN where something never came. */
    private record Row(double firstPlan, double firstBound, double end, double gap, double peak, double live) {
        static final Row NONE = new Row(Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    /** When the first plan and the first bound were told. */
    private static final class Firsts implements Consumer<Effort.Progress> {
        private final long from = System.nanoTime();
        private double plan = Double.NaN;
        private double bound = Double.NaN;

        @Override
        public synchronized void accept(Effort.Progress progress) {
            double now = (System.nanoTime() - from) / 1e9;
            plan = Double.isNaN(plan) ? now : plan;
            bound = Double.isNaN(bound) && progress.bound().compareTo(Cost.ZERO) > 0 ? now : bound;
        }
    }

    private void row(DayKind kind) {
        PackingProblem problem = RealDay.of(seed, kind);
        out().print(kind.pieces() + "\t" + kind.lengths() + "\t"
                + problem.reels().size());
        try {
            Row row = measured(problem);
            print(row, before);
            before = row;
        } catch (IllegalStateException failed) {
            if (!(failed.getCause() instanceof OutOfMemoryError)) {
                throw failed;
            }
            out().println("\tout of memory");
        }
        out().flush();
    }

    private Row measured(PackingProblem problem) {
        try (HeapWatch heap = HeapWatch.start()) {
            DayTrial trial = new DayTrial(problem);
            Firsts firsts = new Firsts();
            trial.run(Way.BOTH, seed, new Stopwatch(seconds, false), firsts);
            double peak = heap.peak();
            double live = heap.live();
            DayTrial.Judged judged = DaysTable.on(trial.judged(), Way.BOTH);
            refused |= judged.refused();
            return new Row(firsts.plan, firsts.bound, judged.wall(), judged.gap(), peak, live);
        }
    }

    private void print(Row row, Row last) {
        out().printf(
                        Locale.ROOT,
                        "\t%s\t%s\t%s\t%s\t%.2f\t%s\t%.0f\t%.0f\t%s%n",
                        DaysTable.figure("%.3f", row.firstPlan),
                        ratio(row.firstPlan, last.firstPlan),
                        DaysTable.figure("%.3f", row.firstBound),
                        ratio(row.firstBound, last.firstBound),
                        row.end,
                        DaysTable.figure("%.4f", row.gap),
                        row.peak,
                        row.live,
                        ratio(row.live, last.live));
    }

    private static String ratio(double now, double last) {
        return DaysTable.figure("%.1f", now / last);
    }
}
