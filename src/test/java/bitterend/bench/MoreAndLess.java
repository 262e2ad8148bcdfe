package bitterend.bench;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.greedy.GreedyPacker;
import bitterend.packing.search.Profile;
import bitterend.packing.search.Search;
import bitterend.stock.Reel;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.LongFunction;

/**
 * Less work or more stock can never cost more at the optimum, but a search may trip over it. Counts how often it does on
 * generated days: the sub-command {@code less} of {@code .ci/bench}.
 */
public final class MoreAndLess {
    private final long work;
    private final int pieces;

    private MoreAndLess(long work, int pieces) {
        this.work = work;
        this.pieces = pieces;
    }

    private record Plan(long weight, long millis) {}

    /** Days, plans weighed for each search, pieces of a day. */
    public static void main(String[] args) {
        int days = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long work = args.length > 1 ? Long.parseLong(args[1]) : 50_000;
        MoreAndLess bench = new MoreAndLess(work, args.length > 2 ? Integer.parseInt(args[2]) : 40);
        System.out.println("change\tdays\tdearer\tmean_of_those\tworst\tmore_undone");
        bench.compare("an order less", days, bench::oneOrderLess);
        bench.compare("a reel more", days, bench::oneReelLess);
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
                day.day(), day.ropes(), pieces, reels, day.values(), day.prices(), day.pins(), day.earlier());
    }

    private void compare(String change, int days, LongFunction<Pair> pairs) {
        int compared = 0;
        int undone = 0;
        List<Double> dearer = new ArrayList<>();
        for (long seed = 0; seed < days; seed++) {
            Pair pair = pairs.apply(seed);
            Plan easier = plan(pair.easier(), seed);
            Plan harder = plan(pair.harder(), seed);
            undone += easier.weight() > harder.weight() ? 1 : 0;
            if (easier.weight() == harder.weight()) {
                compared++;
                if (easier.millis() > harder.millis()) {
                    dearer.add(100.0 * (easier.millis() - harder.millis()) / harder.millis());
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%s\t%d\t%d\t%.3f %%\t%.3f %%\t%d%n",
                change,
                compared,
                dearer.size(),
                dearer.stream().mapToDouble(Double::doubleValue).average().orElse(0),
                dearer.stream().mapToDouble(Double::doubleValue).max().orElse(0),
                undone);
    }

    private Plan plan(PackingProblem problem, long seed) {
        Effort effort = new Effort(Duration.ofHours(1), work, seed, 1, () -> false, progress -> {});
        Packing found =
                Search.improve(problem, new GreedyPacker(problem).best(), effort, Profile.reproducible(), Cost.ZERO);
        PlanPrice price = new PlanPrice(problem);
        return new Plan(price.unplannedWeight(found), price.of(found).millis());
    }
}
