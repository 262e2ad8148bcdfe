package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.patterns.knapsack.Hull;
import bitterend.packing.patterns.knapsack.ValuedRun;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The bound that rope alone gives: every item is priced in proportion to its load, by the rope on which it is cheapest.
 * Known at once, however many different lengths there are, and where they are many it is hard to beat; column
 * generation starts from its prices. {@code double} only to choose the prices; what they prove is worked out in whole
 * numbers.
 */
final class MaterialBound {
    private static final int ROUNDS = 3;
    private static final double BEYOND_ALL = 1e17;

    private final Instance instance;
    private final Pricer pricer;
    private final long[][] loads;
    private final long[] longest;
    private long[] reducedProfit = new long[0];

    MaterialBound(Instance instance, Pricer pricer) {
        this.instance = instance;
        this.pricer = pricer;
        loads = new long[instance.ropes][];
        longest = new long[instance.ropes];
        for (ReelType type : instance.types) {
            loads[type.rope] = type.load;
            longest[type.rope] = Math.max(longest[type.rope], type.longestCap());
        }
    }

    /** A way to draw from a kind: what it takes of load, and what it costs. */
    private record Corner(int type, long load, long cost) {
        double perLoad() {
            return (double) cost / load;
        }
    }

    /**
     * The bound, when reels cost anything and prices are found in time.
     *
     * @param scale units of price in one unit of cost
     */
    Optional<Bound> bound(Rejection rejection, long scale, Budget budget) {
        if (rejection.mode() == Rejection.Mode.PRICED) {
            return Optional.empty();
        }
        long[] price = prices(scale);
        if (Arrays.stream(price).allMatch(each -> each == 0)) {
            return Optional.empty();
        }
        int[] supply = new int[instance.types.length];
        for (ReelType type : instance.types) {
            supply[type.index] = type.supply;
        }
        Pricer.Offers offers = pricer.price(price, scale, instance.demand, new long[supply.length], false, budget);
        if (!offers.safe) {
            return Optional.empty();
        }
        reducedProfit = offers.reducedProfit;
        long mu = rejection.mode() == Rejection.Mode.NEVER ? 0 : unplannedPrice(price, rejection.weight());
        return new SafeBound(instance, rejection)
                .of(scale, price, mu, reducedProfit, instance.demand, new int[supply.length], supply);
    }

    /** What the best way to draw from each kind brings above its cost, at the prices of the bound. */
    long[] reducedProfit() {
        return reducedProfit;
    }

    /** What fits nowhere is priced beyond all: it is left out in any case. */
    private long[] prices(long scale) {
        double[] perLoad = perLoad();
        long[] price = new long[instance.items];
        for (int i = 0; i < price.length; i++) {
            price[i] = (long) Math.floor(Math.min(least(i, perLoad) * scale, BEYOND_ALL));
        }
        return price;
    }

    /**
     * For every rope the price of a unit of load. First one price for all ropes, then one rope after another: of the
     * prices at which some way to draw is worth just what it costs, the one that promises most.
     */
    private double[] perLoad() {
        List<Corner> corners = new ArrayList<>();
        for (ReelType type : instance.types) {
            corners(type, corners);
        }
        double[] perLoad = new double[instance.ropes];
        double[] all = corners.stream()
                .mapToDouble(Corner::perLoad)
                .sorted()
                .distinct()
                .toArray();
        Arrays.fill(perLoad, highest(all, price -> {
            Arrays.fill(perLoad, price);
            return promise(perLoad, corners);
        }));
        for (int round = 0; round < ROUNDS && instance.ropes > 1; round++) {
            for (int rope = 0; rope < instance.ropes; rope++) {
                perLoad[rope] = ofRope(rope, perLoad.clone(), corners);
            }
        }
        return perLoad;
    }

    private double ofRope(int rope, double[] perLoad, List<Corner> corners) {
        double[] candidates = corners.stream()
                .filter(corner -> instance.types[corner.type()].rope == rope)
                .mapToDouble(Corner::perLoad)
                .sorted()
                .distinct()
                .toArray();
        double before = perLoad[rope];
        double promised = promise(perLoad, corners);
        double better = highest(candidates, price -> {
            perLoad[rope] = price;
            return promise(perLoad, corners);
        });
        perLoad[rope] = better;
        return promise(perLoad, corners) > promised ? better : before;
    }

    private void corners(ReelType type, List<Corner> corners) {
        long load = 0;
        long cost = type.opening;
        for (ValuedRun run : type.runs) {
            Hull hull = pricer.hull(run);
            for (int s = 1; s < hull.load.length; s++) {
                corners.add(new Corner(type.index, load + hull.load[s], cost + hull.drop[s]));
            }
            load += run.cap;
            cost += Math.min(run.handling, run.drop(run.cap));
        }
    }

    /** What prices in proportion to the load would prove if reels could be drawn to the last bit. */
    private double promise(double[] perLoad, List<Corner> corners) {
        double[] most = new double[instance.types.length];
        for (Corner corner : corners) {
            double price = perLoad[instance.types[corner.type()].rope];
            most[corner.type()] = Math.max(most[corner.type()], price * corner.load() - corner.cost());
        }
        double sum = 0;
        for (int i = 0; i < instance.items; i++) {
            double least = least(i, perLoad);
            sum += least == Double.MAX_VALUE ? 0 : least * instance.demand[i];
        }
        for (ReelType type : instance.types) {
            sum -= most[type.index] * type.supply;
        }
        return sum;
    }

    /** The price of an item on the rope where it is cheapest. */
    private double least(int i, double[] perLoad) {
        double least = Double.MAX_VALUE;
        for (int rope = 0; rope < perLoad.length; rope++) {
            if (loads[rope] != null && loads[rope][i] <= longest[rope]) {
                least = Math.min(least, perLoad[rope] * loads[rope][i]);
            }
        }
        return least;
    }

    /** Of rising candidates the one where a function that first rises and then falls is highest; 0 where there is none. */
    private static double highest(double[] candidates, ToDoubleFunction<Double> function) {
        int low = 0;
        int high = candidates.length - 1;
        while (low < high) {
            int middle = (low + high) / 2;
            if (function.applyAsDouble(candidates[middle]) < function.applyAsDouble(candidates[middle + 1])) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return candidates.length == 0 ? 0 : candidates[low];
    }

    /** The price of a unit of weight left out that proves most, where so much weight may be left out. */
    private long unplannedPrice(long[] price, long weight) {
        double[] ratios = new double[price.length];
        for (int i = 0; i < ratios.length; i++) {
            ratios[i] = Math.ceil((double) price[i] / instance.weight[i]);
        }
        double[] candidates = Arrays.stream(ratios).sorted().distinct().toArray();
        return (long) highest(candidates, mu -> {
            double sum = -mu * (double) weight;
            for (int i = 0; i < price.length; i++) {
                sum += Math.min((double) price[i], mu * (double) instance.weight[i]) * instance.demand[i];
            }
            return sum;
        });
    }
}
