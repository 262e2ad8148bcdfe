package bitterend.packing.patterns;

import bitterend.packing.linear.Budget;
import java.time.Duration;
import java.util.List;

/** The order of things: starts, bound, dives; with pieces left out, first their weight, then the cost. */
final class Solver {
    private static final int LIMITS = 3;

    private final Task task;
    private final Best best;
    private final Effort effort;
    private final Budget budget;
    private final boolean shortcut;
    private Bound root = Bound.NOTHING;
    private Bound weightRoot = Bound.NOTHING;
    private long rootGiven;

    /** @param shortcut whether small problems may be solved by counting their states */
    Solver(Task task, Best best, Effort effort, Budget budget, boolean shortcut) {
        this.shortcut = shortcut;
        this.task = task;
        this.best = best;
        this.effort = effort;
        this.budget = budget;
    }

    void run() {
        boolean quick = effort.depth() == Effort.Depth.QUICK;
        new Starts(task, best, effort.seed(), budget).run(quick ? 4 : 16);
        if (best.closed(Leaving.NEVER) || task.kinds.length == 0) {
            best.raise(task.kinds.length == 0 ? best.weight() : 0, Leaving.PRICED);
            return;
        }
        Budget part =
                best.complete() ? budget : budget.part(effort.work() / 3, Duration.ofMillis(budget.millisLeft() / 3));
        Phase phase = new Phase(task, Leaving.NEVER, best, effort, shortcut);
        phase.run(part);
        if (part != budget) {
            budget.charge(part);
        }
        if (best.complete()) {
            root = phase.root();
            return;
        }
        leaveOut();
    }

    /** Not everything can be planned, or so it seems: how much must be left out, and what does the rest cost. */
    private void leaveOut() {
        Task free = task.free();
        Best lightest = new Best(free, progress -> {});
        lightest.offer(in(free, best.plan()));
        Phase weigh = new Phase(free, Leaving.PRICED, lightest, effort, shortcut);
        Budget half = budget.part(effort.work() / 3, Duration.ofMillis(budget.millisLeft() / 2));
        weigh.run(half);
        budget.charge(half);
        weightRoot = weigh.root();
        best.raise(lightest.weightBound(), Leaving.PRICED);
        best.offer(in(task, lightest.plan()));
        for (int round = 0; round < LIMITS && (round == 0 || isLighter()); round++) {
            rootGiven = best.weight();
            Phase phase = new Phase(task, Leaving.limited(rootGiven), best, effort, shortcut);
            phase.run(budget);
            root = phase.root();
        }
    }

    /** Whether less must be left out than the bound speaks of, and there is time for another. */
    private boolean isLighter() {
        return !budget.over() && best.weight() < rootGiven;
    }

    private static List<Pattern> in(Task other, List<Pattern> plan) {
        return plan.stream().map(pattern -> pattern.in(other)).toList();
    }

    Bound root() {
        return root;
    }

    Bound weightRoot() {
        return weightRoot;
    }

    long rootGiven() {
        return rootGiven;
    }
}
