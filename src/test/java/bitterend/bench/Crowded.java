package bitterend.bench;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import bitterend.shops.TrivialPass;
import bitterend.stock.Reel;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Days whose racks hold only a share of the rope that is wanted: the work left undone against trivial passes. */
@Command(name = "crowded")
final class Crowded implements Callable<Integer> {
    private static final List<Integer> SHARES = List.of(60, 80, 95);
    /** Said of a day whose bound speaks of other work, in per cent. */
    private static final double EVERYTHING = 100;

    @Option(names = "--seed")
    private long seed;

    @Option(names = "--days")
    private int days = 10;

    @Option(names = "--time")
    private double seconds = 10;

    @Option(names = "--sets")
    private int sets = DayKind.USUAL_SETS;

    @Option(names = "--cpu")
    private boolean processor;

    @Parameters(arity = "0..*", paramLabel = "PIECES")
    private List<Integer> sizes = List.of(40, 80);

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "--days", days);
        Benchmarks.positive(spec, "--time", seconds);
        sizes.forEach(size -> Benchmarks.positive(spec, "PIECES", size));
        out().println("pieces\track_%\tdays\tbehind\tours\tbest_pass\tleast\tbounded\tgap_%\tcpu_s");
        int behind = 0;
        for (int size : sizes) {
            for (int share : SHARES) {
                behind += row(size, share);
            }
        }
        return behind > 0 ? Benchmarks.PLAN_REFUSED : 0;
    }

    private int row(int pieces, int share) {
        int behind = 0;
        int least = 0;
        int bounded = 0;
        double processorSeconds = 0;
        List<Double> gaps = new ArrayList<>();
        Undone ours = Undone.NONE;
        Undone passes = Undone.NONE;
        for (long day = seed; day < seed + days; day++) {
            PackingProblem problem =
                    shortened(RealDay.of(day, DayKind.usual(pieces).withSets(sets)), share);
            PlanPrice price = new PlanPrice(problem);
            DayTrial trial = new DayTrial(problem);
            Packer.Result result = trial.run(Way.BOTH, day, new Stopwatch(seconds, processor), progress -> {});
            DayTrial.Judged judged = DaysTable.on(trial.judged(), Way.BOTH);
            Undone left = price.undone(result.packing());
            Undone best = bestPass(problem, price);
            behind += best.isLessThan(left) || judged.refused() ? 1 : 0;
            least += isProvenLeast(result.bounds()) ? 1 : 0;
            bounded += result.bounds().stream().map(Bound::best).allMatch(Cost.ZERO::equals) ? 0 : 1;
            gaps.add(judged.compared() ? judged.gap() : EVERYTHING);
            processorSeconds += judged.processor();
            ours = ours.plus(left);
            passes = passes.plus(best);
        }
        out().printf(
                        Locale.ROOT,
                        "%d\t%d\t%d\t%d\t%s\t%s\t%d\t%d\t%.3f\t%.1f%n",
                        pieces,
                        share,
                        days,
                        behind,
                        ours,
                        passes,
                        least,
                        bounded,
                        new Percentiles(gaps).median(),
                        processorSeconds / days);
        return behind;
    }

    /** Whether a proof is written down, class by class, that no plan leaves less undone. */
    private static boolean isProvenLeast(List<Bound> bounds) {
        return bounds.stream().allMatch(bound -> {
            Undone proven = bound.cases().least().stream()
                    .map(proof -> Undone.of(proof.urgency(), proof.weight()))
                    .reduce(Undone.NONE, Undone::plus);
            return proven.equals(bound.undone());
        });
    }

    private static Undone bestPass(PackingProblem problem, PlanPrice price) {
        return TrivialPass.all(problem).values().stream()
                .map((Packing pass) -> price.undone(pass))
                .min(Undone::compareTo)
                .orElseThrow();
    }

    /** The reels of a day, in turn from the first, until they hold a share of what is wanted. */
    static PackingProblem shortened(PackingProblem day, int percent) {
        long wanted =
                day.pieces().stream().map(Piece::cut).mapToLong(cut -> cut.mm()).sum();
        List<Reel> kept = new ArrayList<>();
        long there = 0;
        for (Reel reel : day.reels()) {
            long sound =
                    reel.runs().stream().mapToLong(run -> run.length().mm()).sum();
            if ((there + sound) * 100 <= wanted * percent) {
                kept.add(reel);
                there += sound;
            }
        }
        return new PackingProblem(
                day.day(),
                day.ropes(),
                day.pieces(),
                kept,
                day.values(),
                day.prices(),
                day.pins(),
                day.earlier(),
                day.calendar());
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
