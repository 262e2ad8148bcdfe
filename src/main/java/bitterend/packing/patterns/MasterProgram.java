package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;
import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** The linear program over the patterns found so far, and what of the demand and the reels it is about. */
final class MasterProgram {
    /** Price, in units of the program, on patterns that cut more than is left to be planned. */
    private static final double IMPROPER = 20;

    private static final double SMALL = 1e-6;

    private final Instance instance;
    final Scaling units;
    final MasterRows rows;
    private final Simplex lp;
    /** The pattern of each column, nothing for the rows' own. */
    private List<Pattern> columns;

    private final Set<Pattern> known;
    /** Pieces still to be planned. */
    final int[] residual;
    /** Reels of each kind that may still be used. */
    final int[] most;
    /** Reels of each kind that must still be used. */
    final int[] least;
    /** The row for the least reels of each kind, {@link MasterRows#NO_ROW} until a branch asks for it. */
    final int[] leastRow;

    MasterProgram(Instance instance, Rejection rejection, long seed) {
        this.instance = instance;
        units = new Scaling(instance, rejection);
        rows = new MasterRows(instance, rejection, units);
        residual = instance.demand.clone();
        most = new int[instance.types.length];
        least = new int[instance.types.length];
        leastRow = new int[instance.types.length];
        Arrays.fill(leastRow, MasterRows.NO_ROW);
        for (ReelType type : instance.types) {
            most[type.index] = type.supply;
        }
        lp = rows.program(residual, most, seed);
        columns = new ArrayList<>();
        known = new HashSet<>();
        while (columns.size() < lp.columns()) {
            columns.add(Pattern.NOTHING);
        }
    }

    private MasterProgram(MasterProgram from) {
        instance = from.instance;
        units = from.units;
        rows = from.rows;
        lp = from.lp.copy();
        columns = new ArrayList<>(from.columns);
        known = new HashSet<>(from.known);
        residual = from.residual.clone();
        most = from.most.clone();
        least = from.least.clone();
        leastRow = from.leastRow.clone();
    }

    MasterProgram copy() {
        return new MasterProgram(this);
    }

    /** Adds a pattern; false when it was there already. */
    boolean add(Pattern pattern) {
        if (pattern.empty() || !known.add(pattern)) {
            return false;
        }
        int row = leastRow[pattern.type];
        lp.addColumn(rows.at(pattern, row), rows.values(pattern, row), pattern.cost / units.cost);
        columns.add(pattern);
        return true;
    }

    /** Solves the program after columns were added; false when the budget ended first. */
    boolean solve(Budget budget) {
        tidy();
        return lp.primal(budget);
    }

    /** Where there are too many columns, those that promise least are dropped. */
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

    double[] duals() {
        return lp.duals();
    }

    /** What the program comes to, in units of cost. */
    double value() {
        return lp.objective() * units.cost;
    }

    /** Patterns with their values, zero left out. */
    List<Master.Share> shares() {
        double[] values = lp.values();
        List<Master.Share> shares = new ArrayList<>();
        for (int j = 0; j < values.length; j++) {
            if (values[j] > SMALL && !columns.get(j).empty()) {
                shares.add(new Master.Share(columns.get(j), values[j]));
            }
        }
        return shares;
    }

    /** How much of the demand the program cannot meet. */
    double unmet() {
        double[] values = lp.values();
        double sum = 0;
        for (int i = 0; i < instance.items; i++) {
            sum += values[lp.artificial(i)];
        }
        return sum;
    }

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
        int type = pattern.type;
        limit(type, Math.max(0, least[type] - times), most[type] - times);
    }

    private void limit(int type, int from, int to) {
        least[type] = from;
        most[type] = to;
        if (rows.counted) {
            lp.rhs(rows.most(type), -to);
        }
        if (leastRow[type] != MasterRows.NO_ROW) {
            lp.rhs(leastRow[type], from);
        } else if (from > 0 && rows.counted) {
            leastRow[type] = addLeast(type, from);
        }
    }

    private int addLeast(int type, int from) {
        int[] at = IntStream.range(0, columns.size())
                .filter(j -> !columns.get(j).empty() && columns.get(j).type == type)
                .toArray();
        double[] coefficients = new double[at.length];
        Arrays.fill(coefficients, 1);
        int row = lp.addRow(from, at, coefficients, MasterRows.DEAR);
        columns.add(Pattern.NOTHING);
        columns.add(Pattern.NOTHING);
        return row;
    }

    int size() {
        return lp.rows();
    }

    /** After fixing: only patterns within what remains may still be used. */
    void settle(Budget budget) {
        boolean[] improper = new boolean[columns.size()];
        for (int j = 0; j < improper.length; j++) {
            improper[j] = improper(columns.get(j));
        }
        drop(j -> improper[j]);
        lp.dual(Double.MAX_VALUE, budget);
        for (int j = 0; j < columns.size(); j++) {
            Pattern pattern = columns.get(j);
            if (improper(pattern)) {
                lp.cost(j, pattern.cost / units.cost + IMPROPER);
            }
        }
    }

    private boolean improper(Pattern pattern) {
        return !pattern.empty() && pattern.timesWithin(residual) < 1;
    }

    /** Limits the reels used of every kind. */
    void counts(int[] from, int[] to, Budget budget) {
        for (int k = 0; k < from.length; k++) {
            limit(k, from[k], to[k]);
        }
        lp.dual(Double.MAX_VALUE, budget);
    }
}
