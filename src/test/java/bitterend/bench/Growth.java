package bitterend.bench;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/**
 * How time and memory of the whole chain grow with the number of pieces, with the number of different lengths, and with the
 * coils on the rack.
 */
@Command(name = "growth")
final class Growth implements Callable<Integer> {
    private static final int PIECES_OF_A_RACK = 300;
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

    @Option(names = "--of")
    private int lengths = 200;

    @Option(names = "--coils")
    private int mostCoils = 10_000;

    @Option(names = "--last")
    private boolean lastAlone;

    @Option(names = "--picture")
    private @Nullable Path picture;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    private Row before = Row.NONE;
    private boolean refused;

    @Override
    public Integer call() throws IOException {
        Benchmarks.positive(spec, "--time", seconds);
        Benchmarks.positive(spec, "--of", lengths);
        out().println(String.join("\t", HEAD));
        warmUp();
        GrowthPicture drawn = new GrowthPicture();
        ladder(drawn, "pieces", doubling(100, mostPieces), size -> DayKind.of(size, Math.min(lengths, size)));
        ladder(drawn, "different lengths", doubling(50, mostLengths), size -> DayKind.of(mostLengths, size));
        ladder(drawn, "coils of a rope", doubling(50, mostCoils), size -> DayKind.usual(PIECES_OF_A_RACK)
                .withCoils(size));
        if (picture != null) {
            Files.writeString(picture, drawn.svg());
        }
        return refused ? Benchmarks.PLAN_REFUSED : 0;
    }

    /** None where the largest is nothing. */
    private void ladder(GrowthPicture drawn, String what, List<Integer> sizes, IntFunction<DayKind> kind) {
        before = Row.NONE;
        int largest = sizes.get(sizes.size() - 1);
        if (largest < 1) {
            return;
        }
        drawn.begin(what);
        for (int size : lastAlone ? List.of(largest) : sizes) {
            Row row = row(kind.apply(size));
            drawn.add(size, row.firstPlan, row.firstBound, row.live);
        }
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

    private Row row(DayKind kind) {
        PackingProblem problem = RealDay.of(seed, kind);
        long different = problem.pieces().stream().map(Piece::cut).distinct().count();
        out().print(kind.pieces() + "\t" + different + "\t" + problem.reels().size());
        Row row = Row.NONE;
        try {
            row = measured(problem);
            print(row, before);
        } catch (IllegalStateException failed) {
            if (!(failed.getCause() instanceof OutOfMemoryError)) {
                throw failed;
            }
            out().println("\tout of memory");
        }
        out().flush();
        before = row;
        return row;
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
