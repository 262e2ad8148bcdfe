package bitterend.buying;

import bitterend.market.Bill;
import bitterend.market.Bill.Objection;
import bitterend.market.Offer;
import bitterend.market.Supplier;
import bitterend.measure.Money;
import java.util.ArrayList;
import java.util.List;

/** Adds sets that reach what a supplier sends at the least, or sends freight paid, where the best ways stay below it. */
final class LeastOrders {
    /** Nobody orders more reels than this to come below a freight. */
    private static final int MOST = 20;

    private final List<Orders> parts;
    private final List<PartBuyer> buyers;

    LeastOrders(List<Orders> parts, List<PartBuyer> buyers) {
        this.parts = parts;
        this.buyers = buyers;
    }

    /** What was found, with such sets. */
    List<PartFound> reached(Combination all, List<PartFound> found) {
        List<PartFound> more = new ArrayList<>(found);
        for (Aim aim : Aim.values()) {
            List<Purchase> chosen = all.best(aim);
            Bill bill = all.bill(chosen);
            for (Objection each : bill.objections()) {
                if (each instanceof Objection.BelowMinimumOrder below) {
                    reach(below.supplier(), below.supplier().minimumOrder().minus(below.goods()), chosen, more);
                }
            }
            for (Bill.Order order : bill.orders()) {
                Money free = order.supplier().freight().freeFrom();
                if (!free.equals(Supplier.Freight.NEVER) && free.compareTo(order.goods()) > 0) {
                    reach(order.supplier(), free.minus(order.goods()), chosen, more);
                }
            }
        }
        return more;
    }

    /** To each part that buys anything, so many reels more of one offer of the supplier as reach it. */
    private void reach(Supplier supplier, Money missing, List<Purchase> chosen, List<PartFound> more) {
        for (int part = 0; part < parts.size(); part++) {
            ReelSet set = chosen.get(part).set();
            for (Offer offer : parts.get(part).offers()) {
                boolean his = offer.supplier().equals(supplier.name());
                long price = offer.terms()
                        .price()
                        .at(Math.max(1, set.of(offer.id())))
                        .minor();
                if (!his || set.reels() == 0 || price <= 0) {
                    continue;
                }
                long reels =
                        Math.max(offer.terms().minimum(), set.of(offer.id()) + (missing.minor() + price - 1) / price);
                if (reels <= Math.min(offer.terms().supply(), MOST)) {
                    more.set(part, more.get(part).with(buyers.get(part).also(set.with(offer.id(), (int) reels))));
                }
            }
        }
    }
}
