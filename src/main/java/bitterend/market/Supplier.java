package bitterend.market;

import bitterend.measure.Mass;
import bitterend.measure.MassPrice;
import bitterend.measure.Money;
import bitterend.packing.ShopCalendar.Ahead;
import org.jspecify.annotations.Nullable;

/**
 * Who sells rope, and on which terms one order goes out to the shop.
 *
 * @param name as offers and reels on order have it; empty for whoever makes the offers that name nobody
 * @param address where an order is sent to, on one line; empty when not stated
 * @param contact an e-mail address, a telephone number, a person; empty when not stated
 * @param freight what the way of one order costs
 * @param minimumOrder the least an order comes to, freight left out
 * @param lateness how late its reels usually come, as the shop says; null where it does not
 * @param note for people
 */
public record Supplier(
        String name,
        String address,
        String contact,
        Freight freight,
        Money minimumOrder,
        @Nullable Ahead lateness,
        String note) {
    public Supplier {
        if (minimumOrder.minor() < 0) {
            throw new IllegalArgumentException("supplier " + name + ", minimum order " + minimumOrder);
        }
    }

    /**
     * Freight of one order, beside the freight of each reel that an offer states.
     *
     * @param byOrder of the order as a whole
     * @param byMass of the rope on its reels, the reels themselves left out
     * @param freeFrom an order that comes to so much, freight left out, comes freight paid: nothing is charged by order, by
     *     mass or by reel; {@link #NEVER}
     */
    public record Freight(Money byOrder, MassPrice byMass, Money freeFrom) {
        /** No order comes freight paid. */
        public static final Money NEVER = new Money(Long.MAX_VALUE);

        /** Nothing beside what the offers state. */
        public static final Freight NONE = new Freight(Money.ZERO, MassPrice.NOTHING, NEVER);

        public Freight {
            if (byOrder.minor() < 0 || freeFrom.minor() < 0) {
                throw new IllegalArgumentException("freight " + byOrder + " by order, free from " + freeFrom);
            }
        }

        /** Whether an order that comes to so much comes freight paid. */
        public boolean isFree(Money goods) {
            return goods.compareTo(freeFrom) >= 0;
        }

        /** Freight of a mass of rope, rounded up to the smallest coin. */
        public Money of(Mass mass) {
            return byMass.of(mass).roundedUp();
        }
    }

    /** Somebody of whom nothing is known but the name. */
    public static Supplier named(String name) {
        return new Supplier(name, "", "", Freight.NONE, Money.ZERO, null, "");
    }
}
