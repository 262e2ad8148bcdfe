package bitterend.serve;

import bitterend.finding.NaturalOrder;
import bitterend.work.ShopNow;
import java.util.List;
import java.util.Map;

/** What cells of the order book may be chosen from. */
final class BookLists {
    private BookLists() {}

    /** Ropes, ends and customers of the shop, by the id that {@link BookColumn#list} names. */
    static Map<String, List<String>> of(ShopNow now) {
        return Map.of(
                "ropes",
                now.shop().catalogue().ropes().stream().map(rope -> rope.id()).toList(),
                "ends",
                now.shop().catalogue().splices().names(),
                "customers",
                now.shop().orders().stream()
                        .map(line -> line.assembly().ordered().customer())
                        .filter(customer -> !customer.isEmpty())
                        .distinct()
                        .sorted(NaturalOrder.IDS)
                        .toList());
    }
}
