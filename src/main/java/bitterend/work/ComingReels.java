package bitterend.work;

import bitterend.exchange.Shop;
import bitterend.market.OnOrder;
import bitterend.market.Supplier;
import bitterend.market.UsualLateness;
import bitterend.packing.Arrival;
import bitterend.packing.PackingProblem;
import bitterend.packing.ShopCalendar;
import bitterend.stock.Reel;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The one place where a day's question gets the reels that a shop has on order. */
public final class ComingReels {
    private ComingReels() {}

    /** A day's question with the reels on order, each from the day on which it is counted on. */
    public static PackingProblem with(PackingProblem day, Shop shop) {
        return with(day, shop, shop.supplies().onOrder());
    }

    /** The same with other orders of reels than the shop has. */
    public static PackingProblem with(PackingProblem day, Shop shop, List<OnOrder> orders) {
        return day.withComing(of(shop, orders, day.day()));
    }

    /** Each reel of these orders as it will be, with when it comes. */
    static Map<Reel, Arrival> of(Shop shop, List<OnOrder> orders, LocalDate day) {
        Map<Reel, Arrival> coming = new LinkedHashMap<>();
        for (OnOrder order : orders) {
            Arrival arrival =
                    new Arrival(order.id(), order.expected(), lateness(shop).from(order, day));
            for (int n = 1; n <= order.quantity(); n++) {
                coming.put(order.reel(n), arrival);
            }
        }
        return coming;
    }

    /** From when the shop counts on rope that is on order. */
    public static UsualLateness lateness(Shop shop) {
        Map<String, ShopCalendar.Ahead> said = new LinkedHashMap<>();
        for (Supplier supplier : shop.supplies().suppliers()) {
            ShopCalendar.Ahead late = supplier.lateness();
            if (late != null) {
                said.put(supplier.name(), late);
            }
        }
        return new UsualLateness(
                shop.settings().calendar(),
                shop.settings().lateness(),
                said,
                shop.supplies().deliveries());
    }
}
