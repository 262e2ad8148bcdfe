package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.time.Duration;
import java.util.List;

/** The order of things: starts, bound, dives; with pieces left out, first their weight, then the cost. */
final class Solver {
    private static final int LIMITS = 3;
    /** From so many on the linear program hardly ends. */
    private static final int MANY_LENGTHS = 500;

    private static final int GROUPS = 150;
    private static final long EXCHANGES = 30_000_000;

    private final Instance instance;
    private final Incumbent best;
    private final Effort effort;
    private final Budget budget;
    private final Manner manner;
    private Bound root = Bound.NOTHING;
    private Bound weightRoot = Bound.NOTHING;
    private long rootGiven;

    /**
     * How to go about it.
     *
     * @param shortcut whether small problems may be solved by counting their states
     * @param everythingFits whether it is known that nothing must be left out
     */
    record Manner(boolean shortcut, boolean everythingFits) {}

    Solver(Instance instance, Incumbent best, Effort effort, Budget budget, Manner manner) {
        this.manner = manner;
        this.instance = instance;
        this.best = best;
        this.effort = effort;
        this.budget = budget;
    }

    void run() {
        boolean quick = effort.depth() == Effort.Depth.QUICK;
        new InitialPlans(instance, best, effort.seed(), budget).run(quick ? 4 : 16);
        if (PieceExchange.isFor(instance)) {
            Budget exchanges = budget.part(EXCHANGES);
            new PieceExchange(instance, best, effort.seed(), exchanges).run();
            budget.charge(exchanges);
        }
        if (best.closed(Rejection.NEVER) || instance.types.length == 0) {
            best.raise(instance.types.length == 0 ? best.weight() : 0, Rejection.PRICED);
            return;
        }
        boolean whole = best.complete() || manner.everythingFits();
        Bound grouped = whole && instance.items > MANY_LENGTHS ? grouped() : Bound.NOTHING;
        Budget part = whole ? budget : budget.part(effort.work() / 3, Duration.ofMillis(budget.millisLeft() / 3));
        ColumnGeneration phase = new ColumnGeneration(instance, Rejection.NEVER, best, effort, manner.shortcut());
        phase.run(part);
        if (part != budget) {
            budget.charge(part);
        }
        if (best.complete() || manner.everythingFits()) {
            root = grouped.higherThan(phase.root()) ? grouped : phase.root();
            return;
        }
        leaveOut();
    }

    /** More lengths than the linear program has rows for: bound and plans of lengths in groups, in most of the time. */
    private Bound grouped() {
        Grouping down = Grouping.down(instance, GROUPS);
        Budget third = budget.part(effort.work() / 3, Duration.ofMillis(budget.millisLeft() / 3));
        ColumnGeneration below = rounded(down.coarse(), third);
        below.bound(third);
        budget.charge(third);
        Bound bound = down.inItems(below.root());
        best.raise(instance.roundUp(bound.ceiling()), Rejection.NEVER);
        Grouping up = Grouping.up(instance, GROUPS);
        Budget most = budget.part(effort.work() / 2, Duration.ofMillis(budget.millisLeft() * 4 / 5));
        Incumbent plan = new Incumbent(up.coarse(), progress -> {});
        new InitialPlans(up.coarse(), plan, effort.seed(), most).run(4);
        new ColumnGeneration(up.coarse(), Rejection.NEVER, plan, effort, false).run(most);
        budget.charge(most);
        if (plan.complete()) {
            best.offer(up.inItems(plan.plan()));
        }
        return bound;
    }

    private ColumnGeneration rounded(Instance coarse, Budget part) {
        Incumbent plan = new Incumbent(coarse, progress -> {});
        new InitialPlans(coarse, plan, effort.seed(), part).run(4);
        return new ColumnGeneration(coarse, Rejection.NEVER, plan, effort, false);
    }

    /** Not everything can be planned, or so it seems: how much must be left out, and what does the rest cost. */
    private void leaveOut() {
        Instance free = instance.free();
        Incumbent lightest = new Incumbent(free, progress -> {});
        lightest.offer(in(free, best.plan()));
        ColumnGeneration weigh = new ColumnGeneration(free, Rejection.PRICED, lightest, effort, manner.shortcut());
        Budget half = budget.part(effort.work() / 3, Duration.ofMillis(budget.millisLeft() / 2));
        weigh.run(half);
        budget.charge(half);
        weightRoot = weigh.root();
        best.raise(lightest.weightBound(), Rejection.PRICED);
        best.offer(in(instance, lightest.plan()));
        for (int round = 0; round < LIMITS && (round == 0 || isLighter()); round++) {
            rootGiven = best.weight();
            ColumnGeneration phase =
                    new ColumnGeneration(instance, Rejection.limited(rootGiven), best, effort, manner.shortcut());
            phase.run(budget);
            root = phase.root();
        }
    }

    /** Whether less must be left out than the bound speaks of, and there is time for another. */
    private boolean isLighter() {
        return !budget.over() && best.weight() < rootGiven;
    }

    private static List<Pattern> in(Instance other, List<Pattern> plan) {
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
