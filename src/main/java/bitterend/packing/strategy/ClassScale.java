package bitterend.packing.strategy;

import bitterend.packing.Undone;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;

/**
 * Work left undone as one number, for an engine that knows one weight: a unit of a class counts more than all work of the
 * later classes together. Where that number would grow too large the latest classes count alike, and it no longer
 * ranks every two plans as the classes do.
 */
final class ClassScale {
    /** Beyond so many bits a linear program no longer tells small weights from its own rounding. */
    private static final int BITS = 36;

    private final long[] factors;
    private final boolean exact;

    private ClassScale(long[] factors, boolean exact) {
        this.factors = factors;
        this.exact = exact;
    }

    /** The finest scale for all the work there is. */
    static ClassScale of(Undone all) {
        for (int alike = 1; alike < Undone.CLASSES; alike++) {
            Optional<long[]> factors = factors(all, alike);
            if (factors.isPresent()) {
                return new ClassScale(factors.get(), alike == 1);
            }
        }
        return new ClassScale(LongStream.generate(() -> 1).limit(Undone.CLASSES).toArray(), false);
    }

    /** The latest classes count alike, so many of them. */
    private static Optional<long[]> factors(Undone all, int alike) {
        long[] factors = new long[Undone.CLASSES];
        BigInteger sum = BigInteger.ZERO;
        for (int k = Undone.CLASSES; k >= 1; k--) {
            BigInteger factor = k > Undone.CLASSES - alike ? BigInteger.ONE : sum.add(BigInteger.ONE);
            factors[k - 1] = factor.longValueExact();
            sum = sum.add(factor.multiply(BigInteger.valueOf(all.in(k))));
            if (sum.bitLength() > BITS) {
                return Optional.empty();
            }
        }
        return Optional.of(factors);
    }

    /** Whether the numbers of two amounts of work compare as the amounts do. */
    boolean isExact() {
        return exact;
    }

    /** The number of an amount of work. */
    long numberOf(Undone undone) {
        long sum = 0;
        for (int k = 1; k <= Undone.CLASSES; k++) {
            sum = Math.addExact(sum, Math.multiplyExact(factors[k - 1], undone.in(k)));
        }
        return sum;
    }

    /** What a unit of weight costs in each class when a unit of the number costs so much. */
    List<Long> prices(long price) {
        return LongStream.of(factors)
                .map(factor -> Math.multiplyExact(factor, price))
                .boxed()
                .toList();
    }
}
