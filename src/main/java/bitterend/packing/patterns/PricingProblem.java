package bitterend.packing.patterns;

import bitterend.packing.effort.Budget;

/** What the pricer is asked: the best way to draw for these prices. */
final class PricingProblem {
    /** Of each item, in {@code 1/scale} of a unit of cost. */
    final long[] price;

    final long scale;
    /** How many of each item may be taken. */
    final int[] bound;
    /** Gives up early: then what comes out proves nothing. */
    final boolean heuristic;

    final Budget budget;

    PricingProblem(long[] price, long scale, int[] bound, boolean heuristic, Budget budget) {
        this.price = price;
        this.scale = scale;
        this.bound = bound;
        this.heuristic = heuristic;
        this.budget = budget;
    }
}
