package bitterend.bench;

import bitterend.bench.peers.GeneralSolver;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Generated days packed by our chain, by OptaPlanner alone and by general solvers, each with three models of a day. */
@Command(name = "peers")
final class Peers implements Callable<Integer> {
    private static final List<Integer> USUAL_SIZES = List.of(30, 60, 100);
    private static final String OURS = "ours, the whole chain";
    private static final String SEARCH = "OptaPlanner alone";

    @Option(names = "--seed")
    private long seed;

    @Option(names = "--days")
    private int days = 10;

    @Option(names = "--time")
    private double seconds = 10;

    @Option(names = "--threads")
    private int threads = 2;

    @Option(names = "--each")
    private boolean each;

    @Option(names = "--long")
    private boolean longPieces;

    @Option(names = "--only")
    private String only = "";

    @Parameters(arity = "0..*", paramLabel = "PIECES")
    private List<Integer> sizes = List.of();

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    /** Runs {@code peers}. */
    public static void main(String[] args) {
        CommandLine commands = new CommandLine(new Benchmarks()).addSubcommand(new Peers());
        System.exit(Benchmarks.execute(commands, Benchmarks.writer(System.out), Benchmarks.writer(System.err), args));
    }

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "--days", days);
        Benchmarks.positive(spec, "--time", seconds);
        Benchmarks.positive(spec, "--threads", threads);
        sizes.forEach(pieces -> Benchmarks.positive(spec, "PIECES", pieces));
        PeersTable table = new PeersTable(spec.commandLine().getOut());
        warmUp();
        table.head();
        boolean refused = false;
        for (int pieces : sizes.isEmpty() ? USUAL_SIZES : sizes) {
            List<Map<String, PeersTable.Line>> lines = days(table, pieces);
            table.print((longPieces ? "long " : "plain ") + pieces, lines);
            refused |= lines.stream().anyMatch(day -> day.values().stream().anyMatch(PeersTable.Line::refused));
        }
        return refused ? Benchmarks.PLAN_REFUSED : 0;
    }

    /** So that the first day does not pay for the compiler. */
    private void warmUp() {
        DayKind few = DayKind.usual(10).madePlain();
        long day = 0;
        while (!isWhole(RealDay.of(day, few), new GreedyPacker(RealDay.of(day, few)).best())) {
            day++;
        }
        tried(day, RealDay.of(day, few), Math.min(1, seconds));
    }

    private static boolean isWhole(PackingProblem problem, Packing packing) {
        return new PlanPrice(problem).undone(packing).isNone();
    }

    private List<Map<String, PeersTable.Line>> days(PeersTable table, int pieces) {
        DayKind kind = longPieces
                ? DayKind.ofLongPieces(pieces)
                : DayKind.usual(pieces).madePlain();
        List<Map<String, PeersTable.Line>> lines = new ArrayList<>();
        PrintWriter out = spec.commandLine().getOut();
        for (long day = seed; lines.size() < days; day++) {
            PackingProblem problem = RealDay.of(day, kind);
            Packing greedy = new GreedyPacker(problem).best();
            if (!isWhole(problem, greedy)) {
                out.println(
                        "  " + pieces + " pieces, seed " + day + ": passed over, the start does not cut everything");
                continue;
            }
            Map<String, PeerTrial.Tried> tried = tried(day, problem, seconds);
            Map<String, PeersTable.Line> judged = PeersTable.lines(tried, DayTrial.inPieces(problem, greedy));
            if (each) {
                long number = day;
                tried.forEach((title, way) ->
                        table.tell(number, pieces, title, way, Objects.requireNonNull(judged.get(title))));
            }
            lines.add(withBest(judged));
        }
        return lines;
    }

    private Map<String, PeerTrial.Tried> tried(long day, PackingProblem problem, double limit) {
        PeerTrial trial = new PeerTrial(problem, limit, threads, day);
        trial.run(OURS, Way.BOTH);
        trial.run(SEARCH, Way.SEARCH);
        for (GeneralSolver solver : GeneralSolver.values()) {
            for (PeerWay.Shape shape : PeerWay.Shape.values()) {
                PeerWay way = new PeerWay(solver, shape);
                if (way.title().contains(only)) {
                    trial.run(way);
                }
            }
        }
        return trial.tried();
    }

    /** With a line for each solver that has the best of its models, day by day. */
    private static Map<String, PeersTable.Line> withBest(Map<String, PeersTable.Line> lines) {
        Map<String, PeersTable.Line> all = new LinkedHashMap<>(lines);
        for (GeneralSolver solver : GeneralSolver.values()) {
            lines.entrySet().stream()
                    .filter(line -> line.getKey().startsWith(solver.title() + ","))
                    .map(Map.Entry::getValue)
                    .reduce(PeersTable.Line::orBetter)
                    .ifPresent(best -> all.put(solver.title() + ", best of its models", best));
        }
        return all;
    }
}
