package bitterend.packing.patterns;

/** What the numbers of the master program are stated in, and how duals become whole prices. */
final class Scaling {
    private static final int BITS = 60;
    private static final int MOST_BITS = 36;
    private static final double HIGHEST = 1e17;

    /** Cost that is 1 in the program. */
    final double cost;
    /** Units of whole prices in one unit of cost. */
    final long scale;
    /** Weight that is 1 in the program. */
    final double weight;

    Scaling(Instance instance, Rejection rejection) {
        weight = heaviest(instance);
        cost = rejection.mode() == Rejection.Mode.PRICED ? weight : instance.dearest();
        int bits = Math.max(1, Math.getExponent(cost) + 1);
        int pieces = 64 - Long.numberOfLeadingZeros(instance.pieces());
        scale = 1L << Math.max(0, Math.min(MOST_BITS, BITS - pieces) - bits);
    }

    private static double heaviest(Instance instance) {
        double heaviest = 1;
        for (long w : instance.weight) {
            heaviest = Math.max(heaviest, (double) w);
        }
        return heaviest;
    }

    /** The whole price of an item; never below zero, rounded down. */
    long price(double dual) {
        return (long) Math.floor(Math.max(0, Math.min(dual * cost * scale, HIGHEST)));
    }

    /** The net that a kind needs; rounded down. */
    long need(double dual) {
        return (long) Math.floor(dual * cost * scale);
    }

    /** The whole price of one unit of weight left out; rounded up. */
    long ofWeight(double dual) {
        return (long) Math.ceil(Math.max(0, dual) / weight * cost * scale);
    }
}
