package bitterend.buying;

import bitterend.measure.Cost;
import java.util.ArrayList;
import java.util.List;

/**
 * A set of reels to buy and what it comes to, the cutting included.
 *
 * @param set reels to order
 * @param cost price paid, less the value of what is left, with the value drawn from the rack and the work at the bench
 * @param bound proven: no set that leaves no more unplanned, within the same limits, costs less
 * @param paid prices and freight of the reels
 * @param left worth of what is left of them after the cutting
 * @param unplanned ids of pieces for which there is not enough rope to be had
 * @param lines what to order, a line for each offer
 */
public record Purchase(
        ReelSet set, Cost cost, Cost bound, Cost paid, Cost left, List<String> unplanned, List<ReelLine> lines) {
    static final Purchase NONE =
            new Purchase(ReelSet.EMPTY, Cost.ZERO, Cost.ZERO, Cost.ZERO, Cost.ZERO, List.of(), List.of());

    public Purchase {
        unplanned = List.copyOf(unplanned);
        lines = List.copyOf(lines);
    }

    /** Whether no other set can be cheaper. */
    public boolean isProven() {
        return cost.compareTo(bound) <= 0;
    }

    /** Both, of ropes that have nothing to do with one another. */
    Purchase plus(Purchase other) {
        return new Purchase(
                set.plus(other.set),
                cost.plus(other.cost),
                bound.plus(other.bound),
                paid.plus(other.paid),
                left.plus(other.left),
                joined(unplanned, other.unplanned),
                joined(lines, other.lines));
    }

    /** The same with another purchase in place of one that is part of it. */
    Purchase exchanging(Purchase part, Purchase other) {
        List<ReelLine> others = new ArrayList<>(lines);
        others.removeAll(part.lines);
        List<String> stillUnplanned = new ArrayList<>(unplanned);
        stillUnplanned.removeAll(part.unplanned);
        return new Purchase(
                set.minus(part.set).plus(other.set),
                cost.minus(part.cost).plus(other.cost),
                bound.minus(part.bound).plus(other.bound),
                paid.minus(part.paid).plus(other.paid),
                left.minus(part.left).plus(other.left),
                joined(stillUnplanned, other.unplanned),
                joined(others, other.lines));
    }

    private static <T> List<T> joined(List<T> a, List<T> b) {
        List<T> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    /** The same with what is proven of both of two cases that leave no third. */
    Purchase boundedBy(Purchase other) {
        Cost both = bound.compareTo(other.bound) < 0 ? bound : other.bound;
        return new Purchase(set, cost, both, paid, left, unplanned, lines);
    }

    /** Fewer pieces without rope first, then the lower cost. */
    boolean isBetterThan(Purchase other) {
        int fewer = Integer.compare(unplanned.size(), other.unplanned.size());
        return fewer != 0 ? fewer < 0 : cost.compareTo(other.cost) < 0;
    }
}
