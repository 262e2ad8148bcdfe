package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;

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
    private static final double DEAR = 100;
    private static final double IMPROPER = 20;
    private static final double ROUGH = 2e-4;

    final Task task;
    private final Pricer pricer;
    private final Leaving leaving;
    private final boolean counted;
    private final double unit;
    private final long scale;
    private final Simplex lp;
    private List<Pattern> columns;
    private final Set<Pattern> known;
    final int[] residual;
    final int[] most;
    final int[] least;
    private Bound bound = Bound.NOTHING;
    private double[] center = new double[0];
    private boolean converged;
    private boolean hasty;
    private double slack;

    Master(Task task, Pricer pricer, Leaving leaving, List<Pattern> start, long seed) {
        this.task = task;
        this.pricer = pricer;
        this.leaving = leaving;
        boolean limited = task.kinds.length > 1;
        for (Kind kind : task.kinds) {
            limited |= kind.limited;
        }
        counted = limited;
        unit = unit(task, leaving);
        scale = scale(task, unit);
        residual = task.demand.clone();
        most = new int[task.kinds.length];
        least = new int[task.kinds.length];
        for (Kind kind : task.kinds) {
            most[kind.index] = kind.supply;
        }
        lp = program(seed);
        columns = new ArrayList<>();
        known = new HashSet<>();
        while (columns.size() < lp.columns()) {
            columns.add(Pattern.NOTHING);
        }
        for (Pattern pattern : start) {
            add(pattern);
        }
    }

    private Master(Master from) {
        task = from.task;
        pricer = from.pricer;
        leaving = from.leaving;
        counted = from.counted;
        unit = from.unit;
        scale = from.scale;
        lp = from.lp.copy();
        columns = new ArrayList<>(from.columns);
        known = new HashSet<>(from.known);
        residual = from.residual.clone();
        most = from.most.clone();
        least = from.least.clone();
        bound = from.bound;
        center = from.center.clone();
        converged = from.converged;
    }

    /** The same state; the two go separate ways from here. */
    Master copy() {
        return new Master(this);
    }

    private static double unit(Task task, Leaving leaving) {
        double largest = 1;
        if (leaving.mode() == Leaving.Mode.PRICED) {
            for (long w : task.weight) {
                largest = Math.max(largest, (double) w);
            }
            return largest;
        }
        for (Kind kind : task.kinds) {
            largest = Math.max(largest, (double) kind.dearest());
        }
        return largest;
    }

    private static long scale(Task task, double unit) {
        int bits = Math.max(1, Math.getExponent(unit) + 1);
        int pieces = 64 - Long.numberOfLeadingZeros(task.pieces());
        return 1L << Math.max(0, Math.min(36, 60 - pieces) - bits);
    }

    private Simplex program(long seed) {
        int m = task.items;
        int kinds = counted ? task.kinds.length : 0;
        double[] rhs = new double[m + 2 * kinds];
        double[] price = new double[m + 2 * kinds];
        double lightest = Double.MAX_VALUE;
        for (long w : task.weight) {
            lightest = Math.min(lightest, (double) w);
        }
        for (int i = 0; i < m; i++) {
            rhs[i] = residual[i];
            price[i] = switch (leaving.mode()) {
                case NEVER -> DEAR * Math.min(1000, task.weight[i] / lightest);
                case PRICED -> task.weight[i] / unit;
                case LIMITED -> 0;
            };
        }
        for (int k = 0; k < kinds; k++) {
            rhs[m + k] = -most[k];
            rhs[m + kinds + k] = least[k];
            price[m + k] = DEAR;
            price[m + kinds + k] = DEAR;
        }
        Simplex simplex = new Simplex(rhs, price, seed);
        if (leaving.mode() == Leaving.Mode.LIMITED) {
            limit(simplex, m);
        }
        return simplex;
    }

    private void limit(Simplex simplex, int m) {
        double heaviest = heaviest();
        int[] left = new int[m];
        double[] coefficient = new double[m];
        for (int i = 0; i < m; i++) {
            left[i] = simplex.artificial(i);
            coefficient[i] = -task.weight[i] / heaviest;
        }
        simplex.addRow(-leaving.weight() / heaviest, left, coefficient, DEAR);
    }

    private double heaviest() {
        double heaviest = 1;
        for (long w : task.weight) {
            heaviest = Math.max(heaviest, (double) w);
        }
        return heaviest;
    }

    private boolean add(Pattern pattern) {
        if (pattern.empty() || !known.add(pattern)) {
            return false;
        }
        int size = pattern.item.length;
        int extra = counted ? 2 : 0;
        int[] rows = Arrays.copyOf(pattern.item, size + extra);
        double[] values = new double[size + extra];
        for (int t = 0; t < size; t++) {
            values[t] = pattern.count[t];
        }
        if (counted) {
            rows[size] = task.items + pattern.kind;
            values[size] = -1;
            rows[size + 1] = task.items + task.kinds.length + pattern.kind;
            values[size + 1] = 1;
        }
        lp.addColumn(rows, values, pattern.cost / unit);
        columns.add(pattern);
        return true;
    }

    /** From now on gives up on patterns that are hard to find, and with them on most bounds. */
    void hasty(boolean only) {
        hasty = only;
    }

    /** From now on ends when the bound is almost as high as it can get. */
    void rough() {
        slack = ROUGH;
    }

    /** Adds patterns from elsewhere. */
    void addAll(List<Pattern> patterns) {
        for (Pattern pattern : patterns) {
            add(pattern);
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
        bound = Bound.NOTHING;
        double smooth = SMOOTH;
        for (int round = 0; round < rounds && !budget.over(); round++) {
            tidy();
            if (!lp.primal(budget)) {
                return;
            }
            double[] duals = lp.duals();
            double[] used = mixed(duals, smooth);
            int added = generate(used, duals, true, budget);
            if (added == 0 && !hasty) {
                added = generate(used, duals, false, budget);
                if (enough(cutoff, whole)) {
                    return;
                }
            } else if (round % 8 == 7 && !hasty) {
                generate(used, duals, false, budget);
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
                smooth = smooth > 0.3 ? 0.3 : 0;
            }
        }
    }

    private boolean enough(long cutoff, boolean whole) {
        long proven = task.roundUp(bound.ceiling());
        return proven >= cutoff
                || (slack > 0 && proven >= value() * (1 - slack))
                || (whole && proven >= value() - 1e-6 * unit);
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

    private int generate(double[] used, double[] duals, boolean hasty, Budget budget) {
        long[] price = new long[task.items];
        for (int i = 0; i < price.length; i++) {
            price[i] = whole(used[i]);
        }
        long[] need = new long[task.kinds.length];
        if (counted) {
            for (int k = 0; k < need.length; k++) {
                double net = used[task.items + k] - used[task.items + need.length + k];
                need[k] = (long) Math.floor(net * unit * scale);
            }
        }
        Pricer.Offers offers = pricer.price(price, scale, residual, need, hasty, budget);
        if (offers.safe) {
            improveBound(price, used, offers.net);
        }
        int added = 0;
        for (Pattern pattern : offers.patterns) {
            if (reduced(pattern, duals) < -Simplex.EPS * 10 && add(pattern)) {
                added++;
            }
        }
        return added;
    }

    private long whole(double dual) {
        return (long) Math.floor(Math.max(0, Math.min(dual * unit * scale, 1e17)));
    }

    private void improveBound(long[] price, double[] used, long[] net) {
        long mu = 0;
        if (leaving.mode() == Leaving.Mode.LIMITED) {
            mu = (long) Math.ceil(Math.max(0, used[used.length - 1]) / heaviest() * unit * scale);
        }
        new SafeBound(task, leaving)
                .of(scale, price, mu, net, residual, least, most)
                .ifPresent(found -> {
                    if (bound.price().length == 0 || found.higherThan(bound)) {
                        bound = found;
                        center = used;
                    }
                });
    }

    private double reduced(Pattern pattern, double[] duals) {
        double d = pattern.cost / unit;
        for (int t = 0; t < pattern.item.length; t++) {
            d -= duals[pattern.item[t]] * pattern.count[t];
        }
        if (counted) {
            d += duals[task.items + pattern.kind] - duals[task.items + task.kinds.length + pattern.kind];
        }
        return d;
    }

    private void tidy() {
        int room = 8 * lp.rows() + 3000;
        if (lp.columns() <= room) {
            return;
        }
        double[] price = new double[lp.columns()];
        for (int j = 0; j < price.length; j++) {
            price[j] = lp.reduced(j);
        }
        double[] sorted = price.clone();
        Arrays.sort(sorted);
        double limit = sorted[room / 2];
        drop(j -> price[j] > limit);
    }

    private void drop(IntPredicate which) {
        int[] old = lp.dropColumns(which);
        List<Pattern> kept = new ArrayList<>(old.length);
        for (int j : old) {
            kept.add(columns.get(j));
        }
        columns = kept;
        known.retainAll(new HashSet<>(kept));
    }

    /** The best safe bound of the last {@link #solve}, on what is still to be planned. */
    Bound bound() {
        return bound;
    }

    boolean converged() {
        return converged;
    }

    /** Value of the linear program in units of cost. */
    double value() {
        return lp.objective() * unit;
    }

    /** Patterns with their values in the linear program, zero left out. */
    List<Share> shares() {
        double[] values = lp.values();
        List<Share> shares = new ArrayList<>();
        for (int j = 0; j < values.length; j++) {
            if (values[j] > 1e-6 && !columns.get(j).empty()) {
                shares.add(new Share(columns.get(j), values[j]));
            }
        }
        return shares;
    }

    /** How much of the demand the program cannot meet. */
    double unmet() {
        double[] values = lp.values();
        double sum = 0;
        for (int i = 0; i < task.items; i++) {
            sum += values[lp.artificial(i)];
        }
        return sum;
    }

    record Share(Pattern pattern, double value) {}

    /** All patterns in the program. */
    List<Pattern> patterns() {
        return columns.stream().filter(pattern -> !pattern.empty()).toList();
    }

    /** Cuts so many reels by this pattern for good: what remains is to be planned with what remains. */
    void fix(Pattern pattern, int times) {
        for (int t = 0; t < pattern.item.length; t++) {
            int i = pattern.item[t];
            residual[i] = Math.max(0, residual[i] - pattern.count[t] * times);
            lp.rhs(i, residual[i]);
        }
        most[pattern.kind] -= times;
        least[pattern.kind] = Math.max(0, least[pattern.kind] - times);
        if (counted) {
            lp.rhs(task.items + pattern.kind, -most[pattern.kind]);
            lp.rhs(task.items + task.kinds.length + pattern.kind, least[pattern.kind]);
        }
    }

    /** After fixing: only patterns within what remains may still be used. */
    void settle(Budget budget) {
        boolean[] improper = new boolean[columns.size()];
        for (int j = 0; j < improper.length; j++) {
            Pattern pattern = columns.get(j);
            improper[j] = !pattern.empty() && pattern.timesWithin(residual) < 1;
        }
        drop(j -> improper[j]);
        lp.dual(Double.MAX_VALUE, budget);
        for (int j = 0; j < columns.size(); j++) {
            Pattern pattern = columns.get(j);
            if (!pattern.empty() && pattern.timesWithin(residual) < 1) {
                lp.cost(j, pattern.cost / unit + IMPROPER);
            }
        }
    }

    /** Limits the reels used of every kind. */
    void counts(int[] from, int[] to, Budget budget) {
        for (int k = 0; k < from.length; k++) {
            least[k] = from[k];
            most[k] = to[k];
            lp.rhs(task.items + k, -to[k]);
            lp.rhs(task.items + from.length + k, from[k]);
        }
        lp.dual(Double.MAX_VALUE, budget);
    }

    /** Whether kinds are counted, so that {@link #counts} may be called. */
    boolean counted() {
        return counted;
    }
}
