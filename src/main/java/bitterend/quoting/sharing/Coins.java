package bitterend.quoting.sharing;

import bitterend.measure.Cost;
import bitterend.measure.Money;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.fraction.BigFraction;

/** Exact shares of a total in whole coins that add up: each rounded down, the coins left over to the largest remainders. */
final class Coins {
    private static final BigInteger MILLIS = BigInteger.valueOf(Cost.MILLIS_PER_MINOR);

    private Coins() {}

    /** Shares in 1/1000 minor unit that add up to the total. */
    static List<Money> of(Cost total, List<BigFraction> shares) {
        List<BigInteger> whole = new ArrayList<>();
        List<BigFraction> rest = new ArrayList<>();
        for (BigFraction share : shares) {
            BigFraction coins = share.divide(MILLIS);
            BigInteger below = floor(coins);
            whole.add(below);
            rest.add(coins.subtract(below));
        }
        long given = whole.stream().reduce(BigInteger.ZERO, BigInteger::add).longValueExact();
        long over = total.rounded().minor() - given;
        List<Integer> byRest = IntStream.range(0, shares.size())
                .boxed()
                .sorted(Comparator.comparing(rest::get, Comparator.reverseOrder()))
                .toList();
        byRest.stream().limit(over).forEach(i -> whole.set(i, whole.get(i).add(BigInteger.ONE)));
        return whole.stream().map(coins -> new Money(coins.longValueExact())).toList();
    }

    private static BigInteger floor(BigFraction number) {
        BigInteger[] parts = number.getNumerator().divideAndRemainder(number.getDenominator());
        return parts[1].signum() < 0 ? parts[0].subtract(BigInteger.ONE) : parts[0];
    }
}
