package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.knapsack.ItemsByDensity;
import bitterend.packing.patterns.knapsack.KnapsackBound;
import bitterend.packing.patterns.knapsack.Reach;
import bitterend.packing.patterns.knapsack.RoomTable;
import bitterend.packing.patterns.knapsack.RunSolution;
import bitterend.packing.patterns.knapsack.ValuedRun;
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
    private final Instance instance;
    private final Pricer pricer;
    private final Bound bound;
    private final Budget budget;
    private final FoundPatterns found;

    /** @param most patterns before giving up */
    Enumeration(Instance instance, Pricer pricer, Bound bound, int most, Budget budget) {
        this.instance = instance;
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
        long[] need = new long[instance.types.length];
        for (int k = 0; k < need.length; k++) {
            need[k] = least[k] > 0 ? Pricer.LOW : 0;
        }
        Pricer.Offers offers = pricer.price(bound.price(), scale, instance.demand, need, false, budget);
        if (!offers.safe || budget.over()) {
            return false;
        }
        long distance = Math.subtractExact(Math.multiplyExact(target, scale), bound.numerator());
        for (ReelType type : instance.types) {
            long reducedProfit = offers.reducedProfit[type.index];
            long enough = (least[type.index] > 0 ? reducedProfit : Math.max(0, reducedProfit)) - distance;
            if (type.single()) {
                single(type, enough + type.opening * scale);
            } else {
                several(type, enough);
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

    private void single(ReelType type, long enough) {
        for (RunSolution way : ways(type, 0, enough, type.flat() && instance.trimmable())) {
            int size = way.items().length;
            found.add(Pattern.of(instance, type.index, new int[size], way.items(), way.counts(), size));
        }
    }

    private void several(ReelType type, long enough) {
        PricingProblem pricing = new PricingProblem(bound.price(), bound.scale(), instance.demand, false, budget);
        Pricer.Offers runs = new Pricer.Offers(0);
        long[] best = pricer.bestByRun(type, pricing, runs);
        if (!runs.safe) {
            found.giveUp();
        }
        ReelEnumeration reel = new ReelEnumeration(instance, type, bound.scale(), best, enough, found);
        long widest = reel.widest();
        if (widest < 0) {
            return;
        }
        List<List<RunSolution>> byRun = new ArrayList<>();
        for (int r = 0; r < best.length && found.all(); r++) {
            List<RunSolution> ways = best[r] > Pricer.LOW ? ways(type, r, best[r] - widest, false) : new ArrayList<>();
            ways.sort(Comparator.comparingLong(way -> -way.reducedProfit()));
            byRun.add(ways);
        }
        reel.join(byRun);
    }

    /** All ways to draw from one run that bring at least so much. */
    private List<RunSolution> ways(ReelType type, int r, long enough, boolean maximal) {
        ValuedRun run = type.runs[r];
        ItemsByDensity order = ItemsByDensity.of(type.load, lifted(), instance.demand, run.cap);
        Reach reach = RoomTable.of(order, run, budget)
                .<Reach>map(table -> table)
                .orElseGet(() -> new KnapsackBound(order, run, pricer.hull(run), bound.scale()));
        return new RunEnumeration(run, order, reach, bound.scale(), enough, maximal, found).find();
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
