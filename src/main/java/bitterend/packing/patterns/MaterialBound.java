package bitterend.packing.patterns;

import java.util.Arrays;
import java.util.Optional;

/**
 * The bound that rope alone gives: no unit of load comes cheaper than from the cheapest kind. Known at once, however
 * many different lengths there are, and where they are many it is hard to beat.
 */
final class MaterialBound {
    private final Task task;
    private final Pricer pricer;

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
        long scale = scale(factor);
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

    /** Units of price in a unit of cost, so many that no reel is worth more than it costs; 0 where reels are free. */
    private long scale(long factor) {
        long scale = 1;
        for (Kind kind : task.kinds) {
            long load = 0;
            long cost = kind.opening;
            for (Stretch run : kind.runs) {
                Hull hull = pricer.hull(run);
                for (int s = 1; s < hull.load.length; s++) {
                    long price = cost + hull.drop[s];
                    if (price == 0) {
                        return 0;
                    }
                    scale = Math.max(scale, (factor * (load + hull.load[s]) + price - 1) / price);
                }
                load += run.cap;
                cost += Math.min(run.handling, run.drop(run.cap));
            }
        }
        return scale;
    }
}
