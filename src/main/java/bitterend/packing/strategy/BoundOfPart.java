package bitterend.packing.strategy;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.PackingProblem;
import bitterend.packing.Undone;
import bitterend.packing.patterns.DualProof;
import bitterend.packing.patterns.PatternPlan;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/** What the pattern engine proved, said of the plan that was made in the end. */
final class BoundOfPart {
    private final PackingProblem problem;
    private final List<List<Piece>> kinds;
    private final PatternPlan patterns;
    private final List<Long> weights;
    private final ClassScale scale;

    BoundOfPart(PackingProblem problem, PatternBridge bridge, PatternPlan patterns) {
        this.problem = problem;
        this.patterns = patterns;
        kinds = bridge.kinds();
        scale = bridge.scale();
        weights = bridge.patterns().items().stream().map(item -> item.weight()).toList();
    }

    /** Whether it is proven that no plan leaves less undone. */
    boolean isLeast(Undone undone) {
        return undone.isNone() || (scale.isExact() && scale.numberOf(undone) <= patterns.weightBound());
    }

    /**
     * The bound on plans that leave no more undone than this. Where the plan leaves more than the patterns
     * did, as matched sets may force it to, the bound gives way by the price of that weight.
     */
    Bound forUndone(Undone undone) {
        long weight = scale.numberOf(undone);
        DualProof root = patterns.root();
        boolean sameWeight = weight <= root.unplannedWeight();
        long price = sameWeight ? root.unplannedPrice() : bestPrice(weight);
        Cost proven = new Cost(sameWeight ? ceiling(big(root.numerator())) : ceiling(numerator(weight, price)));
        if (proven.equals(Cost.ZERO)) {
            return nothing(new Cost(sameWeight ? patterns.bound() : 0), undone);
        }
        return bound(
                sameWeight ? new Cost(Math.max(patterns.bound(), proven.millis())) : proven, proven, undone, price);
    }

    /** Of the prices of weight at which a dual is cut off, the one that proves most. */
    private long bestPrice(long weight) {
        long best = 0;
        BigInteger most = numerator(weight, 0);
        for (int i = 0; i < weights.size(); i++) {
            long price = -Math.floorDiv(-patterns.root().duals().get(i), weights.get(i));
            BigInteger proven = numerator(weight, price);
            if (proven.compareTo(most) > 0) {
                most = proven;
                best = price;
            }
        }
        return best;
    }

    /** What the duals prove, times the scale, when this much weight is left out at this price. */
    private BigInteger numerator(long weight, long price) {
        DualProof root = patterns.root();
        boolean limited = root.unplannedWeight() > 0;
        BigInteger onReels = worth(root.unplannedPrice(), limited)
                .subtract(big(root.unplannedPrice()).multiply(big(root.unplannedWeight())))
                .subtract(big(root.numerator()));
        return worth(price, true).subtract(big(price).multiply(big(weight))).subtract(onReels);
    }

    /** The duals of all pieces, each cut off at the price of its weight where that is limited. */
    private BigInteger worth(long price, boolean limited) {
        BigInteger sum = BigInteger.ZERO;
        for (int i = 0; i < weights.size(); i++) {
            BigInteger dual = big(patterns.root().duals().get(i));
            BigInteger cut = limited ? dual.min(big(price).multiply(big(weights.get(i)))) : dual;
            sum = sum.add(cut.multiply(big(kinds.get(i).size())));
        }
        return sum;
    }

    private long ceiling(BigInteger numerator) {
        BigInteger[] parts = numerator.divideAndRemainder(big(patterns.root().scale()));
        return parts[0].add(parts[1].signum() > 0 ? BigInteger.ONE : BigInteger.ZERO)
                .max(BigInteger.ZERO)
                .longValueExact();
    }

    /** Duals of zero prove zero. */
    private Bound nothing(Cost best, Undone undone) {
        List<Bound.Dual> duals = kinds.stream()
                .map(kind -> new Bound.Dual(kind.stream().map(Piece::id).toList(), 0))
                .toList();
        return new Bound(List.copyOf(problem.ropes().keySet()), best, Cost.ZERO, 1, undone, Bound.noPrices(), duals);
    }

    private static BigInteger big(long value) {
        return BigInteger.valueOf(value);
    }

    private Bound bound(Cost best, Cost root, Undone undone, long price) {
        List<Bound.Dual> duals = new ArrayList<>();
        for (int i = 0; i < kinds.size(); i++) {
            duals.add(new Bound.Dual(
                    kinds.get(i).stream().map(Piece::id).toList(),
                    patterns.root().duals().get(i)));
        }
        return new Bound(
                List.copyOf(problem.ropes().keySet()),
                best,
                root,
                patterns.root().scale(),
                undone,
                scale.prices(price),
                duals);
    }
}
