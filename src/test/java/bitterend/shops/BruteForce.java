package bitterend.shops;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.RunId;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Tries every way to cut a tiny shop: the least work left undone, and then the least cost. */
public final class BruteForce {
    private final PackingProblem problem;
    private final Bench bench;
    private final List<RunId> runs;
    private final Map<RunId, Long> used = new HashMap<>();
    private final Map<String, RunId> places = new HashMap<>();
    private final boolean weightFirst;
    private final Urgency urgency;
    private Best best = new Best(Undone.of(1, Long.MAX_VALUE), new Cost(Long.MAX_VALUE), Packing.EMPTY);

    private BruteForce(PackingProblem problem, boolean weightFirst) {
        this.problem = problem;
        this.weightFirst = weightFirst;
        bench = new Bench(problem);
        urgency = new Urgency(problem);
        runs = bench.runs();
    }

    /**
     * A best packing.
     *
     * @param undone the work left undone
     * @param cost its true price
     * @param packing one of the packings that reach both
     */
    public record Best(Undone undone, Cost cost, Packing packing) {}

    /** The optimum; for shops of {@link ShopSize#TINY}. */
    public static Best best(PackingProblem problem) {
        BruteForce force = new BruteForce(problem, true);
        force.place(0, Undone.NONE);
        return force.best;
    }

    /** The cheapest packing among all that leave no more than this undone in any class; there must be one. */
    public static Best cheapest(PackingProblem problem, Undone most) {
        BruteForce force = new BruteForce(problem, false);
        force.best = new Best(most, new Cost(Long.MAX_VALUE), Packing.EMPTY);
        force.place(0, Undone.NONE);
        return force.best;
    }

    private void place(int next, Undone undone) {
        if (weightFirst ? best.undone().isLessThan(undone) : !undone.isWithin(best.undone())) {
            return;
        }
        if (next == problem.pieces().size()) {
            weigh(undone);
            return;
        }
        Piece piece = problem.pieces().get(next);
        for (RunId at : runs) {
            if (bench.allows(piece, bench.reel(at.reel()))
                    && used.getOrDefault(at, 0L) + bench.need(piece, at) <= bench.room(at)) {
                used.merge(at, bench.need(piece, at), Long::sum);
                places.put(piece.id(), at);
                place(next + 1, undone);
                places.remove(piece.id());
                used.merge(at, -bench.need(piece, at), Long::sum);
            }
        }
        place(next + 1, undone.plus(urgency.of(piece)));
    }

    private void weigh(Undone undone) {
        Packing packing = new Packing(places);
        if (!bench.keepsSets(packing)) {
            return;
        }
        Cost cost = PlanWriter.cost(problem, packing);
        if ((weightFirst && undone.isLessThan(best.undone())) || cost.compareTo(best.cost()) < 0) {
            best = new Best(weightFirst ? undone : best.undone(), cost, packing);
        }
    }
}
