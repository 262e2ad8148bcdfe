package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.List;

/**
 * Solves a problem of few pieces, or of few kinds of them, by a dynamic program over all states of what is planned, reel
 * after reel. Such problems have no room for the averages of a linear program: its bound may stay far below the best
 * plan. After R. Bellman, "Dynamic Programming", Princeton 1957.
 */
final class SmallProblem {
    private static final long STEPS_PER_STATE = 10_000;

    private final Instance instance;
    private final States states;
    private final List<OneReel> layers = new ArrayList<>();
    private final List<int[]> origins = new ArrayList<>();
    private long[] cost;

    private SmallProblem(Instance instance) {
        this.instance = instance;
        states = States.of(instance.demand);
        cost = new long[states.size()];
        java.util.Arrays.fill(cost, 1, cost.length, OneReel.NEVER);
    }

    /**
     * Plans and proves within this way of leaving pieces out, if that takes at most so many steps.
     *
     * @return whether it was small enough
     */
    static boolean settle(Instance instance, Incumbent best, Rejection rejection, long mostWork, Budget budget) {
        long most = mostWork / STEPS_PER_STATE;
        if (States.count(instance.demand, most) > most) {
            return false;
        }
        SmallProblem small = new SmallProblem(instance);
        if (!small.solve(mostWork, budget)) {
            return false;
        }
        small.report(best, rejection);
        return true;
    }

    private boolean solve(long mostWork, Budget budget) {
        List<OneReel> reels = new ArrayList<>();
        long work = 0;
        for (ReelType type : instance.types) {
            OneReel reel = new OneReel(instance, type, states);
            reels.add(reel);
            work += reel.work() + (long) type.supply * reel.reachable().length * states.size();
            if (work > mostWork || budget.spend(reel.work())) {
                return false;
            }
        }
        for (ReelType type : instance.types) {
            boolean more = true;
            for (int copy = 0; copy < type.supply && more; copy++) {
                more = add(reels.get(type.index));
                if (budget.spend((long) reels.get(type.index).reachable().length * states.size())) {
                    return false;
                }
            }
        }
        return true;
    }

    /** One more reel of a kind at hand; false when it is of no use. */
    private boolean add(OneReel reel) {
        long[] next = cost.clone();
        int[] origin = new int[next.length];
        java.util.Arrays.fill(origin, -1);
        boolean better = false;
        for (int take : reel.reachable()) {
            long price = reel.cost(take);
            for (int s = 0; s + take < next.length; s++) {
                if (cost[s] + price < next[s + take] && states.addable(s, take)) {
                    next[s + take] = cost[s] + price;
                    origin[s + take] = s;
                    better = true;
                }
            }
        }
        cost = next;
        layers.add(reel);
        origins.add(origin);
        return better;
    }

    private void report(Incumbent best, Rejection rejection) {
        int lightest = 0;
        long cheapest = Long.MAX_VALUE;
        for (int s = 0; s < cost.length; s++) {
            if (cost[s] >= OneReel.NEVER) {
                continue;
            }
            long weight = weightLeft(s);
            int order = Long.compare(weight, weightLeft(lightest));
            lightest = order < 0 || (order == 0 && cost[s] < cost[lightest]) ? s : lightest;
            cheapest = weight <= rejection.weight() ? Math.min(cheapest, cost[s]) : cheapest;
        }
        best.offer(plan(lightest));
        if (rejection.mode() == Rejection.Mode.PRICED) {
            best.raise(weightLeft(lightest), rejection);
        } else if (cheapest < Long.MAX_VALUE) {
            best.raise(cheapest, rejection);
        }
    }

    private long weightLeft(int state) {
        return instance.weightOf(states.left(state));
    }

    private List<Pattern> plan(int state) {
        List<Pattern> plan = new ArrayList<>();
        int rest = state;
        for (int layer = layers.size() - 1; layer >= 0; layer--) {
            int origin = origins.get(layer)[rest];
            if (origin >= 0) {
                plan.add(layers.get(layer).pattern(rest - origin));
                rest = origin;
            }
        }
        return plan;
    }
}
