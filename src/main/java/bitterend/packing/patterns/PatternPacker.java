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
        return pack(problem, effort, new Solver.Manner(true, false));
    }

    /** The same where a plan of all pieces is known: what must be left out is not asked, and the bound is on such plans. */
    public static PatternPlan packAll(PatternProblem problem, Effort effort) {
        return pack(problem, effort, new Solver.Manner(true, true));
    }

    /** The same without solving small problems by counting their states: what the search above the root does by itself. */
    static PatternPlan withoutShortcut(PatternProblem problem, Effort effort) {
        return pack(problem, effort, new Solver.Manner(false, false));
    }

    private static PatternPlan pack(PatternProblem problem, Effort effort, Solver.Manner manner) {
        Budget budget = Budget.of(effort.work(), effort.time(), effort.cancelled());
        Normaliser normaliser = new Normaliser(problem);
        Instance instance = normaliser.instance();
        Incumbent best = new Incumbent(instance, effort.listener());
        Solver solver = new Solver(instance, best, effort, budget, manner);
        solver.run();
        return new Answer(problem, normaliser, instance).of(best, solver, budget.spent());
    }
}
