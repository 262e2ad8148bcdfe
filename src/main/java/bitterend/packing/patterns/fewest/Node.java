package bitterend.packing.patterns.fewest;

import org.jspecify.annotations.Nullable;

/** A node of the search: what is decided above it, and how it ended. */
final class Node {
    final Limits limits;
    /** Columns that were basic above it. */
    final int[] basics;
    /** Columns that are basic once it is solved. */
    int[] end = {};
    /** Prices that leave no plan, once it is shut by them. */
    int @Nullable [] prices;

    @Nullable
    Decision decision;

    @Nullable
    Node yes;

    @Nullable
    Node no;

    Node(Limits limits, int[] basics) {
        this.limits = limits;
        this.basics = basics;
    }

    /** No plan is left in it. */
    boolean isShut() {
        return prices != null || limits.isEmpty();
    }
}
