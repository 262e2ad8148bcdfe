package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.time.Duration;
import java.util.Optional;

/** Bound and plans for one way of leaving pieces out. */
final class ColumnGeneration {
    /** Steps that a wave costs at least, so that waves on tiny problems end with the work. */
    private static final long COPYING = 50_000;

    /** So few items that column generation is as fast as any shorter way. */
    private static final int FEW = 100;

    private static final int QUICK_PATTERNS = 300;
    private static final long QUICK_WORK = 100_000;

    /** What the bound by the rope alone may always take, so that no day is without one. */
    private static final long ROPE_ALONE = 200_000_000;

    private static final long MILLIS_FOR_ROPE_ALONE = 500;

    /** Steps that solving a small problem by counting may take. */
    private static final long SMALL = 100_000_000;

    private static final long SMALL_QUICK = 1_000_000;

    /** Per cent of what is left that the question whether one reel less is enough may take. */
    private static final int FOR_ONE_REEL_LESS = 75;

    /** Per cent of what is left, for cases that show what a search has found already. */
    private static final int FOR_CASES = 25;

    /** The wave after which what is dearer than another wave is tried. */
    private static final int SEVERAL = 4;

    /** Part of a step between two costs. */
    private static final double ALMOST = 1e-4;

    private final Instance instance;
    private final Rejection rejection;
    private final Incumbent best;
    private final Effort effort;
    private final boolean shortcut;
    private final Pricer pricer;
    private final GapClosing endgame;
    private Bound root = Bound.NOTHING;
    /** What few patterns are left by; its prices are those of the program where they prove as much as the root. */
    private Bound forPatterns = Bound.NOTHING;

    /** @param shortcut whether a small problem may be solved by counting its states */
    ColumnGeneration(Instance instance, Rejection rejection, Incumbent best, Effort effort, boolean shortcut) {
        this.shortcut = shortcut;
        this.instance = instance;
        this.rejection = rejection;
        this.best = best;
        this.effort = effort;
        this.pricer = new Pricer(instance);
        this.endgame = new GapClosing(instance, pricer, best, effort.seed(), 0);
    }

    /** Works until proven or out of budget. */
    void run(Budget budget) {
        begun(budget).ifPresent(master -> search(master, budget));
    }

    /** The bound at the root alone. */
    void bound(Budget budget) {
        begun(budget);
    }

    /** Bounds the root; the program there, if it leaves anything to do and there is time. */
    private Optional<Master> begun(Budget budget) {
        boolean quick = effort.depth() == Effort.Depth.QUICK;
        MaterialBound material = new MaterialBound(instance, pricer);
        Budget always = Budget.of(
                ROPE_ALONE,
                Duration.ofMillis(Math.max(MILLIS_FOR_ROPE_ALONE, budget.millisLeft())),
                effort.cancelled());
        material.bound(rejection, new Scaling(instance, rejection).scale, always)
                .ifPresent(found -> {
                    root = found;
                    best.raise(instance.roundUp(found.ceiling()), rejection);
                });
        budget.charge(always);
        boolean few = instance.items <= FEW;
        if (budget.over() || (best.closed(rejection) && (quick || !few))) {
            return Optional.empty();
        }
        Master master = new Master(instance, pricer, rejection, best.plan(), effort.seed());
        if (root.price().length > 0 && !few) {
            master.startFrom(root, material.reducedProfit());
        }
        if (quick) {
            master.rough();
        }
        master.solve(best.cutoff(rejection), Integer.MAX_VALUE, false, budget);
        if (root.price().length == 0 || master.bound().higherThan(root)) {
            root = master.bound();
        }
        forPatterns = isAlmost(master.own()) ? master.own() : root;
        best.raise(instance.roundUp(root.ceiling()), rejection);
        boolean hopeless = rejection.mode() == Rejection.Mode.NEVER && master.converged() && master.unmet() > 1e-6;
        return hopeless ? Optional.empty() : Optional.of(master);
    }

    /** Whether a bound is as high as the root but for so little that no plan can be told apart by it. */
    private boolean isAlmost(Bound own) {
        double lower = (double) root.numerator() / root.scale() - (double) own.numerator() / own.scale();
        return own.price().length > 0 && lower <= ALMOST * instance.step;
    }

    private void search(Master master, Budget budget) {
        boolean quick = effort.depth() == Effort.Depth.QUICK;
        if (shortcut && !best.closed(rejection)) {
            SmallProblem.settle(instance, best, rejection, quick ? SMALL_QUICK : SMALL, budget);
        }
        OneReelLess less = new OneReelLess(instance, best);
        boolean mayAsk = !quick && rejection.mode() == Rejection.Mode.NEVER;
        int waves = quick ? 1 : Integer.MAX_VALUE;
        for (int wave = 0; wave < waves && !best.closed(rejection) && !budget.over(); wave++) {
            budget.spend(COPYING);
            Master copy = master.copy();
            copy.heuristic(quick);
            new Dive(instance, rejection, best, effort.seed() + wave, Math.min(0.5, 0.1 * wave))
                    .run(copy, new PartialPlan(instance), budget);
            master.addAll(best.plan());
            if (wave == SEVERAL && master.counted() && !quick && !best.closed(rejection)) {
                BranchingOnReelCounts counts =
                        new BranchingOnReelCounts(instance, pricer, rejection, best, master, effort.seed(), budget);
                counts.run(Integer.MAX_VALUE, instance.roundUp(root.ceiling()));
            }
            if (mayAsk && wave == 0 && less.isLeft()) {
                budget.within(FOR_ONE_REEL_LESS, less::begin);
            }
            if (rejection.mode() == Rejection.Mode.NEVER && best.complete() && !best.closed(rejection)) {
                endgame(wave, budget);
            }
            if (mayAsk && wave == SEVERAL && less.isLeft()) {
                budget.within(FOR_ONE_REEL_LESS, less::run);
            }
        }
        if (mayAsk && less.isUnshown(instance.roundUp(root.ceiling()))) {
            budget.within(FOR_CASES, less::run);
        }
    }

    /** Once few enough patterns are left that a better plan could be made of, they are searched to the end. */
    private void endgame(int wave, Budget budget) {
        if (wave != 0 && wave != SEVERAL && wave % 10 != 9) {
            return;
        }
        int[] most = new int[instance.types.length];
        for (ReelType type : instance.types) {
            most[type.index] = type.supply;
        }
        boolean quick = effort.depth() == Effort.Depth.QUICK;
        Budget part = quick ? budget.part(QUICK_WORK) : budget;
        int patterns = quick ? QUICK_PATTERNS : 4_000 << Math.min(5, wave);
        endgame.most(patterns);
        best.raise(endgame.run(forPatterns, new int[most.length], most, part), rejection);
    }

    Bound root() {
        return root;
    }
}
