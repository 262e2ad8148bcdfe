package bitterend.packing.patterns;

import bitterend.packing.linear.Budget;

/** What the pricer is asked: the best way to draw for these prices. */
final class Question {
    /** Of each item, in {@code 1/scale} of a unit of cost. */
    final long[] price;

    final long scale;
    /** How many of each item may be taken. */
    final int[] bound;
    /** Gives up early: then what comes out proves nothing. */
    final boolean hasty;

    final Budget budget;

    Question(long[] price, long scale, int[] bound, boolean hasty, Budget budget) {
        this.price = price;
        this.scale = scale;
        this.bound = bound;
        this.hasty = hasty;
        this.budget = budget;
    }
}
