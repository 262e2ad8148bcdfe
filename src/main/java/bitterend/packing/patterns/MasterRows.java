package bitterend.packing.patterns;

import bitterend.packing.linear.Simplex;
import java.util.Arrays;

/**
 * The rows of the master program: one for every item, where reels are counted one for every kind, and where the weight
 * left out is limited one for that. Rows for reels that must be used come later, once a branch asks for them.
 */
final class MasterRows {
    static final int NO_ROW = -1;
    static final double DEAR = 100;
    private static final double DEAREST = 1000;

    private final Task task;
    private final Leaving leaving;
    private final MasterUnits units;
    /** Reels of a kind are limited, or there are several kinds. */
    final boolean counted;

    MasterRows(Task task, Leaving leaving, MasterUnits units) {
        this.task = task;
        this.leaving = leaving;
        this.units = units;
        counted = task.counted();
    }

    /** The row for the most reels of a kind. */
    int most(int kind) {
        return task.items + kind;
    }

    /** The row for the weight left out. */
    int leaving() {
        return task.items + (counted ? task.kinds.length : 0);
    }

    /** The program without any patterns. */
    Simplex program(int[] demand, int[] most, long seed) {
        int kinds = counted ? task.kinds.length : 0;
        double[] rhs = new double[task.items + kinds];
        double[] price = new double[rhs.length];
        Arrays.fill(price, DEAR);
        double lightest = lightest();
        for (int i = 0; i < task.items; i++) {
            rhs[i] = demand[i];
            price[i] = leavingOut(i, lightest);
        }
        for (int k = 0; k < kinds; k++) {
            rhs[most(k)] = -most[k];
        }
        Simplex program = new Simplex(rhs, price, seed);
        if (leaving.mode() == Leaving.Mode.LIMITED) {
            limit(program);
        }
        return program;
    }

    /** The price of leaving out a piece of an item. */
    private double leavingOut(int i, double lightest) {
        return switch (leaving.mode()) {
            case NEVER -> DEAR * Math.min(DEAREST, task.weight[i] / lightest);
            case PRICED -> task.weight[i] / units.cost;
            case LIMITED -> 0;
        };
    }

    private double lightest() {
        double lightest = Double.MAX_VALUE;
        for (long w : task.weight) {
            lightest = Math.min(lightest, (double) w);
        }
        return lightest;
    }

    private void limit(Simplex program) {
        int[] left = new int[task.items];
        double[] coefficient = new double[task.items];
        for (int i = 0; i < task.items; i++) {
            left[i] = program.artificial(i);
            coefficient[i] = -task.weight[i] / units.weight;
        }
        program.addRow(-leaving.weight() / units.weight, left, coefficient, DEAR);
    }

    /**
     * The rows that a pattern has an entry in.
     *
     * @param least the row for the least reels of its kind, or {@link #NO_ROW}
     */
    int[] at(Pattern pattern, int least) {
        int size = pattern.item.length;
        int[] rows = Arrays.copyOf(pattern.item, size(pattern, least));
        if (counted) {
            rows[size] = most(pattern.kind);
        }
        if (least != NO_ROW) {
            rows[size + 1] = least;
        }
        return rows;
    }

    private int size(Pattern pattern, int least) {
        return pattern.item.length + (counted ? 1 : 0) + (least == NO_ROW ? 0 : 1);
    }

    /** Its entries there. */
    double[] values(Pattern pattern, int least) {
        int size = pattern.item.length;
        double[] values = new double[size(pattern, least)];
        for (int t = 0; t < size; t++) {
            values[t] = pattern.count[t];
        }
        if (counted) {
            values[size] = -1;
        }
        if (least != NO_ROW) {
            values[size + 1] = 1;
        }
        return values;
    }

    /** The reduced cost of a pattern by these duals. */
    double reduced(Pattern pattern, double[] duals, double ofKind) {
        double d = pattern.cost / units.cost;
        for (int t = 0; t < pattern.item.length; t++) {
            d -= duals[pattern.item[t]] * pattern.count[t];
        }
        return d + ofKind;
    }

    /** What the reels of each kind are worth by these duals, beyond what is drawn from them. */
    double[] ofKinds(double[] duals, int[] least) {
        double[] net = new double[task.kinds.length];
        for (int k = 0; counted && k < net.length; k++) {
            net[k] = duals[most(k)] - (least[k] == NO_ROW ? 0 : duals[least[k]]);
        }
        return net;
    }

    /** The duals that whole prices come from. */
    double[] duals(Bound bound, long[] net, int size) {
        double[] duals = new double[size];
        double unit = units.cost * bound.scale();
        for (int i = 0; i < task.items; i++) {
            duals[i] = bound.price()[i] / unit;
        }
        for (int k = 0; k < net.length && counted; k++) {
            duals[most(k)] = Math.max(0, net[k]) / unit;
        }
        if (leaving.mode() == Leaving.Mode.LIMITED) {
            duals[leaving()] = bound.unplannedPrice() * units.weight / unit;
        }
        return duals;
    }
}
