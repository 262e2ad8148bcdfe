package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * For prices of the items, the best way to draw from one reel of every kind, in whole numbers.
 *
 * <p>Source: P. C. Gilmore, R. E. Gomory, "A linear programming approach to the cutting stock problem", Operations
 * Research 9 (1961) 849-859 and part II, Operations Research 11 (1963) 863-888.
 */
final class Pricer {
    static final long LOW = Long.MIN_VALUE / 8;
    private static final long HASTY_NODES = 3_000;
    private static final long PATIENT_NODES = 40_000;
    private static final int EXTRA = 6;
    private static final long EXTRA_NODES = 1_000;
    private static final int STATES = 3_000_000;
    private static final int SHARED_FROM = 3;

    private final Task task;
    private final Map<Stretch, Hull> hulls = new HashMap<>();
    /** Ropes with so many valued runs that one list of states for all of them is cheaper than a search for each. */
    private final boolean[] shared;

    private final long[] longest;

    /** What came out: for every kind the highest net anything can reach, and patterns that beat what was needed. */
    static final class Offers {
        final long[] net;
        final List<Pattern> patterns = new ArrayList<>();
        /** False if some net may be below what exists: a hasty search that gave up. */
        boolean safe = true;

        Offers(int kinds) {
            net = new long[kinds];
        }
    }

    Pricer(Task task) {
        this.task = task;
        int[] valued = new int[task.ropes];
        longest = new long[task.ropes];
        for (Kind kind : task.kinds) {
            for (Stretch run : kind.runs) {
                valued[kind.rope] += run.flat() ? 0 : 1;
                longest[kind.rope] = Math.max(longest[kind.rope], run.cap);
            }
        }
        shared = new boolean[task.ropes];
        for (int rope = 0; rope < task.ropes; rope++) {
            shared[rope] = valued[rope] >= SHARED_FROM;
        }
    }

    Hull hull(Stretch run) {
        return hulls.computeIfAbsent(run, Hull::of);
    }

    /**
     * @param price of each item, in {@code 1/scale} of a unit of cost
     * @param bound how many of each may be taken
     * @param need nets that do not exceed this are of no interest, by kind
     * @param hasty gives up early: then the nets prove nothing
     */
    Offers price(long[] price, long scale, int[] bound, long[] need, boolean hasty, Budget budget) {
        Offers offers = new Offers(task.kinds.length);
        Order[] orders = new Order[task.ropes];
        Shared[] lists = new Shared[task.ropes];
        for (Kind kind : task.kinds) {
            if (orders[kind.rope] == null) {
                orders[kind.rope] = Order.of(kind.load, price, bound, longest[kind.rope]);
                lists[kind.rope] = new Shared(orders[kind.rope], longest[kind.rope], budget);
            }
            Search search = new Search(kind, orders[kind.rope], lists[kind.rope], price, scale, bound, hasty, budget);
            offers.net[kind.index] = kind.single()
                    ? single(search, need[kind.index], offers)
                    : several(search, need[kind.index], offers);
            offers.safe &= search.safe;
        }
        return offers;
    }

    /** One list of states for all runs of a rope, made when first asked for. */
    private static final class Shared {
        private final Order order;
        private final long cap;
        private final Budget budget;
        private @Nullable StateList list;
        private boolean tried;

        Shared(Order order, long cap, Budget budget) {
            this.order = order;
            this.cap = cap;
            this.budget = budget;
        }

        /** Null when there are too many states. */
        @Nullable
        StateList list() {
            if (!tried) {
                tried = true;
                StateList made = new StateList(order, cap, STATES);
                list = made.build((next, load, worth) -> false, budget) ? made : null;
            }
            return list;
        }
    }

    private long single(Search search, long need, Offers offers) {
        long opening = search.kind.opening * search.scale;
        RunBest best = search.run(0, need + opening);
        if (best.found()) {
            int[] runs = new int[best.items().length];
            offers.patterns.add(
                    Pattern.of(task, search.kind.index, runs, best.items(), best.counts(), best.items().length));
            if (search.hasty && task.kinds.length == 1) {
                more(search, need + opening, offers);
            }
        }
        return best.net() - opening;
    }

    /** With one kind, patterns of other items as well: fewer rounds. */
    private void more(Search search, long floor, Offers offers) {
        int[] left = search.bound.clone();
        Stretch run = search.kind.runs[0];
        for (int extra = 0; extra < EXTRA; extra++) {
            for (int i : offers.patterns.get(offers.patterns.size() - 1).item) {
                left[i] = 0;
            }
            Order order = Order.of(search.kind.load, search.price, left, run.cap);
            Reach reach = new Reach(order, run, hull(run), search.scale);
            Knapsack knapsack = new Knapsack(order, run, reach, search.scale, EXTRA_NODES);
            knapsack.search(floor);
            search.budget.spend(knapsack.nodes() + order.size);
            if (!knapsack.found()) {
                return;
            }
            int size = knapsack.items().length;
            offers.patterns.add(
                    Pattern.of(task, search.kind.index, new int[size], knapsack.items(), knapsack.counts(), size));
        }
    }

    /** One column for a reel of several runs: runs before the last drawn one are drawn or cut off. */
    private long several(Search search, long need, Offers offers) {
        Kind kind = search.kind;
        long before = -kind.opening * search.scale;
        long best = LOW;
        int last = -1;
        RunBest[] bests = new RunBest[kind.runs.length];
        for (int r = 0; r < bests.length; r++) {
            bests[r] = search.run(r, LOW);
            if (bests[r].net() > LOW && before + bests[r].net() > best) {
                best = before + bests[r].net();
                last = r;
            }
            before += Math.max(bests[r].net(), -kind.runs[r].handling * search.scale);
        }
        if (best > need) {
            offers.patterns.add(joined(search, bests, last));
        }
        return best;
    }

    /** The most that every run of a kind can bring, {@link #LOW} where nothing fits. */
    long[] bestByRun(Kind kind, long[] price, long scale, int[] bound, Budget budget, Offers offers) {
        Order order = Order.of(kind.load, price, bound, longest[kind.rope]);
        Search search = new Search(
                kind, order, new Shared(order, longest[kind.rope], budget), price, scale, bound, false, budget);
        long[] best = new long[kind.runs.length];
        for (int r = 0; r < best.length; r++) {
            best[r] = search.run(r, LOW).net();
        }
        offers.safe &= search.safe;
        return best;
    }

    private Pattern joined(Search search, RunBest[] bests, int last) {
        int[] left = search.bound.clone();
        int most = 0;
        for (int r = 0; r <= last; r++) {
            most += bests[r].items().length;
        }
        int[] runs = new int[most];
        int[] items = new int[most];
        int[] counts = new int[most];
        int size = 0;
        for (int r = 0; r <= last; r++) {
            if (r < last && bests[r].net() <= -search.kind.runs[r].handling * search.scale) {
                continue;
            }
            for (int t = 0; t < bests[r].items().length; t++) {
                int item = bests[r].items()[t];
                int count = Math.min(left[item], bests[r].counts()[t]);
                left[item] -= count;
                runs[size] = r;
                items[size] = item;
                counts[size++] = count;
            }
        }
        return Pattern.of(task, search.kind.index, runs, items, counts, size);
    }

    /** The search on one kind. */
    private final class Search {
        final Kind kind;
        final Order order;
        final Shared list;
        final long[] price;
        final long scale;
        final int[] bound;
        final boolean hasty;
        final Budget budget;
        boolean safe = true;

        Search(
                Kind kind,
                Order order,
                Shared list,
                long[] price,
                long scale,
                int[] bound,
                boolean hasty,
                Budget budget) {
            this.kind = kind;
            this.order = order;
            this.list = list;
            this.price = price;
            this.scale = scale;
            this.bound = bound;
            this.hasty = hasty;
            this.budget = budget;
        }

        RunBest run(int r, long floor) {
            Stretch run = kind.runs[r];
            RunBest best = searched(run, floor);
            return best.found() && best.net() >= 0 ? best : worthless(run, best);
        }

        /** Where nothing brings more than it costs, a run may still be drawn for a piece of no price: the shortest. */
        private RunBest worthless(Stretch run, RunBest best) {
            int shortest = -1;
            for (int i = 0; i < price.length; i++) {
                if (price[i] <= 0
                        && bound[i] > 0
                        && kind.load[i] <= run.cap
                        && (shortest < 0 || kind.load[i] < kind.load[shortest])) {
                    shortest = i;
                }
            }
            if (shortest < 0) {
                return best;
            }
            long net = -scale * run.drop(kind.load[shortest]);
            return net > best.net() ? new RunBest(net, new int[] {shortest}, new int[] {1}) : best;
        }

        private RunBest searched(Stretch run, long floor) {
            Reach reach = new Reach(order, run, hull(run), scale);
            long nodes = hasty ? HASTY_NODES : list.tried ? 1 : PATIENT_NODES;
            Knapsack knapsack = new Knapsack(order, run, reach, scale, nodes);
            boolean complete = knapsack.search(floor);
            budget.spend(knapsack.nodes());
            if (complete || hasty) {
                safe &= complete;
                return new RunBest(knapsack.best(), knapsack.items(), knapsack.counts());
            }
            StateList all = shared[kind.rope] ? list.list() : null;
            if (all != null) {
                return readOff(all, run, floor);
            }
            long best = knapsack.best();
            StateList states = new StateList(order, run.cap, STATES);
            if (!states.build((next, load, worth) -> reach.from(next, load, worth) <= best, budget)) {
                return new RunBest(Math.max(best, reach.from(0, 0, 0)), knapsack.items(), knapsack.counts());
            }
            RunBest better = readOff(states, run, best);
            return better.found() ? better : new RunBest(best, knapsack.items(), knapsack.counts());
        }

        private RunBest readOff(StateList states, Stretch run, long floor) {
            long best = floor;
            int at = -1;
            int block = 32;
            for (int from = 0; from < states.states() && states.load(from) <= run.cap; from += block) {
                int to = Math.min(from + block, states.states());
                if (states.worth(to - 1) - scale * run.drop(states.load(from)) <= best) {
                    continue;
                }
                for (int s = from; s < to && states.load(s) <= run.cap; s++) {
                    long net = states.worth(s) - scale * run.drop(states.load(s));
                    if (net > best && states.load(s) > 0) {
                        best = net;
                        at = s;
                    }
                }
            }
            if (at < 0) {
                return RunBest.none(best);
            }
            int[] all = new int[price.length];
            states.trace(at, all);
            return compact(best, all);
        }

        private RunBest compact(long net, int[] all) {
            int size = 0;
            for (int c : all) {
                size += c > 0 ? 1 : 0;
            }
            int[] items = new int[size];
            int[] counts = new int[size];
            size = 0;
            for (int i = 0; i < all.length; i++) {
                if (all[i] > 0) {
                    items[size] = i;
                    counts[size++] = all[i];
                }
            }
            return new RunBest(net, items, counts);
        }
    }
}
