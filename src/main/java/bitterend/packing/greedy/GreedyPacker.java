package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/**
 * Several quick ways to pack a day, the best of which is the start of everything later. Pinned pieces go first, then
 * matched sets, then single pieces: each where it costs least (best fit by price), or reel by reel, each filled as full
 * as can be. Where that leaves work undone, sets and single pieces are also ranked together, class by class.
 */
public final class GreedyPacker {
    private static final int FILLING_UP_TO = 1_200;
    private static final long FILLING_NODES = 4_000_000;

    private final PackingProblem problem;
    private final PlanPrice prices;
    private final Homes homes;
    private final List<Job> jobs;

    public GreedyPacker(PackingProblem problem) {
        this.problem = problem;
        prices = new PlanPrice(problem);
        homes = new Homes(problem, prices);
        jobs = Job.of(problem.pieces(), new Urgency(problem));
    }

    /** The best of all starts: least work undone, then least cost. */
    public Packing best() {
        return best(() -> false);
    }

    /**
     * The best of those starts that there is time for; of one at least, and of two where the first leaves work undone.
     *
     * @param over whether time is up
     */
    public Packing best(BooleanSupplier over) {
        Packing best = bestFit(longestFirst());
        List<Packing> others = new ArrayList<>();
        if (!prices.undone(best).isNone()) {
            rankings().stream()
                    .takeWhile(ranking -> others.isEmpty() || !over.getAsBoolean())
                    .forEach(ranking -> others.add(ranked(ranking)));
        }
        if (problem.pieces().size() <= FILLING_UP_TO) {
            others.add(reelByReel(over));
        }
        for (Packing other : others) {
            best = better(best, other);
        }
        return best;
    }

    /** Longest piece first, each on the run where it costs least. */
    public Packing bestFit() {
        return bestFit(longestFirst());
    }

    /** Longest piece first, each on the first run by reel id that has room; the rule of thumb to beat. */
    public Packing firstFit() {
        Bench bench = started(longestFirst());
        for (Piece piece : singles(longestFirst(), bench)) {
            homes.of(piece).stream()
                    .filter(slot -> bench.hasRoom(piece, slot))
                    .findFirst()
                    .ifPresent(slot -> bench.place(piece, slot));
        }
        return bench.packing();
    }

    /** Sets and single pieces ranked together, for a rack that is too short: class by class, but for the last. */
    private List<Comparator<Job>> rankings() {
        Comparator<Job> fewestHomes =
                Comparator.comparingInt((Job job) -> homes.of(job.first()).size());
        return List.of(
                Job.DENSEST,
                Job.LONGEST,
                Job.SHORTEST,
                Job.FIRST_DUE,
                Job.HEAVIEST,
                Job.byClass(
                        fewestHomes.thenComparing(Comparator.comparing(Job::cut).reversed())),
                Job.setsLast());
    }

    private Packing ranked(Comparator<Job> ranking) {
        Bench bench = new Bench(problem, homes);
        placePinned(bench, problem.pieces());
        SetFitting fitting = new SetFitting(bench, homes);
        for (Job job : jobs.stream().sorted(ranking).toList()) {
            if (job.isSet()) {
                fitting.place(job.pieces());
            } else if (!bench.isPlaced(job.first())) {
                bench.cheapest(job.first(), homes.of(job.first())).ifPresent(slot -> bench.place(job.first(), slot));
            }
        }
        return bench.packing();
    }

    private void placePinned(Bench bench, List<Piece> pieces) {
        pieces.stream()
                .filter(piece -> homes.isPinned(piece) && !piece.isMatched())
                .forEach(piece -> bench.cheapest(piece, homes.of(piece)).ifPresent(slot -> bench.place(piece, slot)));
    }

    private Packing bestFit(Comparator<Piece> order) {
        Bench bench = started(order);
        for (Piece piece : singles(order, bench)) {
            bench.cheapest(piece, homes.of(piece)).ifPresent(slot -> bench.place(piece, slot));
        }
        return bench.packing();
    }

    /** What is begun when time is up is left as it is. */
    private Packing reelByReel(BooleanSupplier over) {
        Bench bench = started(longestFirst());
        List<Piece> open = new ArrayList<>(singles(longestFirst(), bench));
        int nodes = (int) Math.max(200, FILLING_NODES / Math.max(1, homes.all().size() * (long) open.size()));
        ReelFilling filling = new ReelFilling(bench, homes, nodes);
        while (!open.isEmpty() && !over.getAsBoolean() && filling.fillCheapest(open)) {
            open.removeIf(bench::isPlaced);
        }
        return bench.packing();
    }

    /** A bench with the pinned pieces and the matched sets on it. */
    private Bench started(Comparator<Piece> order) {
        Bench bench = new Bench(problem, homes);
        List<Piece> pieces = problem.pieces().stream().sorted(order).toList();
        placePinned(bench, pieces);
        SetFitting fitting = new SetFitting(bench, homes);
        TreeMap<String, List<Piece>> sets = new TreeMap<>();
        pieces.stream().filter(Piece::isMatched).forEach(piece -> sets.computeIfAbsent(
                        piece.matching().set(), name -> new ArrayList<>())
                .add(piece));
        Set<String> done = new HashSet<>();
        for (Piece piece : pieces) {
            String name = piece.matching().set();
            if (piece.isMatched() && done.add(name)) {
                fitting.place(sets.getOrDefault(name, List.of()));
            }
        }
        return bench;
    }

    private List<Piece> singles(Comparator<Piece> order, Bench bench) {
        return problem.pieces().stream()
                .filter(piece -> !piece.isMatched() && !bench.isPlaced(piece))
                .sorted(order)
                .toList();
    }

    private static Comparator<Piece> longestFirst() {
        return Comparator.comparing(Piece::cut).reversed().thenComparing(Piece::id);
    }

    private Packing better(Packing a, Packing b) {
        return prices.isBetter(b, a) ? b : a;
    }
}
