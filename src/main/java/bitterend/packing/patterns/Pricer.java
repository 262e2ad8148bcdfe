package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.knapsack.Hull;
import bitterend.packing.patterns.knapsack.Hulls;
import bitterend.packing.patterns.knapsack.ItemsByDensity;
import bitterend.packing.patterns.knapsack.Knapsack;
import bitterend.packing.patterns.knapsack.KnapsackBound;
import bitterend.packing.patterns.knapsack.RunSolution;
import bitterend.packing.patterns.knapsack.SharedStates;
import bitterend.packing.patterns.knapsack.ValuedRun;
import java.util.ArrayList;
import java.util.List;

/**
 * For prices of the items, the best way to draw from one reel of every kind, in whole numbers.
 *
 * <p>Source: P. C. Gilmore, R. E. Gomory, "A linear programming approach to the cutting stock problem", Operations
 * Research 9 (1961) 849-859 and part II, Operations Research 11 (1963) 863-888.
 */
final class Pricer {
    static final long LOW = Long.MIN_VALUE / 8;
    private static final int EXTRA = 6;
    private static final long EXTRA_NODES = 1_000;
    private static final int SHARED_FROM = 3;

    private final Instance instance;
    private final Hulls hulls = new Hulls();
    /** Ropes with so many valued runs that one list of states for all of them is cheaper than a search for each. */
    private final boolean[] shared;

    private final long[] longest;

    /** What came out: for every kind the highest net anything can reach, and patterns that beat what was needed. */
    static final class Offers {
        final long[] reducedProfit;
        final List<Pattern> patterns = new ArrayList<>();
        /** False if some net may be below what exists: a hasty search that gave up. */
        boolean safe = true;

        Offers(int types) {
            reducedProfit = new long[types];
        }
    }

    Pricer(Instance instance) {
        this.instance = instance;
        int[] valued = new int[instance.ropes];
        longest = new long[instance.ropes];
        for (ReelType type : instance.types) {
            for (ValuedRun run : type.runs) {
                valued[type.rope] += run.flat() ? 0 : 1;
                longest[type.rope] = Math.max(longest[type.rope], run.cap);
            }
        }
        shared = new boolean[instance.ropes];
        for (int rope = 0; rope < instance.ropes; rope++) {
            shared[rope] = valued[rope] >= SHARED_FROM;
        }
    }

    Hull hull(ValuedRun run) {
        return hulls.of(run);
    }

    /**
     * @param price of each item, in {@code 1/scale} of a unit of cost
     * @param bound how many of each may be taken
     * @param need nets that do not exceed this are of no interest, by kind
     * @param heuristic gives up early: then the nets prove nothing
     */
    Offers price(long[] price, long scale, int[] bound, long[] need, boolean heuristic, Budget budget) {
        PricingProblem pricing = new PricingProblem(price, scale, bound, heuristic, budget);
        Offers offers = new Offers(instance.types.length);
        ItemsByDensity[] orders = new ItemsByDensity[instance.ropes];
        SharedStates[] lists = new SharedStates[instance.ropes];
        for (ReelType type : instance.types) {
            int rope = type.rope;
            if (orders[rope] == null) {
                orders[rope] = order(type, pricing);
                lists[rope] = states(type, pricing, orders[rope]);
            }
            RunSearch search = new RunSearch(type, pricing, orders[rope], lists[rope], hulls);
            offers.reducedProfit[type.index] = type.single()
                    ? single(search, need[type.index], offers)
                    : several(search, need[type.index], offers);
            offers.safe &= search.safe();
        }
        return offers;
    }

    private ItemsByDensity order(ReelType type, PricingProblem pricing) {
        return ItemsByDensity.of(type.load, pricing.price, pricing.bound, longest[type.rope]);
    }

    private SharedStates states(ReelType type, PricingProblem pricing, ItemsByDensity order) {
        return new SharedStates(shared[type.rope], order, longest[type.rope], pricing.budget);
    }

    private long single(RunSearch search, long need, Offers offers) {
        long opening = search.type.opening * search.pricing.scale;
        RunSolution best = search.best(0, need + opening);
        if (best.found()) {
            offers.patterns.add(ofOneRun(search.type, best.items(), best.counts()));
            if (search.pricing.heuristic && instance.types.length == 1) {
                more(search, need + opening, offers);
            }
        }
        return best.reducedProfit() - opening;
    }

    private Pattern ofOneRun(ReelType type, int[] items, int[] counts) {
        return Pattern.of(instance, type.index, new int[items.length], items, counts, items.length);
    }

    /** With one kind, patterns of other items as well: fewer rounds. */
    private void more(RunSearch search, long floor, Offers offers) {
        ReelType type = search.type;
        PricingProblem pricing = search.pricing;
        int[] left = pricing.bound.clone();
        ValuedRun run = type.runs[0];
        for (int extra = 0; extra < EXTRA; extra++) {
            for (int i : offers.patterns.get(offers.patterns.size() - 1).item) {
                left[i] = 0;
            }
            ItemsByDensity order = ItemsByDensity.of(type.load, pricing.price, left, run.cap);
            KnapsackBound reach = new KnapsackBound(order, run, hull(run), pricing.scale);
            Knapsack knapsack = new Knapsack(order, run, reach, pricing.scale, EXTRA_NODES);
            knapsack.search(floor);
            pricing.budget.spend(knapsack.nodes() + order.size);
            if (!knapsack.found()) {
                return;
            }
            offers.patterns.add(ofOneRun(type, knapsack.items(), knapsack.counts()));
        }
    }

    /** One column for a reel of several runs. */
    private long several(RunSearch search, long need, Offers offers) {
        JoinedRuns joined = new JoinedRuns(search);
        if (joined.reducedProfit() > need) {
            offers.patterns.add(joined.pattern(instance));
        }
        return joined.reducedProfit();
    }

    /** The most that every run of a kind can bring, {@link #LOW} where nothing fits. */
    long[] bestByRun(ReelType type, PricingProblem pricing, Offers offers) {
        ItemsByDensity order = order(type, pricing);
        RunSearch search = new RunSearch(type, pricing, order, states(type, pricing, order), hulls);
        long[] best = new long[type.runs.length];
        for (int r = 0; r < best.length; r++) {
            best[r] = search.best(r, LOW).reducedProfit();
        }
        offers.safe &= search.safe();
        return best;
    }
}
