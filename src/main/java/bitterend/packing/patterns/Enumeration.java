package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;

/**
 * Every pattern that a plan below a target can use at all: those whose reduced cost, by whole prices that prove a
 * bound, is at most the distance from that bound to the target. Where the rest of a run is worthless, patterns that
 * something could be added to are left out, since a piece cut once too often costs nothing.
 *
 * <p>Source: R. Baldacci, S. Coniglio, J.-F. Cordeau, F. Furini, "A numerically exact algorithm for the bin-packing
 * problem", INFORMS Journal on Computing 36 (2023) 141-162; reduced cost fixing in general: G. Dantzig, R. Fulkerson,
 * S. Johnson, "Solution of a large-scale traveling-salesman problem", Operations Research 2 (1954) 393-410.
 */
final class Enumeration {
    private final Task task;
    private final Pricer pricer;
    private final Bound bound;
    private final int most;
    private final Budget budget;
    private final List<Pattern> found = new ArrayList<>();
    private boolean all = true;

    /** @param most patterns before giving up */
    Enumeration(Task task, Pricer pricer, Bound bound, int most, Budget budget) {
        this.task = task;
        this.pricer = pricer;
        this.bound = bound;
        this.most = most;
        this.budget = budget;
    }

    /**
     * Looks for all patterns of plans that cost at most {@code target}.
     *
     * @return false when there are too many of them, or the budget ended
     */
    boolean run(long target) {
        long scale = bound.scale();
        Pricer.Offers offers =
                pricer.price(bound.price(), scale, task.demand, new long[task.kinds.length], false, budget);
        if (!offers.safe || budget.over()) {
            return false;
        }
        long distance = Math.subtractExact(Math.multiplyExact(target, scale), bound.numerator());
        for (Kind kind : task.kinds) {
            long least = Math.max(0, offers.net[kind.index]) - distance;
            if (kind.single()) {
                Order order = Order.of(kind.load, lifted(bound.price()), task.demand, kind.longestCap());
                new OneRun(kind, order, least + kind.opening * scale).descend(0, 0, 0);
            } else {
                all = false;
            }
            if (!all) {
                return false;
            }
        }
        return true;
    }

    /** Items without a price are taken along at the lowest price there is. */
    private static long[] lifted(long[] price) {
        long[] lifted = price.clone();
        for (int i = 0; i < lifted.length; i++) {
            lifted[i] = Math.max(1, lifted[i]);
        }
        return lifted;
    }

    List<Pattern> found() {
        return found;
    }

    /** All patterns of one run that bring at least so much. */
    private final class OneRun {
        final Kind kind;
        final Stretch run;
        final Order order;
        final Reach reach;
        final long least;
        final int[] count;

        OneRun(Kind kind, Order order, long least) {
            this.kind = kind;
            this.run = kind.runs[0];
            this.order = order;
            this.reach = new Reach(order, run, pricer.hull(run), bound.scale());
            // Lifted prices add at most one for every piece of the longest run.
            this.least = least;
            this.count = new int[order.size];
        }

        void descend(int from, long load, long worth) {
            if (!all || budget.spend(1)) {
                all = false;
                return;
            }
            if (load > 0 && worth - bound.scale() * run.drop(load) >= least && (!run.flat() || maximal(load))) {
                keep();
            }
            long rest = run.cap - load;
            for (int u = from; u < order.size && all; u++) {
                if (order.shortest[u] > rest || reach.from(u, load, worth) < least) {
                    return;
                }
                long each = order.load[u];
                for (int c = (int) Math.min(order.bound[u], rest / each); c > 0; c--) {
                    count[u] = c;
                    descend(u + 1, load + c * each, worth + c * order.worth[u]);
                }
                count[u] = 0;
            }
        }

        private boolean maximal(long load) {
            long rest = run.cap - load;
            for (int u = 0; u < order.size; u++) {
                if (order.load[u] <= rest && count[u] < order.bound[u]) {
                    return false;
                }
            }
            return true;
        }

        private void keep() {
            if (found.size() >= most) {
                all = false;
                return;
            }
            int size = 0;
            for (int c : count) {
                size += c > 0 ? 1 : 0;
            }
            int[] items = new int[size];
            int[] counts = new int[size];
            size = 0;
            for (int u = 0; u < count.length; u++) {
                if (count[u] > 0) {
                    items[size] = order.item[u];
                    counts[size++] = count[u];
                }
            }
            found.add(Pattern.of(task, kind.index, new int[size], items, counts, size));
        }
    }
}
