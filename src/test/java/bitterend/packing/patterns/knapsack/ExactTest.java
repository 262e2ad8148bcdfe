package bitterend.packing.patterns.knapsack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Products beyond 64 bits, compared as big whole numbers compare them. */
final class ExactTest {
    private static final long[] EDGES = {
        Long.MIN_VALUE,
        Long.MIN_VALUE + 1,
        -(1L << 32),
        -3,
        -1,
        0,
        1,
        2,
        3,
        1L << 31,
        1L << 32,
        1L << 62,
        Long.MAX_VALUE
    };

    @Test
    void products_compareAsBigNumbersDo_atTheEdges() {
        for (long a : EDGES) {
            for (long b : EDGES) {
                for (long c : EDGES) {
                    for (long d : EDGES) {
                        compare(a, b, c, d);
                    }
                }
            }
        }
    }

    @Test
    void products_compareAsBigNumbersDo_whereTheyAreNearlyEqual() {
        Random random = new Random(5);
        for (int n = 0; n < 2_000; n++) {
            long a = random.nextLong() >> random.nextInt(64);
            long b = random.nextLong() >> random.nextInt(64);
            compare(a, b, b, a);
            compare(a, b, b, a + 1);
            compare(a, b, a, b - 1);
            compare(a, b, random.nextLong() >> random.nextInt(64), random.nextLong() >> random.nextInt(64));
        }
    }

    @Test
    void products_thatDifferInTheirLowestBitsOnly_areToldApart() {
        assertEquals(1, Exact.compareProducts(1L << 62, 4, Long.MAX_VALUE, 2));
        assertEquals(-1, Exact.compareProducts(Long.MAX_VALUE, 1, 1L << 62, 2));
        assertEquals(1, Exact.compareProducts((1L << 40) + 1, 1L << 40, 1L << 40, 1L << 40));
        assertEquals(0, Exact.compareProducts(1L << 40, 1L << 41, 1L << 41, 1L << 40));
    }

    private static void compare(long a, long b, long c, long d) {
        BigInteger one = BigInteger.valueOf(a).multiply(BigInteger.valueOf(b));
        BigInteger other = BigInteger.valueOf(c).multiply(BigInteger.valueOf(d));
        assertEquals(
                one.compareTo(other),
                Integer.signum(Exact.compareProducts(a, b, c, d)),
                a + " times " + b + " beside " + c + " times " + d);
    }

    @Test
    void divisor_isTheLargestThatDividesBoth() {
        Random random = new Random(6);
        for (int n = 0; n < 1_000; n++) {
            long a = random.nextLong(1L << random.nextInt(1, 63));
            long b = random.nextLong(1L << random.nextInt(1, 63));
            assertEquals(
                    BigInteger.valueOf(a).gcd(BigInteger.valueOf(b)).longValueExact(),
                    Exact.gcd(a, b),
                    a + " and " + b);
        }
        assertEquals(7, Exact.gcd(0, 7));
        assertEquals(7, Exact.gcd(7, 0));
        assertEquals(0, Exact.gcd(0, 0));
    }
}
