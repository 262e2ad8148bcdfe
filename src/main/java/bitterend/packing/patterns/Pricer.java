package bitterend.packing.patterns;

import bitterend.packing.linear.Budget;
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

    private final Task task;
    private final Hulls hulls = new Hulls();
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
        return hulls.of(run);
    }

    /**
     * @param price of each item, in {@code 1/scale} of a unit of cost
     * @param bound how many of each may be taken
     * @param need nets that do not exceed this are of no interest, by kind
     * @param hasty gives up early: then the nets prove nothing
     */
    Offers price(long[] price, long scale, int[] bound, long[] need, boolean hasty, Budget budget) {
        Question question = new Question(price, scale, bound, hasty, budget);
        Offers offers = new Offers(task.kinds.length);
        Order[] orders = new Order[task.ropes];
        SharedStates[] lists = new SharedStates[task.ropes];
        for (Kind kind : task.kinds) {
            int rope = kind.rope;
            if (orders[rope] == null) {
                orders[rope] = order(kind, question);
                lists[rope] = states(kind, question, orders[rope]);
            }
            RunSearch search = new RunSearch(kind, question, orders[rope], lists[rope], hulls);
            offers.net[kind.index] = kind.single()
                    ? single(search, need[kind.index], offers)
                    : several(search, need[kind.index], offers);
            offers.safe &= search.safe();
        }
        return offers;
    }

    private Order order(Kind kind, Question question) {
        return Order.of(kind.load, question.price, question.bound, longest[kind.rope]);
    }

    private SharedStates states(Kind kind, Question question, Order order) {
        return new SharedStates(shared[kind.rope], order, longest[kind.rope], question.budget);
    }

    private long single(RunSearch search, long need, Offers offers) {
        long opening = search.kind.opening * search.question.scale;
        RunBest best = search.best(0, need + opening);
        if (best.found()) {
            offers.patterns.add(ofOneRun(search.kind, best.items(), best.counts()));
            if (search.question.hasty && task.kinds.length == 1) {
                more(search, need + opening, offers);
            }
        }
        return best.net() - opening;
    }

    private Pattern ofOneRun(Kind kind, int[] items, int[] counts) {
        return Pattern.of(task, kind.index, new int[items.length], items, counts, items.length);
    }

    /** With one kind, patterns of other items as well: fewer rounds. */
    private void more(RunSearch search, long floor, Offers offers) {
        Kind kind = search.kind;
        Question question = search.question;
        int[] left = question.bound.clone();
        Stretch run = kind.runs[0];
        for (int extra = 0; extra < EXTRA; extra++) {
            for (int i : offers.patterns.get(offers.patterns.size() - 1).item) {
                left[i] = 0;
            }
            Order order = Order.of(kind.load, question.price, left, run.cap);
            Reach reach = new Reach(order, run, hull(run), question.scale);
            Knapsack knapsack = new Knapsack(order, run, reach, question.scale, EXTRA_NODES);
            knapsack.search(floor);
            question.budget.spend(knapsack.nodes() + order.size);
            if (!knapsack.found()) {
                return;
            }
            offers.patterns.add(ofOneRun(kind, knapsack.items(), knapsack.counts()));
        }
    }

    /** One column for a reel of several runs. */
    private long several(RunSearch search, long need, Offers offers) {
        JoinedRuns joined = new JoinedRuns(search);
        if (joined.net() > need) {
            offers.patterns.add(joined.pattern(task));
        }
        return joined.net();
    }

    /** The most that every run of a kind can bring, {@link #LOW} where nothing fits. */
    long[] bestByRun(Kind kind, Question question, Offers offers) {
        Order order = order(kind, question);
        RunSearch search = new RunSearch(kind, question, order, states(kind, question, order), hulls);
        long[] best = new long[kind.runs.length];
        for (int r = 0; r < best.length; r++) {
            best[r] = search.best(r, LOW).net();
        }
        offers.safe &= search.safe();
        return best;
    }
}
