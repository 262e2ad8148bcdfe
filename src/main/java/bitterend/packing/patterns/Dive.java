package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.List;
import java.util.Random;

/**
 * From the linear program to a plan: patterns are cut for good one after another, columns are generated for what is
 * left, and at every step the rest is filled greedily.
 *
 * <p>Sources: G. Belov, G. Scheithauer, "A branch-and-cut-and-price algorithm for one-dimensional stock cutting and
 * two-dimensional two-stage cutting", European Journal of Operational Research 171 (2006) 85-106; R. Sadykov, F.
 * Vanderbeck, A. Pessoa, I. Tahiri, E. Uchoa, "Primal heuristics for branch and price: the assets of diving methods",
 * INFORMS Journal on Computing 31 (2019) 251-267.
 */
final class Dive {
    private static final int ROUNDS = 30;

    private final Instance instance;
    private final Incumbent best;
    private final Random random;
    private final GreedyHeuristic filler;
    private final Rejection rejection;
    private final double noise;

    /** @param noise in the choice of what to round up, 0 for none */
    Dive(Instance instance, Rejection rejection, Incumbent best, long seed, double noise) {
        this.rejection = rejection;
        this.instance = instance;
        this.best = best;
        this.random = new Random(seed);
        this.filler = new GreedyHeuristic(instance, random);
        this.noise = noise;
    }

    /** Dives from a solved program, which is used up. */
    void run(Master master, PartialPlan fixed, Budget budget) {
        boolean first = true;
        while (!fixed.done() && !budget.over()) {
            if (!first) {
                master.settle(budget);
                master.solve(best.cutoff(rejection) - fixed.cost, ROUNDS, true, budget);
            }
            first = false;
            long reachable =
                    instance.roundUp((long) Math.ceil(fixed.cost + master.value() - 1e-6 * (1 + master.value())));
            if (budget.over() || reachable >= best.cutoff(rejection)) {
                return;
            }
            List<Master.Share> shares = master.shares();
            complete(master, fixed, shares, budget);
            if (best.closed(rejection)) {
                return;
            }
            if (!step(master, fixed, shares)) {
                break;
            }
        }
        best.offer(fixed.reels);
    }

    /** Whole parts are cut; where there is none, the largest fraction is rounded up. */
    private boolean step(Master master, PartialPlan fixed, List<Master.Share> shares) {
        boolean any = false;
        for (Master.Share share : shares) {
            int times = Math.min((int) Math.floor(share.value() + 1e-6), fixed.room(share.pattern()));
            if (times > 0) {
                cut(master, fixed, share.pattern(), times);
                any = true;
            }
        }
        if (any) {
            return true;
        }
        Master.Share chosen = null;
        double highest = -1;
        for (Master.Share share : shares) {
            double score = share.value() + noise * random.nextDouble();
            if (score > highest && fixed.room(share.pattern()) > 0) {
                highest = score;
                chosen = share;
            }
        }
        if (chosen == null) {
            return false;
        }
        cut(master, fixed, chosen.pattern(), 1);
        return true;
    }

    private static void cut(Master master, PartialPlan fixed, Pattern pattern, int times) {
        fixed.cut(pattern, times);
        master.fix(pattern, times);
    }

    private void complete(Master master, PartialPlan fixed, List<Master.Share> shares, Budget budget) {
        PartialPlan plan = fixed.copy();
        for (Master.Share share : shares) {
            int times = Math.min((int) Math.floor(share.value() + 1e-6), plan.room(share.pattern()));
            if (times > 0) {
                plan.cut(share.pattern(), times);
            }
        }
        long[] worth = master.bound().price().length == 0
                ? InitialPlans.lengths(instance)
                : master.bound().price();
        PartialPlan other = plan.copy();
        filler.complete(plan, worth, GreedyHeuristic.Manner.LEAST_SLACK, 0, budget);
        best.offer(plan.reels);
        filler.complete(other, worth, GreedyHeuristic.Manner.LONGEST_FIRST, 0, budget);
        best.offer(other.reels);
    }
}
