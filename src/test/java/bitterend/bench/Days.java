package bitterend.bench;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What each way of packing costs on generated real days, against the best bound that is proven for the day. */
@Command(name = "days")
final class Days implements Callable<Integer> {
    private static final List<Integer> USUAL_SIZES = List.of(30, 100, 300, 1_000, 10_000);
    private static final int USUAL_DAYS = 20;
    private static final int USUAL_PIECES_IN_ALL = 30_000;
    private static final int FROM = 30;
    private static final int TO = 300;

    @Option(names = "--seed")
    private long seed;

    @Option(names = "--days")
    private @Nullable Integer days;

    @Option(names = "--time")
    private @Nullable Double seconds;

    @Option(names = "--cpu")
    private boolean processor;

    @Option(names = "--each")
    private boolean each;

    @Option(names = "--plain")
    private boolean plain;

    @Option(names = "--coils")
    private boolean coils;

    @Option(names = "--sets")
    private int sets = DayKind.USUAL_SETS;

    @Option(names = "--long")
    private boolean longPieces;

    @Parameters(arity = "0..*", paramLabel = "PIECES")
    private List<Integer> sizes = List.of();

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "--days", days);
        Benchmarks.positive(spec, "--time", seconds);
        sizes.forEach(pieces -> Benchmarks.positive(spec, "PIECES", pieces));
        PrintWriter out = spec.commandLine().getOut();
        DaysTable table = new DaysTable(out, processor);
        warmUp();
        table.head();
        List<Map<Way, DayTrial.Judged>> ofTheTargets = new ArrayList<>();
        boolean refused = false;
        for (int pieces : sizes.isEmpty() ? usualSizes() : sizes) {
            List<Map<Way, DayTrial.Judged>> judged = days(pieces);
            table.lines(kind() + pieces, judged);
            refused |= judged.stream().anyMatch(day -> day.values().stream().anyMatch(DayTrial.Judged::refused));
            if (pieces >= FROM && pieces <= TO && !longPieces) {
                ofTheTargets.addAll(judged);
            }
        }
        if (!ofTheTargets.isEmpty()) {
            table.lines(kind() + FROM + "-" + TO, ofTheTargets);
            table.targets(kind(), ofTheTargets);
        }
        return refused ? Benchmarks.PLAN_REFUSED : 0;
    }

    /** In front of the number of pieces. */
    private String kind() {
        String kind = longPieces ? "long " : plain ? "plain " : "";
        return coils ? kind + "coils " : kind;
    }

    private List<Integer> usualSizes() {
        return longPieces ? List.of(30) : USUAL_SIZES;
    }

    /** So that the first day does not pay for the compiler. */
    private void warmUp() {
        double second = Math.min(1, secondsFor(30));
        day(seed - 1, DayKind.usual(30), new Stopwatch(second, processor));
    }

    private List<Map<Way, DayTrial.Judged>> days(int pieces) {
        DayKind usualKind = plain ? DayKind.usual(pieces).madePlain() : DayKind.usual(pieces);
        DayKind kind = longPieces ? DayKind.ofLongPieces(pieces) : usualKind.withSets(sets);
        DayKind valued = coils ? kind.byCoilCurve() : kind;
        Stopwatch stopwatch = new Stopwatch(secondsFor(pieces), processor);
        int usual = Math.max(1, Math.min(USUAL_DAYS, USUAL_PIECES_IN_ALL / pieces));
        List<Map<Way, DayTrial.Judged>> judged = new ArrayList<>();
        for (long day = seed; day < seed + (days == null ? usual : days); day++) {
            Map<Way, DayTrial.Judged> plans = day(day, valued, stopwatch);
            judged.add(plans);
            if (each) {
                tell(day, pieces, plans);
            }
        }
        return judged;
    }

    private static Map<Way, DayTrial.Judged> day(long seed, DayKind kind, Stopwatch stopwatch) {
        DayTrial trial = new DayTrial(RealDay.of(seed, kind));
        for (Way way : Way.values()) {
            trial.run(way, seed, stopwatch, progress -> {});
        }
        return trial.judged();
    }

    /** What the targets allow. */
    private double secondsFor(int pieces) {
        if (seconds != null) {
            return seconds;
        }
        return pieces <= 300 ? 10 : pieces <= 1_000 ? 20 : 30;
    }

    private void tell(long day, int pieces, Map<Way, DayTrial.Judged> plans) {
        PrintWriter out = spec.commandLine().getOut();
        for (Way way : Way.values()) {
            DayTrial.Judged plan = DaysTable.on(plans, way);
            out.printf(
                    Locale.ROOT,
                    "  %d pieces, seed %d\t%s\tcost %.2f\t%s\t%.3f s\tcpu %.3f s%s%n",
                    pieces,
                    day,
                    way.title(),
                    DaysTable.money(plan.cost()),
                    verdict(plan),
                    plan.wall(),
                    plan.processor(),
                    plan.refused() ? "\tREFUSED" : "");
        }
        out.flush();
    }

    private static String verdict(DayTrial.Judged plan) {
        if (!plan.compared()) {
            return "other work";
        }
        return plan.provenBest()
                ? "proven best"
                : String.format(
                        Locale.ROOT,
                        "avoidable %.2f\tgap %.4f %%\tsplit %.2f",
                        DaysTable.money(plan.avoidable()),
                        plan.gap(),
                        DaysTable.money(plan.acrossReels()));
    }
}
