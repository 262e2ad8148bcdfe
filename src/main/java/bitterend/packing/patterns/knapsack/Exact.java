package bitterend.packing.patterns.knapsack;

/** Arithmetic that does not overflow. */
public final class Exact {
    private Exact() {}

    /** Sign of {@code a * b - c * d}. */
    public static int compareProducts(long a, long b, long c, long d) {
        long high = Math.multiplyHigh(a, b);
        long otherHigh = Math.multiplyHigh(c, d);
        return high != otherHigh ? Long.compare(high, otherHigh) : Long.compareUnsigned(a * b, c * d);
    }
}
