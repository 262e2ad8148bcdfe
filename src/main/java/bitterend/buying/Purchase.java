package bitterend.buying;

import bitterend.market.Bill;
import bitterend.measure.Cost;
import java.util.ArrayList;
import java.util.List;

/**
 * A set of reels to buy and what it comes to, the cutting included.
 *
 * @param set reels to order
 * @param cost price paid, less the value of what is left, with the value drawn from the rack and the work at the bench
 * @param bound proven: no set that leaves no more unplanned, within the same limits, costs less
 * @param bill prices and freight of the reels
 * @param rest what is left of them after the cutting
 * @param unplanned ids of pieces for which there is not enough rope to be had
 * @param lines what to order, a line for each offer
 */
public record Purchase(
        ReelSet set, Cost cost, Cost bound, Paid bill, Left rest, List<String> unplanned, List<ReelLine> lines) {
    static final Purchase NONE =
            new Purchase(ReelSet.EMPTY, Cost.ZERO, Cost.ZERO, Paid.NOTHING, Left.NONE, List.of(), List.of());

    public Purchase {
        unplanned = List.copyOf(unplanned);
        lines = List.copyOf(lines);
    }

    /** Price and freight of the reels. */
    public Cost paid() {
        return bill.sum();
    }

    /** Worth of what is left of them after the cutting. */
    public Cost left() {
        return rest.worth();
    }

    /** Whether no other set can be cheaper. */
    public boolean isProven() {
        return cost.compareTo(bound) <= 0;
    }

    /** What is unproven: so much less another set could cost at the very most. */
    public Cost unproven() {
        return isProven() ? Cost.ZERO : cost.minus(bound);
    }

    /** Both, of ropes that have nothing to do with one another. */
    Purchase plus(Purchase other) {
        return new Purchase(
                set.plus(other.set),
                cost.plus(other.cost),
                bound.plus(other.bound),
                bill.plus(other.bill),
                rest.plus(other.rest),
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
                bill.minus(part.bill).plus(other.bill),
                rest.minus(part.rest).plus(other.rest),
                joined(stillUnplanned, other.unplanned),
                joined(others, other.lines));
    }

    private static <T> List<T> joined(List<T> a, List<T> b) {
        List<T> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }

    /** The same with another proof. */
    Purchase boundedBy(Cost proven) {
        return new Purchase(set, cost, proven, bill, rest, unplanned, lines);
    }

    /** The same as its suppliers bill it, with what they charge by order. */
    Purchase billed(Bill charged) {
        Paid billed = new Paid(charged.goods().fine(), charged.freight().fine());
        return new Purchase(set, cost.plus(billed.sum()).minus(paid()), bound, billed, rest, unplanned, lines);
    }

    /** The same with other lines. */
    Purchase with(List<ReelLine> others) {
        return new Purchase(set, cost, bound, bill, rest, unplanned, others);
    }

    /** Fewer pieces without rope first, then less by what an aim weighs, then less paid, then less cost. */
    boolean isBetterThan(Purchase other, Aim aim) {
        int order = Integer.compare(unplanned.size(), other.unplanned.size());
        order = order != 0 ? order : aim.of(paid(), cost).compareTo(aim.of(other.paid(), other.cost));
        order = order != 0 ? order : paid().compareTo(other.paid());
        order = order != 0 ? order : cost.compareTo(other.cost);
        return order < 0;
    }
}
