package bitterend.packing.patterns;

/** Bound and plans for one way of leaving pieces out. */
final class Phase {
    /** Steps that a wave costs at least, so that waves on tiny problems end with the work. */
    private static final long COPYING = 50_000;

    private static final boolean DEBUG = Boolean.getBoolean("debug");
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
            if (leaving.mode() == Leaving.Mode.NEVER && best.complete() && !best.closed(leaving)) {
                endgame(wave, budget);
            }
        }
    }

    /** Once few enough patterns are left that a better plan could be made of, they are searched to the end. */
    private void endgame(int wave, Budget budget) {
        if (wave != 0 && wave != 3 && wave % 10 != 9) {
            return;
        }
        long before = best.cutoff(leaving);
        Enumeration enumeration = new Enumeration(task, pricer, root, 2_000 << Math.min(6, wave), budget);
        boolean few = enumeration.run(before - task.step);
        if (DEBUG) System.err.println("wave " + wave + " enumerated " + enumeration.found().size() + " few " + few + " target " + (before - task.step) + " lb " + (root.numerator() / (double) root.scale()));
        if (few) {
            Selection selection = new Selection(task, best, effort.seed(), budget);
            boolean done = selection.search(enumeration.found());
            if (DEBUG) System.err.println("nodes " + selection.nodes() + " done " + done+" left "+budget.millisLeft());
            if (done) {
                best.raise(best.cutoff(leaving), leaving);
            }
        }
    }

    Bound root() {
        return root;
    }
}
