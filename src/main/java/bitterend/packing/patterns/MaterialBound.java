package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The bound that rope alone gives: no unit of load comes cheaper than from the cheapest kind. Known at once, however
 * many different lengths there are, and where they are many it is hard to beat.
 */
final class MaterialBound {
    private final Task task;
    private final Pricer pricer;
    private final List<Corner> corners = new ArrayList<>();

    MaterialBound(Task task, Pricer pricer) {
        this.task = task;
        this.pricer = pricer;
    }

    /** Prices in proportion to the load, as high as no reel is worth more than it costs. */
    Optional<Bound> bound(Leaving leaving, Budget budget) {
        if (leaving.mode() != Leaving.Mode.NEVER || task.ropes != 1) {
            return Optional.empty();
        }
        long[] price = task.kinds[0].load.clone();
        if (Arrays.stream(price).anyMatch(load -> load == Kind.NEVER)) {
            return Optional.empty();
        }
        long factor = factor(price);
        corners(factor);
        long scale = scale(factor, price);
        if (scale == 0) {
            return Optional.empty();
        }
        for (int i = 0; i < price.length; i++) {
            price[i] *= factor;
        }
        int[] supply = new int[task.kinds.length];
        for (Kind kind : task.kinds) {
            supply[kind.index] = kind.supply;
        }
        Pricer.Offers offers = pricer.price(price, scale, task.demand, new long[task.kinds.length], false, budget);
        return offers.safe
                ? new SafeBound(task, leaving)
                        .of(scale, price, 0, offers.net, task.demand, new int[supply.length], supply)
                : Optional.empty();
    }

    /** Units of price in a unit of load: as fine as the numbers allow. */
    private long factor(long[] load) {
        long all = 1;
        for (int i = 0; i < load.length; i++) {
            all += load[i] * task.demand[i];
        }
        for (Kind kind : task.kinds) {
            all += kind.longestCap();
        }
        return Math.max(1, (1L << 58) / Math.max(all, 1L << 38));
    }

    /** A way to draw from a kind: what it takes of load, in units of price, and what it costs. */
    private record Corner(int kind, long worth, long cost) {}

    private void corners(long factor) {
        for (Kind kind : task.kinds) {
            long load = 0;
            long cost = kind.opening;
            for (Stretch run : kind.runs) {
                Hull hull = pricer.hull(run);
                for (int s = 1; s < hull.load.length; s++) {
                    corners.add(new Corner(kind.index, factor * (load + hull.load[s]), cost + hull.drop[s]));
                }
                load += run.cap;
                cost += Math.min(run.handling, run.drop(run.cap));
            }
        }
    }

    /**
     * Units of price in a unit of cost: of those at which some way to draw is worth just what it costs, the one that
     * promises most. 0 where all reels are free.
     */
    private long scale(long factor, long[] load) {
        long all = 0;
        for (int i = 0; i < load.length; i++) {
            all += factor * load[i] * task.demand[i];
        }
        long best = 0;
        long bestSum = 0;
        for (Corner at : corners) {
            if (at.cost() == 0) {
                continue;
            }
            long scale = (at.worth() + at.cost() - 1) / at.cost();
            long sum = promise(all, scale);
            if (best == 0 || Exact.compareProducts(sum, best, bestSum, scale) > 0) {
                best = scale;
                bestSum = sum;
            }
        }
        return best;
    }

    private long promise(long all, long scale) {
        long[] net = new long[task.kinds.length];
        for (Corner corner : corners) {
            net[corner.kind()] = Math.max(net[corner.kind()], corner.worth() - scale * corner.cost());
        }
        long sum = all;
        for (Kind kind : task.kinds) {
            // A kind that could be drawn from for ever must not be worth more than it costs.
            long high = Math.multiplyHigh(net[kind.index], kind.supply);
            if (high != 0 || net[kind.index] * kind.supply < 0) {
                return Long.MIN_VALUE / 2;
            }
            sum = Math.max(Long.MIN_VALUE / 2, sum - net[kind.index] * kind.supply);
        }
        return sum;
    }
}
