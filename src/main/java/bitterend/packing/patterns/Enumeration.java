package bitterend.packing.patterns;

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
                new SeveralRuns(kind, enough).run();
            }
            if (!all) {
                return false;
            }
        }
        return true;
    }

    List<Pattern> found() {
        return found;
    }

    private void single(Kind kind, long enough) {
        OneRun one = new OneRun(kind, 0, enough, kind.flat() && task.trimmable());
        one.descend(0, 0, 0);
        for (RunBest way : one.ways) {
            int size = way.items().length;
            found.add(Pattern.of(task, kind.index, new int[size], way.items(), way.counts(), size));
        }
    }

    /** Items without a price are taken along at the lowest price there is. */
    private long[] lifted() {
        long[] lifted = bound.price().clone();
        for (int i = 0; i < lifted.length; i++) {
            lifted[i] = Math.max(1, lifted[i]);
        }
        return lifted;
    }

    /** All ways to draw from one run that bring at least so much. */
    private final class OneRun {
        final Stretch run;
        final Order order;
        final Reach reach;
        final long enough;
        final boolean maximal;
        final int[] count;
        final List<RunBest> ways = new ArrayList<>();

        OneRun(Kind kind, int r, long enough, boolean maximal) {
            this.run = kind.runs[r];
            this.order = Order.of(kind.load, lifted(), task.demand, run.cap);
            this.reach = new Reach(order, run, pricer.hull(run), bound.scale());
            this.enough = enough;
            this.maximal = maximal;
            this.count = new int[order.size];
        }

        void descend(int from, long load, long worth) {
            if (!all || budget.spend(1)) {
                all = false;
                return;
            }
            if (load > 0) {
                long net = worth - bound.scale() * run.drop(load);
                if (net >= enough && (!maximal || maximal(load))) {
                    keep(net);
                }
            }
            long rest = run.cap - load;
            for (int u = from; u < order.size && all; u++) {
                if (order.shortest[u] > rest || reach.from(u, load, worth) < enough) {
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

        private void keep(long net) {
            if (found.size() + ways.size() >= most) {
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
            ways.add(new RunBest(net, items, counts));
        }
    }

    /** All ways to draw from a reel of several runs that bring at least so much. */
    private final class SeveralRuns {
        final Kind kind;
        final long enough;
        /** By run, best first. */
        final List<List<RunBest>> ways = new ArrayList<>();

        final long[] skip;
        final int[] left = task.demand.clone();
        final List<RunBest> chosen = new ArrayList<>();

        SeveralRuns(Kind kind, long enough) {
            this.kind = kind;
            this.enough = enough;
            skip = new long[kind.runs.length];
        }

        void run() {
            long[] price = bound.price();
            Pricer.Offers runs = new Pricer.Offers(0);
            long[] best = pricer.bestByRun(kind, price, bound.scale(), task.demand, budget, runs);
            all &= runs.safe;
            long before = -kind.opening * bound.scale();
            long[] loss = new long[best.length];
            long widest = Long.MIN_VALUE;
            for (int r = 0; r < best.length; r++) {
                skip[r] = -kind.runs[r].handling * bound.scale();
                loss[r] = before + best[r] - enough;
                before += Math.max(best[r], skip[r]);
                widest = Math.max(widest, loss[r]);
            }
            if (widest < 0) {
                return;
            }
            for (int r = 0; r < best.length && all; r++) {
                OneRun one = new OneRun(kind, r, best[r] - widest, false);
                if (best[r] > Pricer.LOW) {
                    one.descend(0, 0, 0);
                }
                one.ways.sort(Comparator.comparingLong(way -> -way.net()));
                ways.add(one.ways);
            }
            for (int last = 0; last < best.length && all; last++) {
                if (loss[last] >= 0) {
                    combine(0, last, -kind.opening * bound.scale(), best);
                }
            }
        }

        /** The most that runs from here to the last can add. */
        private long hope(int from, int last, long[] best) {
            long sum = 0;
            for (int r = from; r <= last; r++) {
                sum += r == last ? best[r] : Math.max(best[r], skip[r]);
            }
            return sum;
        }

        private void combine(int r, int last, long sum, long[] best) {
            if (!all || budget.spend(1)) {
                all = false;
                return;
            }
            if (r > last) {
                keep();
                return;
            }
            long rest = hope(r + 1, last, best);
            if (r < last && sum + skip[r] + rest >= enough) {
                chosen.add(RunBest.none(0));
                combine(r + 1, last, sum + skip[r], best);
                chosen.remove(chosen.size() - 1);
            }
            for (RunBest way : ways.get(r)) {
                if (sum + way.net() + rest < enough) {
                    return;
                }
                if (take(way, 1)) {
                    chosen.add(way);
                    combine(r + 1, last, sum + way.net(), best);
                    chosen.remove(chosen.size() - 1);
                }
                take(way, -1);
            }
        }

        /** Takes the pieces of a way, or gives them back; whether no piece is cut too often. */
        private boolean take(RunBest way, int times) {
            boolean within = true;
            for (int t = 0; t < way.items().length; t++) {
                left[way.items()[t]] -= times * way.counts()[t];
                within &= left[way.items()[t]] >= 0;
            }
            return within;
        }

        private void keep() {
            if (found.size() >= most) {
                all = false;
                return;
            }
            int size = 0;
            for (RunBest way : chosen) {
                size += way.items().length;
            }
            int[] runs = new int[size];
            int[] items = new int[size];
            int[] counts = new int[size];
            size = 0;
            for (int r = 0; r < chosen.size(); r++) {
                RunBest way = chosen.get(r);
                for (int t = 0; t < way.items().length; t++) {
                    runs[size] = r;
                    items[size] = way.items()[t];
                    counts[size++] = way.counts()[t];
                }
            }
            found.add(Pattern.of(task, kind.index, runs, items, counts, size));
        }
    }
}
