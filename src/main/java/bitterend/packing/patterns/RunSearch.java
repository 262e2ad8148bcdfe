package bitterend.packing.patterns;

/**
 * The search for the best way to draw from a run: depth first, and where that does not end, over all loads. Serves all
 * runs of one kind.
 */
final class RunSearch {
    private static final long HASTY_NODES = 3_000;
    private static final long PATIENT_NODES = 40_000;
    private static final int BLOCK = 32;

    final Kind kind;
    final Question question;
    private final Order order;
    private final SharedStates shared;
    private final Hulls hulls;
    private boolean safe = true;

    /** @param order the items of the kind's rope at the prices asked about */
    RunSearch(Kind kind, Question question, Order order, SharedStates shared, Hulls hulls) {
        this.kind = kind;
        this.question = question;
        this.order = order;
        this.shared = shared;
        this.hulls = hulls;
    }

    /** False if some net found so far may be below what exists. */
    boolean safe() {
        return safe;
    }

    /** The best way to draw from run r that brings more than {@code floor}. */
    RunBest best(int r, long floor) {
        Stretch run = kind.runs[r];
        RunBest best = searched(run, floor);
        return best.found() && best.net() >= 0 ? best : worthless(run, best);
    }

    /** Where nothing brings more than it costs, a run may still be drawn for a piece of no price: the shortest. */
    private RunBest worthless(Stretch run, RunBest best) {
        long[] load = kind.load;
        int shortest = -1;
        for (int i = 0; i < load.length; i++) {
            if (question.price[i] <= 0
                    && question.bound[i] > 0
                    && load[i] <= run.cap
                    && (shortest < 0 || load[i] < load[shortest])) {
                shortest = i;
            }
        }
        if (shortest < 0) {
            return best;
        }
        long net = -question.scale * run.drop(load[shortest]);
        return net > best.net() ? new RunBest(net, new int[] {shortest}, new int[] {1}) : best;
    }

    private RunBest searched(Stretch run, long floor) {
        Reach reach = new Reach(order, run, hulls.of(run), question.scale);
        long nodes = question.hasty ? HASTY_NODES : shared.tried() ? 1 : PATIENT_NODES;
        Knapsack knapsack = new Knapsack(order, run, reach, question.scale, nodes);
        boolean complete = knapsack.search(floor);
        question.budget.spend(knapsack.nodes());
        if (complete || question.hasty) {
            safe &= complete;
            return new RunBest(knapsack.best(), knapsack.items(), knapsack.counts());
        }
        StateList all = shared.list();
        return all != null ? readOff(all, run, floor) : byLoads(run, reach, knapsack);
    }

    /** Goes on from a search that did not end: over all loads, and if those are too many, with what can be reached. */
    private RunBest byLoads(Stretch run, Reach reach, Knapsack knapsack) {
        long best = knapsack.best();
        StateList states = new StateList(order, run.cap, SharedStates.MOST);
        if (!states.build((next, load, worth) -> reach.from(next, load, worth) <= best, question.budget)) {
            return new RunBest(Math.max(best, reach.from(0, 0, 0)), knapsack.items(), knapsack.counts());
        }
        RunBest better = readOff(states, run, best);
        return better.found() ? better : new RunBest(best, knapsack.items(), knapsack.counts());
    }

    /** The state that brings most, and more than {@code floor}; blocks that cannot hold one are passed over. */
    private RunBest readOff(StateList states, Stretch run, long floor) {
        long scale = question.scale;
        long best = floor;
        int at = -1;
        for (int from = 0; from < states.states() && states.load(from) <= run.cap; from += BLOCK) {
            int to = Math.min(from + BLOCK, states.states());
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
        int[] all = new int[question.price.length];
        states.trace(at, all);
        return RunBest.of(best, all);
    }
}
