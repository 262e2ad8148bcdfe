package bitterend.packing.patterns;

import java.util.Arrays;

/**
 * The rows of the master program: one for every item, where reels are counted two for every kind, and where the weight
 * left out is limited one for that.
 */
final class MasterRows {
    private static final double DEAR = 100;
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
        boolean limited = task.kinds.length > 1;
        for (Kind kind : task.kinds) {
            limited |= kind.limited;
        }
        counted = limited;
    }

    /** The row for the most reels of a kind. */
    int most(int kind) {
        return task.items + kind;
    }

    /** The row for the least reels of a kind. */
    int least(int kind) {
        return task.items + task.kinds.length + kind;
    }

    /** The program without any patterns. */
    Simplex program(int[] demand, int[] least, int[] most, long seed) {
        int kinds = counted ? task.kinds.length : 0;
        double[] rhs = new double[task.items + 2 * kinds];
        double[] price = new double[rhs.length];
        Arrays.fill(price, DEAR);
        double lightest = lightest();
        for (int i = 0; i < task.items; i++) {
            rhs[i] = demand[i];
            price[i] = leavingOut(i, lightest);
        }
        for (int k = 0; k < kinds; k++) {
            rhs[most(k)] = -most[k];
            rhs[least(k)] = least[k];
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

    /** The rows that a pattern has an entry in. */
    int[] at(Pattern pattern) {
        int size = pattern.item.length;
        int[] rows = Arrays.copyOf(pattern.item, size + (counted ? 2 : 0));
        if (counted) {
            rows[size] = most(pattern.kind);
            rows[size + 1] = least(pattern.kind);
        }
        return rows;
    }

    /** Its entries there. */
    double[] values(Pattern pattern) {
        int size = pattern.item.length;
        double[] values = new double[size + (counted ? 2 : 0)];
        for (int t = 0; t < size; t++) {
            values[t] = pattern.count[t];
        }
        if (counted) {
            values[size] = -1;
            values[size + 1] = 1;
        }
        return values;
    }

    /** The reduced cost of a pattern by these duals. */
    double reduced(Pattern pattern, double[] duals) {
        double d = pattern.cost / units.cost;
        for (int t = 0; t < pattern.item.length; t++) {
            d -= duals[pattern.item[t]] * pattern.count[t];
        }
        if (counted) {
            d += duals[most(pattern.kind)] - duals[least(pattern.kind)];
        }
        return d;
    }

    /** What the reels of each kind are worth by these duals, beyond what is drawn from them. */
    double[] ofKinds(double[] duals) {
        double[] net = new double[task.kinds.length];
        for (int k = 0; counted && k < net.length; k++) {
            net[k] = duals[most(k)] - duals[least(k)];
        }
        return net;
    }
}
