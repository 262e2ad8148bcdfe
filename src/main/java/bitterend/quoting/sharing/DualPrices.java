package bitterend.quoting.sharing;

import bitterend.demand.Piece;
import bitterend.packing.Bound;
import java.math.BigInteger;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A price for every piece such that no load of any new reel is priced above its cost. Whatever a group of customers would
 * cut alone is then priced at no more than it would cost them.
 *
 * @param prices by piece id, in units of which {@code scale} make 1/1000 minor unit; none negative
 * @param scale units in 1/1000 minor unit
 */
record DualPrices(Map<String, Long> prices, long scale) {
    private static final BigInteger MOST = BigInteger.ONE.shiftLeft(60);
    private static final long OWN_SCALE = 1000;

    /**
     * The prices of the greatest sum where there are few enough lengths to find them exactly; else those behind the proven
     * bound, lowered until no load is priced above its cost.
     */
    static DualPrices of(NewRope rope, List<Piece> pieces, List<Bound> bounds) {
        return DualProgram.solve(rope, pieces).orElseGet(() -> behindBound(rope, pieces, bounds));
    }

    private static DualPrices behindBound(NewRope rope, List<Piece> pieces, List<Bound> bounds) {
        Map<String, Long> stated = new HashMap<>();
        long scale = bounds.size() == 1 ? bounds.get(0).scale() : 1;
        if (bounds.size() == 1) {
            bounds.get(0).duals().forEach(dual -> dual.pieces()
                    .forEach(id -> stated.put(id, Math.max(0, dual.price()))));
        }
        if (stated.values().stream().allMatch(price -> price == 0)) {
            return byLength(rope, pieces);
        }
        Map<String, Long> prices = new TreeMap<>();
        pieces.forEach(piece -> prices.put(piece.id(), stated.getOrDefault(piece.id(), 0L)));
        return coarse(prices, scale).lowered(rope, pieces);
    }

    /** Without a proof: in proportion to the rope that each piece takes, as high as the reels allow. */
    static DualPrices byLength(NewRope rope, List<Piece> pieces) {
        long dearest = pieces.stream()
                .mapToLong(piece -> rope.cost(rope.taken(piece.cut())))
                .max()
                .orElse(0);
        long shortest = pieces.stream()
                .mapToLong(piece -> rope.taken(piece.cut()))
                .min()
                .orElse(1);
        long perMm = Math.max(1, -Math.floorDiv(-Math.multiplyExact(OWN_SCALE, dearest), shortest));
        Map<String, Long> prices = new TreeMap<>();
        pieces.forEach(piece -> prices.put(piece.id(), Math.multiplyExact(perMm, rope.taken(piece.cut()))));
        return coarse(prices, OWN_SCALE).lowered(rope, pieces);
    }

    /** The same prices in coarser units, rounded down, where their sum would not stay below 2^60. */
    private static DualPrices coarse(Map<String, Long> prices, long scale) {
        BigInteger sum = prices.values().stream().map(BigInteger::valueOf).reduce(BigInteger.ZERO, BigInteger::add);
        Map<String, Long> coarser = new TreeMap<>(prices);
        long units = scale;
        while (sum.compareTo(MOST) > 0 && units > 1) {
            coarser.replaceAll((id, price) -> price / 2);
            // An odd scale loses its half: prices come out a little lower than they might, never higher.
            units = (units + 1) / 2;
            sum = sum.shiftRight(1);
        }
        return new DualPrices(coarser, units);
    }

    /** Lowered in proportion, and rounded down, until the dearest offer of every load is within its cost. */
    DualPrices lowered(NewRope rope, List<Piece> pieces) {
        DualPrices now = this;
        LoadTable.Excess excess = now.excess(rope, pieces);
        while (excess.isPositive()) {
            now = now.times(excess.allowed(), excess.offered());
            excess = now.excess(rope, pieces);
        }
        return now;
    }

    /** The load whose pieces are priced furthest above what it costs. */
    LoadTable.Excess excess(NewRope rope, List<Piece> pieces) {
        return loads(rope, pieces).worst(scale);
    }

    /** The loads these pieces make at these prices. */
    LoadTable loads(NewRope rope, List<Piece> pieces) {
        Map<Long, Map<Long, Integer>> kinds = new TreeMap<>();
        for (Piece piece : pieces) {
            kinds.computeIfAbsent(rope.taken(piece.cut()), taken -> new TreeMap<>())
                    .merge(price(piece), 1, Integer::sum);
        }
        LoadTable table = new LoadTable(rope);
        kinds.forEach((taken, byPrice) -> byPrice.forEach((price, count) -> table.add(taken, price, count)));
        return table;
    }

    private DualPrices times(long above, long below) {
        Map<String, Long> lower = new TreeMap<>();
        BigInteger numerator = BigInteger.valueOf(above);
        BigInteger denominator = BigInteger.valueOf(below);
        prices.forEach((id, price) -> lower.put(
                id,
                BigInteger.valueOf(price)
                        .multiply(numerator)
                        .divide(denominator)
                        .longValueExact()));
        return new DualPrices(lower, scale);
    }

    long price(Piece piece) {
        return prices.getOrDefault(piece.id(), 0L);
    }

    /** The prices of a party's pieces together. */
    BigInteger of(Party party) {
        return party.pieces().stream()
                .map(piece -> BigInteger.valueOf(price(piece)))
                .reduce(BigInteger.ZERO, BigInteger::add);
    }
}
