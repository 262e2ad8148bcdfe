package bitterend.packing.loads;

import bitterend.packing.effort.Budget;
import bitterend.packing.linear.Simplex;
import java.util.ArrayList;
import java.util.List;

/** Which columns of a program are open in a domain: those it has no use for are shut all at once. */
final class Gate {
    /** On columns that a domain has no use for. */
    private static final double BARRED = 10_000;

    private final Simplex lp;
    private final List<Integer> shut = new ArrayList<>();

    Gate(Simplex lp) {
        this.lp = lp;
    }

    /** A column is open at a price, or it is shut. */
    void pass(int column, boolean open, double price) {
        lp.cost(column, price);
        if (!open) {
            shut.add(column);
        }
    }

    /** Shuts those that are not open. */
    void close(Budget budget) {
        lp.shut(shut.stream().mapToInt(Integer::intValue).toArray(), BARRED, budget);
    }
}
