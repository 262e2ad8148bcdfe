package bitterend.packing.patterns;

/** Bound and plans for one way of leaving pieces out. */
final class Phase {
    /** Steps that a wave costs at least, so that waves on tiny problems end with the work. */
    private static final long COPYING = 50_000;

    private final Task task;
    private final Leaving leaving;
    private final Best best;
    private final Effort effort;
    private final Pricer pricer;
    private Bound root = Bound.NOTHING;

    Phase(Task task, Leaving leaving, Best best, Effort effort) {
        this.task = task;
        this.leaving = leaving;
        this.best = best;
        this.effort = effort;
        this.pricer = new Pricer(task);
    }

    /** Works until proven or out of budget. */
    void run(Budget budget) {
        Master master = new Master(task, pricer, leaving, best.plan(), effort.seed());
        master.solve(best.cutoff(leaving), Integer.MAX_VALUE, false, budget);
        root = master.bound();
        best.raise(task.roundUp(root.ceiling()), leaving);
        boolean hopeless = leaving.mode() == Leaving.Mode.NEVER && master.converged() && master.unmet() > 1e-6;
        if (hopeless) {
            return;
        }
        int waves = effort.depth() == Effort.Depth.QUICK ? 1 : Integer.MAX_VALUE;
        for (int wave = 0; wave < waves && !best.closed(leaving) && !budget.over(); wave++) {
            budget.spend(COPYING);
            Master copy = master.copy();
            new Dive(task, leaving, best, effort.seed() + wave, Math.min(0.5, 0.1 * wave))
                    .run(copy, new Partial(task), budget);
            master.addAll(best.plan());
        }
    }

    Bound root() {
        return root;
    }
}
