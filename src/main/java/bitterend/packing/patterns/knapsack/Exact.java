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

    /** The largest number that divides both; the other one where one of them is 0. */
    public static long gcd(long a, long b) {
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return a;
    }
}
