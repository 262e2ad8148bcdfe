package bitterend.quoting.sharing;

import bitterend.demand.Piece;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.fraction.BigFraction;

/**
 * The prices of the greatest sum of which no load of a new reel is worth more than it costs, one for each length: the dual
 * of the linear program over all loads (Gilmore and Gomory, Operations Research 9, 1961), by adding the load that breaks
 * it most until none does. Exact but for the last rounding down, which most programs do not need.
 */
final class DualProgram {
    private static final int MOST_LENGTHS = 16;
    private static final int MOST_ROUNDS = 300;
    private static final BigInteger FINEST = BigInteger.ONE.shiftLeft(24);

    private final NewRope rope;
    private final List<Piece> pieces;
    private final List<Long> taken;
    private final BigFraction[] alone;
    private final ExactProgram program;

    private DualProgram(NewRope rope, List<Piece> pieces, SortedMap<Long, Integer> demand) {
        this.rope = rope;
        this.pieces = pieces;
        taken = List.copyOf(demand.keySet());
        alone = taken.stream()
                .map(one -> new BigFraction(BigInteger.valueOf(rope.cost(one))))
                .toArray(BigFraction[]::new);
        program =
                new ExactProgram(demand.values().stream().map(BigFraction::new).toArray(BigFraction[]::new));
        for (int i = 0; i < taken.size(); i++) {
            program.atLeast(alone[i].negate(), unit(i, BigFraction.MINUS_ONE));
        }
    }

    /** The prices; nothing when there are too many lengths to find them this way. */
    static Optional<DualPrices> solve(NewRope rope, List<Piece> pieces) {
        SortedMap<Long, Integer> demand = new TreeMap<>();
        pieces.forEach(piece -> demand.merge(rope.taken(piece.cut()), 1, Integer::sum));
        return demand.size() > MOST_LENGTHS ? Optional.empty() : new DualProgram(rope, pieces, demand).solve();
    }

    private Optional<DualPrices> solve() {
        for (int round = 0; round < MOST_ROUNDS; round++) {
            DualPrices prices = prices(program.solve().values().orElseThrow());
            LoadTable loads = prices.loads(rope, pieces);
            LoadTable.Excess worst = loads.worst(prices.scale());
            if (!worst.isPositive()) {
                return Optional.of(prices);
            }
            keepWithin(loads.load(worst.taken()), worst.taken());
        }
        return Optional.empty();
    }

    /** The variables are what each price stays below the cost of the piece alone on a reel. */
    private void keepWithin(Map<Long, Integer> load, long takes) {
        BigFraction[] counts = unit(0, BigFraction.ZERO);
        BigFraction apart = BigFraction.ZERO;
        for (int i = 0; i < counts.length; i++) {
            counts[i] = new BigFraction(load.getOrDefault(taken.get(i), 0));
            apart = apart.add(alone[i].multiply(counts[i]));
        }
        program.atLeast(apart.subtract(BigInteger.valueOf(rope.cost(takes))), counts);
    }

    private BigFraction[] unit(int place, BigFraction value) {
        BigFraction[] row = new BigFraction[taken.size()];
        Arrays.fill(row, BigFraction.ZERO);
        row[place] = value;
        return row;
    }

    /** In units that show every price exactly, or in 2^24ths rounded down where those would be finer. */
    private DualPrices prices(List<BigFraction> below) {
        List<BigFraction> exact = IntStream.range(0, alone.length)
                .mapToObj(i -> alone[i].subtract(below.get(i)))
                .toList();
        BigInteger scale = BigInteger.ONE;
        for (BigFraction price : exact) {
            scale = scale.multiply(price.getDenominator()).divide(scale.gcd(price.getDenominator()));
        }
        BigInteger units = scale.min(FINEST);
        List<Long> whole = new ArrayList<>();
        exact.forEach(price -> whole.add(price.getNumerator()
                .multiply(units)
                .divide(price.getDenominator())
                .longValueExact()));
        Map<String, Long> byPiece = new TreeMap<>();
        pieces.forEach(piece -> byPiece.put(piece.id(), whole.get(taken.indexOf(rope.taken(piece.cut())))));
        return new DualPrices(byPiece, units.longValueExact());
    }
}
