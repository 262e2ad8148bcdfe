package bitterend.packing.patterns;

import bitterend.packing.linear.Budget;
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

    private final Task task;
    private final Best best;
    private final Random random;
    private final Filler filler;
    private final Leaving leaving;
    private final double noise;

    /** @param noise in the choice of what to round up, 0 for none */
    Dive(Task task, Leaving leaving, Best best, long seed, double noise) {
        this.leaving = leaving;
        this.task = task;
        this.best = best;
        this.random = new Random(seed);
        this.filler = new Filler(task, random);
        this.noise = noise;
    }

    /** Dives from a solved program, which is used up. */
    void run(Master master, Partial fixed, Budget budget) {
        boolean first = true;
        while (!fixed.done() && !budget.over()) {
            if (!first) {
                master.settle(budget);
                master.solve(best.cutoff(leaving) - fixed.cost, ROUNDS, true, budget);
            }
            first = false;
            long reachable = task.roundUp((long) Math.ceil(fixed.cost + master.value() - 1e-6 * (1 + master.value())));
            if (budget.over() || reachable >= best.cutoff(leaving)) {
                return;
            }
            List<Master.Share> shares = master.shares();
            complete(master, fixed, shares, budget);
            if (best.closed(leaving)) {
                return;
            }
            if (!step(master, fixed, shares)) {
                break;
            }
        }
        best.offer(fixed.reels);
    }

    /** Whole parts are cut; where there is none, the largest fraction is rounded up. */
    private boolean step(Master master, Partial fixed, List<Master.Share> shares) {
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

    private static void cut(Master master, Partial fixed, Pattern pattern, int times) {
        fixed.cut(pattern, times);
        master.fix(pattern, times);
    }

    private void complete(Master master, Partial fixed, List<Master.Share> shares, Budget budget) {
        Partial plan = fixed.copy();
        for (Master.Share share : shares) {
            int times = Math.min((int) Math.floor(share.value() + 1e-6), plan.room(share.pattern()));
            if (times > 0) {
                plan.cut(share.pattern(), times);
            }
        }
        long[] worth = master.bound().price().length == 0
                ? Starts.lengths(task)
                : master.bound().price();
        Partial other = plan.copy();
        filler.complete(plan, worth, Filler.Manner.LEAST_SLACK, 0, budget);
        best.offer(plan.reels);
        filler.complete(other, worth, Filler.Manner.LONGEST_FIRST, 0, budget);
        best.offer(other.reels);
    }
}
