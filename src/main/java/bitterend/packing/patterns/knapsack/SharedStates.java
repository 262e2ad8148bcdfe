package bitterend.packing.patterns.knapsack;

import bitterend.packing.effort.Budget;
import org.jspecify.annotations.Nullable;

/** One list of states for all runs of a rope, made when first asked for. */
public final class SharedStates {
    /** States in a list before giving up. */
    public static final int MOST = 3_000_000;

    private final boolean useful;
    private final ItemsByDensity order;
    private final long cap;
    private final Budget budget;
    private @Nullable KnapsackTable list;
    private boolean tried;

    /** @param useful false where a search for each run is cheaper: then there is no list */
    public SharedStates(boolean useful, ItemsByDensity order, long cap, Budget budget) {
        this.useful = useful;
        this.order = order;
        this.cap = cap;
        this.budget = budget;
    }

    /** Whether the list was asked for before. */
    public boolean tried() {
        return tried;
    }

    /** Null when there is none, or there would be too many states. */
    @Nullable
    public KnapsackTable list() {
        if (useful && !tried) {
            tried = true;
            KnapsackTable made = new KnapsackTable(order, cap, MOST);
            list = made.build((next, load, worth) -> false, budget) ? made : null;
        }
        return list;
    }
}
