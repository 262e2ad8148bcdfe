package bitterend.packing.greedy;

import bitterend.demand.Piece;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.bench.Insertion;
import bitterend.packing.bench.Insertion.Choice;
import bitterend.packing.bench.RackState;
import bitterend.packing.bench.Workbench;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;

/**
 * Several quick ways to pack a day, the best of which is the start of everything later. Pinned pieces go first, then
 * matched sets, then single pieces: each where it costs least (best fit by price), or reel by reel, each filled as full
 * as can be. Where that leaves work undone, sets and single pieces are also ranked together, class by class.
 */
public final class GreedyPacker {
    private static final int FILLING_UP_TO = 1_200;
    private static final long FILLING_NODES = 4_000_000;

    private final Workbench bench;
    private final PlanPrice prices;
    private final List<Job> jobs;
    private final List<Job> longestFirst;

    public GreedyPacker(PackingProblem problem) {
        this(new Workbench(problem));
    }

    public GreedyPacker(Workbench bench) {
        this.bench = bench;
        prices = bench.prices();
        jobs = Job.of(bench);
        longestFirst = jobs.stream()
                .sorted(Comparator.comparing((Job job) -> longest(job).cut())
                        .reversed()
                        .thenComparing(job -> longest(job).id()))
                .toList();
    }

    private Piece longest(Job job) {
        return bench.piece(bench.piecesOf(job.number())[0]);
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
        Packing best = bestFit();
        List<Packing> others = new ArrayList<>();
        if (!prices.undone(best).isNone()) {
            rankings().stream()
                    .takeWhile(ranking -> others.isEmpty() || !over.getAsBoolean())
                    .forEach(ranking -> others.add(ranked(ranking)));
        }
        if (bench.pieces() <= FILLING_UP_TO) {
            others.add(reelByReel(over));
        }
        for (Packing other : others) {
            best = better(best, other);
        }
        return best;
    }

    /** Longest piece first, each on the run where it costs least. */
    public Packing bestFit() {
        return fit(Choice.CHEAPEST_EACH);
    }

    /** Longest piece first, each on the first run by reel id that has room; the rule of thumb to beat. */
    public Packing firstFit() {
        return fit(Choice.FIRST);
    }

    private Packing fit(Choice choice) {
        RackState rack = started();
        place(rack, singles(rack), choice);
        return rack.packing();
    }

    /** Sets and single pieces ranked together, for a rack that is too short: class by class, but for the last. */
    private List<Comparator<Job>> rankings() {
        Comparator<Job> fewestHomes = Comparator.comparingInt(
                job -> bench.byId().of(bench.numberOf(job.first().id())).length);
        return List.of(
                Job.DENSEST,
                Job.LONGEST,
                Job.SHORTEST,
                Job.FIRST_DUE,
                Job.HEAVIEST,
                Job.byClass(fewestHomes.thenComparing(
                        Comparator.comparingLong(Job::cut).reversed())),
                Job.setsLast());
    }

    private Packing ranked(Comparator<Job> ranking) {
        RackState rack = withPinned(jobs);
        place(rack, jobs.stream().sorted(ranking).toList(), Choice.CHEAPEST_EACH);
        return rack.packing();
    }

    /** What is begun when time is up is left as it is. */
    private Packing reelByReel(BooleanSupplier over) {
        RackState rack = started();
        List<Integer> open = new ArrayList<>(singles(rack).stream()
                .map(job -> bench.numberOf(job.first().id()))
                .toList());
        int nodes = (int) Math.max(200, FILLING_NODES / Math.max(1, bench.runs() * (long) open.size()));
        ReelFilling filling = new ReelFilling(bench, rack, nodes);
        while (!open.isEmpty() && !over.getAsBoolean() && filling.fillCheapest(open)) {
            open.removeIf(rack::isPlanned);
        }
        return rack.packing();
    }

    /** A rack with the pinned pieces and the matched sets on it. */
    private RackState started() {
        RackState rack = withPinned(longestFirst);
        place(rack, longestFirst.stream().filter(Job::isSet).toList(), Choice.CHEAPEST_EACH);
        return rack;
    }

    private RackState withPinned(List<Job> order) {
        RackState rack = new RackState(bench);
        place(
                rack,
                order.stream()
                        .filter(job -> !job.isSet() && bench.isPinned(job.number()))
                        .toList(),
                Choice.CHEAPEST_EACH);
        return rack;
    }

    /** Places what is not placed yet and finds room, one job after the other. */
    private void place(RackState rack, List<Job> order, Choice choice) {
        Insertion insertion = new Insertion(rack, bench.byId());
        for (Job job : order) {
            if (!rack.isJobPlanned(job.number())) {
                insertion.insert(job.number(), choice);
            }
        }
    }

    private List<Job> singles(RackState rack) {
        return longestFirst.stream()
                .filter(job -> !job.isSet() && !rack.isJobPlanned(job.number()))
                .toList();
    }

    private Packing better(Packing a, Packing b) {
        return prices.isBetter(b, a) ? b : a;
    }
}
