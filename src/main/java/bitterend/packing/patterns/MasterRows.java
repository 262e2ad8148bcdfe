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

    private final Instance instance;
    private final Rejection rejection;
    private final Scaling units;
    /** Reels of a kind are limited, or there are several kinds. */
    final boolean counted;

    MasterRows(Instance instance, Rejection rejection, Scaling units) {
        this.instance = instance;
        this.rejection = rejection;
        this.units = units;
        counted = instance.counted();
    }

    /** The row for the most reels of a kind. */
    int most(int type) {
        return instance.items + type;
    }

    /** The row for the weight left out. */
    int rejection() {
        return instance.items + (counted ? instance.types.length : 0);
    }

    /** The program without any patterns. */
    Simplex program(int[] demand, int[] most, long seed) {
        int types = counted ? instance.types.length : 0;
        double[] rhs = new double[instance.items + types];
        double[] price = new double[rhs.length];
        Arrays.fill(price, DEAR);
        double lightest = lightest();
        for (int i = 0; i < instance.items; i++) {
            rhs[i] = demand[i];
            price[i] = leavingOut(i, lightest);
        }
        for (int k = 0; k < types; k++) {
            rhs[most(k)] = -most[k];
        }
        Simplex program = new Simplex(rhs, price, seed);
        if (rejection.mode() == Rejection.Mode.LIMITED) {
            limit(program);
        }
        return program;
    }

    /** The price of leaving out a piece of an item. */
    private double leavingOut(int i, double lightest) {
        return switch (rejection.mode()) {
            case NEVER -> DEAR * Math.min(DEAREST, instance.weight[i] / lightest);
            case PRICED -> instance.weight[i] / units.cost;
            case LIMITED -> 0;
        };
    }

    private double lightest() {
        double lightest = Double.MAX_VALUE;
        for (long w : instance.weight) {
            lightest = Math.min(lightest, (double) w);
        }
        return lightest;
    }

    private void limit(Simplex program) {
        int[] left = new int[instance.items];
        double[] coefficient = new double[instance.items];
        for (int i = 0; i < instance.items; i++) {
            left[i] = program.artificial(i);
            coefficient[i] = -instance.weight[i] / units.weight;
        }
        program.addRow(-rejection.weight() / units.weight, left, coefficient, DEAR);
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
            rows[size] = most(pattern.type);
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
        double[] reducedProfit = new double[instance.types.length];
        for (int k = 0; counted && k < reducedProfit.length; k++) {
            reducedProfit[k] = duals[most(k)] - (least[k] == NO_ROW ? 0 : duals[least[k]]);
        }
        return reducedProfit;
    }

    /** The duals that whole prices come from. */
    double[] duals(Bound bound, long[] reducedProfit, int size) {
        double[] duals = new double[size];
        double unit = units.cost * bound.scale();
        for (int i = 0; i < instance.items; i++) {
            duals[i] = bound.price()[i] / unit;
        }
        for (int k = 0; k < reducedProfit.length && counted; k++) {
            duals[most(k)] = Math.max(0, reducedProfit[k]) / unit;
        }
        if (rejection.mode() == Rejection.Mode.LIMITED) {
            duals[rejection()] = bound.unplannedPrice() * units.weight / unit;
        }
        return duals;
    }
}
