package bitterend.packing.patterns;

import bitterend.packing.linear.Budget;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Every pattern that a plan below a target can use at all: those whose reduced cost, by whole prices that prove a
 * bound, is at most the distance from that bound to the target. Where the rest of a reel is worthless and a piece cut
 * once too often costs nothing, patterns that something could be added to are left out.
 *
 * <p>Source: R. Baldacci, S. Coniglio, J.-F. Cordeau, F. Furini, "A numerically exact algorithm for the bin-packing
 * problem", INFORMS Journal on Computing 36 (2024) 141-162; fixing by reduced cost in general: G. Dantzig, R.
 * Fulkerson, S. Johnson, "Solution of a large-scale traveling-salesman problem", Operations Research 2 (1954) 393-410.
 */
final class Enumeration {
    private final Task task;
    private final Pricer pricer;
    private final Bound bound;
    private final Budget budget;
    private final FoundPatterns found;

    /** @param most patterns before giving up */
    Enumeration(Task task, Pricer pricer, Bound bound, int most, Budget budget) {
        this.task = task;
        this.pricer = pricer;
        this.bound = bound;
        this.budget = budget;
        found = new FoundPatterns(most, budget);
    }

    /**
     * Looks for all patterns of plans that cost at most {@code target}.
     *
     * @param least reels of each kind that the plans use at least
     * @return false when there are too many of them, or the budget ended
     */
    boolean run(long target, int[] least) {
        long scale = bound.scale();
        long[] need = new long[task.kinds.length];
        for (int k = 0; k < need.length; k++) {
            need[k] = least[k] > 0 ? Pricer.LOW : 0;
        }
        Pricer.Offers offers = pricer.price(bound.price(), scale, task.demand, need, false, budget);
        if (!offers.safe || budget.over()) {
            return false;
        }
        long distance = Math.subtractExact(Math.multiplyExact(target, scale), bound.numerator());
        for (Kind kind : task.kinds) {
            long net = offers.net[kind.index];
            long enough = (least[kind.index] > 0 ? net : Math.max(0, net)) - distance;
            if (kind.single()) {
                single(kind, enough + kind.opening * scale);
            } else {
                several(kind, enough);
            }
            if (!found.all()) {
                return false;
            }
        }
        return true;
    }

    List<Pattern> found() {
        return found.patterns();
    }

    private void single(Kind kind, long enough) {
        for (RunBest way : ways(kind, 0, enough, kind.flat() && task.trimmable())) {
            int size = way.items().length;
            found.add(Pattern.of(task, kind.index, new int[size], way.items(), way.counts(), size));
        }
    }

    private void several(Kind kind, long enough) {
        Question question = new Question(bound.price(), bound.scale(), task.demand, false, budget);
        Pricer.Offers runs = new Pricer.Offers(0);
        long[] best = pricer.bestByRun(kind, question, runs);
        if (!runs.safe) {
            found.giveUp();
        }
        ReelWays reel = new ReelWays(task, kind, bound.scale(), best, enough, found);
        long widest = reel.widest();
        if (widest < 0) {
            return;
        }
        List<List<RunBest>> byRun = new ArrayList<>();
        for (int r = 0; r < best.length && found.all(); r++) {
            List<RunBest> ways = best[r] > Pricer.LOW ? ways(kind, r, best[r] - widest, false) : new ArrayList<>();
            ways.sort(Comparator.comparingLong(way -> -way.net()));
            byRun.add(ways);
        }
        reel.join(byRun);
    }

    /** All ways to draw from one run that bring at least so much. */
    private List<RunBest> ways(Kind kind, int r, long enough, boolean maximal) {
        Stretch run = kind.runs[r];
        Order order = Order.of(kind.load, lifted(), task.demand, run.cap);
        Reach reach = new Reach(order, run, pricer.hull(run), bound.scale());
        return new RunWays(run, order, reach, bound.scale(), enough, maximal, found).find();
    }

    /** Items without a price are taken along at the lowest price there is. */
    private long[] lifted() {
        long[] lifted = bound.price().clone();
        for (int i = 0; i < lifted.length; i++) {
            lifted[i] = Math.max(1, lifted[i]);
        }
        return lifted;
    }
}
