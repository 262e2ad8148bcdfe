package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.linear.Simplex;
import java.util.List;

/**
 * Column generation: the linear program over the patterns found so far, and the search for patterns that improve it.
 * Keeps the best safe bound met on the way.
 *
 * <p>Sources: Gilmore and Gomory 1961, 1963 (see {@link Pricer}); P. Wentges, "Weighted Dantzig-Wolfe decomposition
 * for linear mixed-integer programming", International Transactions in Operational Research 4 (1997) 151-162
 * (smoothing); F. Vanderbeck, "On Dantzig-Wolfe decomposition in integer programming and ways to perform branching in
 * a branch-and-price algorithm", Operations Research 48 (2000) 111-128.
 */
final class Master {
    private static final double SMOOTH = 0.75;
    private static final double LESS_SMOOTH = 0.3;
    private static final double ROUGH = 2e-4;
    /** Where hasty pricing still finds something, every so many rounds it is asked for a bound all the same. */
    private static final int BOUND_EVERY = 8;

    private final Instance instance;
    private final Pricer pricer;
    private final Rejection rejection;
    private final MasterProgram program;
    private Bound bound = Bound.NOTHING;
    /** The best bound by its own duals, whatever was known beforehand. */
    private Bound own = Bound.NOTHING;
    /** Duals of the best bound so far. */
    private double[] center = new double[0];

    /** What the next {@link #solve} knows beforehand. */
    private Bound floor = Bound.NOTHING;

    private boolean converged;
    private boolean heuristic;
    private double slack;

    /** A pattern and how many reels the linear program cuts by it. */
    record Share(Pattern pattern, double value) {}

    Master(Instance instance, Pricer pricer, Rejection rejection, List<Pattern> start, long seed) {
        this.instance = instance;
        this.pricer = pricer;
        this.rejection = rejection;
        program = new MasterProgram(instance, rejection, seed);
        addAll(start);
    }

    private Master(Master from) {
        instance = from.instance;
        pricer = from.pricer;
        rejection = from.rejection;
        program = from.program.copy();
        bound = from.bound;
        center = from.center.clone();
        converged = from.converged;
    }

    /** The same state; the two go separate ways from here. */
    Master copy() {
        return new Master(this);
    }

    /** Prices of a bound known beforehand are where the search for better ones starts. */
    void startFrom(Bound given, long[] reducedProfit) {
        floor = given;
        center = program.rows.duals(given, reducedProfit, program.size());
    }

    /** From now on gives up on patterns that are hard to find, and with them on most bounds. */
    void heuristic(boolean only) {
        heuristic = only;
    }

    /** From now on ends when the bound is almost as high as it can get. */
    void rough() {
        slack = ROUGH;
    }

    /** Adds patterns from elsewhere. */
    void addAll(List<Pattern> patterns) {
        for (Pattern pattern : patterns) {
            program.add(pattern);
        }
    }

    /**
     * Generates columns until none improves, the bound reaches the cutoff, or the rounds or the budget end.
     *
     * @param cutoff cost, above what was fixed, from which nothing is of interest
     * @param whole stop as soon as the bound rounds up to where the program stands
     */
    void solve(long cutoff, int rounds, boolean whole, Budget budget) {
        converged = false;
        bound = floor;
        own = Bound.NOTHING;
        floor = Bound.NOTHING;
        double smooth = SMOOTH;
        for (int round = 0; round < rounds && !budget.over(); round++) {
            if (!program.solve(budget)) {
                return;
            }
            double[] duals = program.duals();
            double[] used = mixed(duals, smooth);
            int added = generate(used, duals, true, budget);
            if (!heuristic && (added == 0 || round % BOUND_EVERY == BOUND_EVERY - 1)) {
                int patient = generate(used, duals, false, budget);
                added = added == 0 ? patient : added;
                if (enough(cutoff, whole)) {
                    return;
                }
            }
            if (added > 0) {
                smooth = SMOOTH;
            } else if (smooth == 0 || center.length == 0) {
                converged = true;
                return;
            } else {
                smooth = smooth > LESS_SMOOTH ? LESS_SMOOTH : 0;
            }
        }
    }

    private boolean enough(long cutoff, boolean whole) {
        long proven = instance.roundUp(bound.ceiling());
        return proven >= cutoff
                || (slack > 0 && proven >= value() * (1 - slack))
                || (whole && proven >= value() - 1e-6 * program.units.cost);
    }

    private double[] mixed(double[] duals, double smooth) {
        if (center.length != duals.length || smooth == 0) {
            return duals;
        }
        double[] mixed = new double[duals.length];
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = smooth * center[i] + (1 - smooth) * duals[i];
        }
        return mixed;
    }

    /** Adds the patterns that the pricer offers for the duals used and that improve the program; how many. */
    private int generate(double[] used, double[] duals, boolean early, Budget budget) {
        long[] price = new long[instance.items];
        for (int i = 0; i < price.length; i++) {
            price[i] = program.units.price(used[i]);
        }
        Pricer.Offers offers = pricer.price(price, program.units.scale, program.residual, need(used), early, budget);
        if (offers.safe) {
            improveBound(price, used, offers.reducedProfit);
        }
        int added = 0;
        double[] ofKinds = program.rows.ofKinds(duals, program.leastRow);
        for (Pattern pattern : offers.patterns) {
            if (program.rows.reduced(pattern, duals, ofKinds[pattern.type]) < -Simplex.EPS * 10
                    && program.add(pattern)) {
                added++;
            }
        }
        return added;
    }

    private long[] need(double[] used) {
        double[] ofKinds = program.rows.ofKinds(used, program.leastRow);
        long[] need = new long[ofKinds.length];
        for (int k = 0; k < need.length; k++) {
            need[k] = program.units.need(ofKinds[k]);
        }
        return need;
    }

    private void improveBound(long[] price, double[] used, long[] reducedProfit) {
        boolean limited = rejection.mode() == Rejection.Mode.LIMITED;
        long mu = limited ? program.units.ofWeight(used[program.rows.rejection()]) : 0;
        new SafeBound(instance, rejection)
                .of(program.units.scale, price, mu, reducedProfit, program.residual, program.least, program.most)
                .ifPresent(found -> {
                    if (!own.higherThan(found)) {
                        own = found;
                    }
                    if (bound.price().length == 0 || found.higherThan(bound)) {
                        bound = found;
                        center = used;
                    }
                });
    }

    /** The best safe bound of the last {@link #solve}, on what is still to be planned. */
    Bound bound() {
        return bound;
    }

    /**
     * The same by prices that the program came upon itself. Where what was known beforehand, or was found sooner, proves as
     * much, these may say more of which patterns are of use.
     */
    Bound own() {
        return own;
    }

    boolean converged() {
        return converged;
    }

    /** Value of the linear program in units of cost. */
    double value() {
        return program.value();
    }

    /** Patterns with their values in the linear program, zero left out. */
    List<Share> shares() {
        return program.shares();
    }

    /** How much of the demand the program cannot meet. */
    double unmet() {
        return program.unmet();
    }

    /** All patterns in the program. */
    List<Pattern> patterns() {
        return program.patterns();
    }

    /** Reels of each kind that may still be used. */
    int[] most() {
        return program.most.clone();
    }

    /** Cuts so many reels by this pattern for good: what remains is to be planned with what remains. */
    void fix(Pattern pattern, int times) {
        program.fix(pattern, times);
    }

    /** After fixing: only patterns within what remains may still be used. */
    void settle(Budget budget) {
        program.settle(budget);
    }

    /** Limits the reels used of every kind. */
    void counts(int[] from, int[] to, Budget budget) {
        program.counts(from, to, budget);
    }

    /** Whether kinds are counted, so that {@link #counts} may be called. */
    boolean counted() {
        return program.rows.counted;
    }
}
