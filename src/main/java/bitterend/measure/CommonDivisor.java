package bitterend.measure;

/** The largest whole number that divides two of them. The engine of patterns, which knows numbers alone, has its own. */
public final class CommonDivisor {
    private CommonDivisor() {}

    /** Never negative, by Euclid; the other one where one of them is 0. */
    public static long of(long one, long other) {
        long a = one;
        long b = other;
        while (b != 0) {
            long rest = a % b;
            a = b;
            b = rest;
        }
        return Math.abs(a);
    }
}
