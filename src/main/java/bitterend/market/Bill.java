package bitterend.market;

import bitterend.measure.Mass;
import bitterend.measure.Money;
import java.util.List;

/**
 * What an order of reels comes to, and what forbids it. Everything is exact; freight by mass alone is rounded, up to the
 * smallest coin, once for each supplier.
 *
 * @param lines by offer id
 * @param orders one to each supplier, by name
 * @param objections why it cannot be ordered so; empty where it can
 */
public record Bill(List<Line> lines, List<Order> orders, List<Objection> objections) {
    public Bill {
        lines = List.copyOf(lines);
        orders = List.copyOf(orders);
        objections = List.copyOf(objections);
    }

    /**
     * Reels of one offer.
     *
     * @param offer what is ordered
     * @param reels how many; at least 1
     * @param each price of a reel at the break that so many reach
     */
    public record Line(Offer offer, int reels, Money each) {
        /** The reels without freight. */
        public Money goods() {
            return each.times(reels);
        }

        /** Freight by reel, as the offer states it, whether it is charged or not. */
        public Money freight() {
            return offer.terms().freight().times(reels);
        }
    }

    /**
     * All reels of one supplier.
     *
     * @param supplier who sends them
     * @param goods the reels without freight
     * @param freight what their way costs
     */
    public record Order(Supplier supplier, Money goods, Freight freight) {
        public Money sum() {
            return goods.plus(freight.sum());
        }
    }

    /**
     * Freight of one order as it is charged.
     *
     * @param byReel of its reels, as the offers state it
     * @param byMass of the rope on them, rounded up to the smallest coin
     * @param byOrder of the order as a whole
     * @param free whether the order is large enough to come freight paid: then the three are nothing
     * @param mass of the rope, as far as it is known
     * @param massUnknown ids of ropes whose mass nobody stated although freight goes by mass: they are charged nothing
     */
    public record Freight(
            Money byReel, Money byMass, Money byOrder, boolean free, Mass mass, List<String> massUnknown) {
        public Freight {
            massUnknown = List.copyOf(massUnknown);
        }

        public Money sum() {
            return byReel.plus(byMass).plus(byOrder);
        }
    }

    /** Why an order cannot be placed so. */
    public sealed interface Objection {
        /** The offer cannot be had at all. */
        record CannotBeHad(LeftOut leftOut) implements Objection {}

        /** Fewer reels of an offer than its minimum. */
        record BelowMinimum(Offer offer, int reels) implements Objection {}

        /** More reels of an offer than there are. */
        record AboveSupply(Offer offer, int reels) implements Objection {}

        /** An order to a supplier that comes to less than he sends, freight left out. */
        record BelowMinimumOrder(Supplier supplier, Money goods) implements Objection {}
    }

    /** All reels without freight. */
    public Money goods() {
        return orders.stream().map(Order::goods).reduce(Money.ZERO, Money::plus);
    }

    /** All freight. */
    public Money freight() {
        return orders.stream().map(order -> order.freight().sum()).reduce(Money.ZERO, Money::plus);
    }

    /** What is paid in all. */
    public Money sum() {
        return goods().plus(freight());
    }

    /** Whether it can be ordered so. */
    public boolean isAllowed() {
        return objections.isEmpty();
    }
}
