package bitterend.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.fraction.BigFraction;

/** Exact shares of a total in whole coins that add up: each rounded down, the coins left over to the largest remainders. */
public final class Coins {
    private static final BigInteger MILLIS = BigInteger.valueOf(Cost.MILLIS_PER_MINOR);

    private Coins() {}

    /** Shares in 1/1000 minor unit that add up to the total. */
    public static List<Money> of(Cost total, List<BigFraction> shares) {
        List<BigFraction> coins =
                shares.stream().map(share -> share.divide(MILLIS)).toList();
        return whole(total.rounded().minor(), coins).stream().map(Money::new).toList();
    }

    /**
     * A sum of money shared by parts of a whole.
     *
     * @param parts not negative, and not all nothing
     */
    public static List<Money> byParts(Money total, List<Long> parts) {
        BigInteger all = parts.stream().map(BigInteger::valueOf).reduce(BigInteger.ZERO, BigInteger::add);
        List<BigFraction> shares = parts.stream()
                .map(part -> new BigFraction(BigInteger.valueOf(total.minor()).multiply(BigInteger.valueOf(part)), all))
                .toList();
        return whole(total.minor(), shares).stream().map(Money::new).toList();
    }

    /** Shares that add up to a total, or nearly so, in whole units that do. */
    public static List<Long> whole(long total, List<BigFraction> shares) {
        List<BigInteger> whole = new ArrayList<>();
        List<BigFraction> rest = new ArrayList<>();
        for (BigFraction share : shares) {
            BigInteger below = floor(share);
            whole.add(below);
            rest.add(share.subtract(below));
        }
        long given = whole.stream().reduce(BigInteger.ZERO, BigInteger::add).longValueExact();
        IntStream.range(0, shares.size())
                .boxed()
                .sorted(Comparator.comparing(rest::get, Comparator.reverseOrder()))
                .limit(total - given)
                .forEach(i -> whole.set(i, whole.get(i).add(BigInteger.ONE)));
        return whole.stream().map(BigInteger::longValueExact).toList();
    }

    /** The nearest whole number, of two the one farther from nothing. */
    public static long nearest(BigFraction number) {
        return new BigDecimal(number.getNumerator())
                .divide(new BigDecimal(number.getDenominator()), 0, RoundingMode.HALF_UP)
                .longValueExact();
    }

    private static BigInteger floor(BigFraction number) {
        BigInteger[] parts = number.getNumerator().divideAndRemainder(number.getDenominator());
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }
}
