package bitterend.packing.patterns;

import bitterend.packing.patterns.knapsack.Exact;

/**
 * A lower bound made of whole numbers.
 *
 * <p>Source: A. A. Farley, "A note on bounding a class of linear programming problems, including cutting stock
 * problems", Operations Research 38 (1990) 922-923; L. S. Lasdon, <i>Optimization Theory for Large Systems</i>,
 * Macmillan 1970 (the Lagrangian bound with supplies).
 */
final class Bound {
    static final Bound NOTHING = new Bound(1, new long[0], 0, 0);

    private final long scale;
    private final long[] price;
    private final long unplannedPrice;
    private final long numerator;

    /**
     * @param scale units of price in one unit of cost
     * @param price of each of the task's items
     * @param unplannedPrice of one unit of weight left out
     * @param numerator the bound times the scale
     */
    Bound(long scale, long[] price, long unplannedPrice, long numerator) {
        this.scale = scale;
        this.price = price;
        this.unplannedPrice = unplannedPrice;
        this.numerator = numerator;
    }

    long scale() {
        return scale;
    }

    long[] price() {
        return price;
    }

    long unplannedPrice() {
        return unplannedPrice;
    }

    long numerator() {
        return numerator;
    }

    /** Smallest whole number not below the bound. */
    long ceiling() {
        return Math.max(0, -Math.floorDiv(-numerator, scale));
    }

    /** Compares two fractions exactly. */
    boolean higherThan(Bound other) {
        return Exact.compareProducts(numerator, other.scale, other.numerator, scale) > 0;
    }
}
