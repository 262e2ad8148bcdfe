package bitterend.bench;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.search.Profile;
import bitterend.packing.search.Search;
import bitterend.stock.Reel;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.LongFunction;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Less work or more stock can never cost more at the optimum, but a search may trip over it. Counts how often it does on
 * generated days: the sub-command {@code less} of {@code .ci/bench}.
 */
@Command(name = "less")
final class MoreAndLess implements Callable<Integer> {
    @Parameters(index = "0", arity = "0..1", paramLabel = "DAYS")
    private int days = 200;

    @Parameters(index = "1", arity = "0..1", paramLabel = "WORK")
    private long work = 50_000;

    @Parameters(index = "2", arity = "0..1", paramLabel = "PIECES")
    private int pieces = 40;

    @Spec
    @SuppressWarnings("NullAway.Init")
    private CommandSpec spec;

    private record Plan(Undone undone, long millis) {}

    @Override
    public Integer call() {
        Benchmarks.positive(spec, "DAYS", days);
        Benchmarks.positive(spec, "WORK", work);
        Benchmarks.positive(spec, "PIECES", pieces);
        out().println("change\tdays\tdearer\tmean_of_those\tworst\tmore_undone");
        compare("an order less", this::oneOrderLess);
        compare("a reel more", this::oneReelLess);
        return 0;
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }

    /** Both problems of a day, the one that must not be dearer first. */
    private record Pair(PackingProblem easier, PackingProblem harder) {}

    private Pair oneOrderLess(long seed) {
        PackingProblem all = RealDay.of(seed, pieces);
        String order = all.pieces().get((int) (seed % all.pieces().size())).order();
        List<Piece> rest = all.pieces().stream()
                .filter(piece -> !piece.order().equals(order))
                .toList();
        return new Pair(with(all, rest, all.reels()), all);
    }

    private Pair oneReelLess(long seed) {
        PackingProblem all = RealDay.of(seed, pieces);
        List<Reel> fewer = new ArrayList<>(all.reels());
        fewer.remove((int) (seed % fewer.size()));
        return new Pair(all, with(all, all.pieces(), fewer));
    }

    private static PackingProblem with(PackingProblem day, List<Piece> pieces, List<Reel> reels) {
        return new PackingProblem(
                day.day(),
                day.ropes(),
                pieces,
                reels,
                day.values(),
                day.prices(),
                day.pins(),
                day.earlier(),
                day.calendar());
    }

    private void compare(String change, LongFunction<Pair> pairs) {
        int compared = 0;
        int undone = 0;
        List<Double> dearer = new ArrayList<>();
        for (long seed = 0; seed < days; seed++) {
            Pair pair = pairs.apply(seed);
            Plan easier = plan(pair.easier(), seed);
            Plan harder = plan(pair.harder(), seed);
            undone += harder.undone().isLessThan(easier.undone()) ? 1 : 0;
            if (easier.undone().equals(harder.undone())) {
                compared++;
                if (easier.millis() > harder.millis()) {
                    dearer.add(100.0 * (easier.millis() - harder.millis()) / harder.millis());
                }
            }
        }
        out().printf(
                        Locale.ROOT,
                        "%s\t%d\t%d\t%.3f %%\t%.3f %%\t%d%n",
                        change,
                        compared,
                        dearer.size(),
                        dearer.stream()
                                .mapToDouble(Double::doubleValue)
                                .average()
                                .orElse(0),
                        dearer.stream().mapToDouble(Double::doubleValue).max().orElse(0),
                        undone);
    }

    private Plan plan(PackingProblem problem, long seed) {
        Effort effort = new Effort(Duration.ofHours(1), work, seed, 1, () -> false, progress -> {});
        Packing found =
                Search.improve(problem, new GreedyPacker(problem).best(), effort, Profile.reproducible(), Cost.ZERO);
        PlanPrice price = new PlanPrice(problem);
        return new Plan(price.undone(found), price.of(found).millis());
    }
}
