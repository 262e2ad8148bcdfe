package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;

/**
 * Packs by patterns: column generation for the bound, dives for the plan, and exact search to close what is left
 * between them. A plan exists from the first millisecond on and only ever gets better.
 */
public final class PatternPacker {
    private PatternPacker() {}

    /** The best plan found within the effort, with bounds on all plans. */
    public static PatternPlan pack(PatternProblem problem, Effort effort) {
        return pack(problem, effort, true);
    }

    /** The same without solving small problems by counting their states: what the search above the root does by itself. */
    static PatternPlan withoutShortcut(PatternProblem problem, Effort effort) {
        return pack(problem, effort, false);
    }

    private static PatternPlan pack(PatternProblem problem, Effort effort, boolean shortcut) {
        Budget budget = Budget.of(effort.work(), effort.time(), effort.cancelled());
        Normaliser normaliser = new Normaliser(problem);
        Instance instance = normaliser.instance();
        Incumbent best = new Incumbent(instance, effort.listener());
        Solver solver = new Solver(instance, best, effort, budget, shortcut);
        solver.run();
        return new Answer(problem, normaliser, instance).of(best, solver, budget.spent());
    }
}
