package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The columns that column generation leaves at its root, for others to choose among. Prices in 1/1000 minor unit. */
public final class RootColumns {
    private static final int STARTS = 16;

    private final PatternProblem problem;
    private final Normaliser normaliser;
    private final Instance instance;
    private final Effort effort;
    private final List<Pattern> columns;
    private final List<Pattern> start;

    private RootColumns(PatternProblem problem, Effort effort) {
        this.problem = problem;
        this.effort = effort;
        normaliser = new Normaliser(problem);
        instance = normaliser.instance();
        Budget budget = Budget.of(effort.work(), effort.time(), effort.cancelled());
        Incumbent best = new Incumbent(instance, progress -> {});
        new InitialPlans(instance, best, effort.seed(), budget).run(STARTS);
        Master master = new Master(instance, new Pricer(instance), Rejection.NEVER, best.plan(), effort.seed());
        master.solve(best.cutoff(Rejection.NEVER), Integer.MAX_VALUE, false, budget);
        start = List.copyOf(best.plan());
        columns = master.patterns().stream()
                .filter(pattern -> !pattern.empty())
                .distinct()
                .toList();
    }

    /** The columns for a problem with enough rope for everything. */
    public static RootColumns of(PatternProblem problem, Effort effort) {
        return new RootColumns(problem, effort);
    }

    /** How many columns. */
    public int size() {
        return columns.size();
    }

    /** Reels that our best quick start cuts by a column. */
    public long start(int column) {
        return start.stream().filter(columns.get(column)::equals).count();
    }

    /** How many different items; pieces of one load are one item here. */
    public int items() {
        return instance.items;
    }

    /** Pieces wanted of an item. */
    public int demand(int item) {
        return instance.demand[item];
    }

    /** How many different kinds of reels. */
    public int kinds() {
        return instance.types.length;
    }

    /** Reels there are of a kind. */
    public int supply(int kind) {
        return instance.types[kind].supply;
    }

    /** The kind that a column is cut from. */
    public int kind(int column) {
        return columns.get(column).type;
    }

    /** Pieces of an item in a column. */
    public int count(int column, int item) {
        return columns.get(column).countOf(item);
    }

    /** What a reel cut by a column costs. */
    public long cost(int column) {
        return columns.get(column).cost;
    }

    /**
     * The reels to cut, each piece once.
     *
     * @param times reels cut by each column; together they hold every piece
     */
    public List<Draw> draws(long[] times) {
        List<Pattern> reels = new ArrayList<>();
        for (int column = 0; column < times.length; column++) {
            reels.addAll(Collections.nCopies((int) times[column], columns.get(column)));
        }
        Incumbent only = new Incumbent(instance, progress -> {});
        only.offer(reels);
        Solver idle = new Solver(instance, only, effort, Budget.endless(), new Solver.Manner(false, true));
        return new Answer(problem, normaliser, instance).of(only, idle, 0).draws();
    }
}
