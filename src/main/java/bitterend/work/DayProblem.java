package bitterend.work;

import bitterend.catalogue.Rope;
import bitterend.demand.Assembly;
import bitterend.exchange.Shop;
import bitterend.packing.HeldPieces;
import bitterend.packing.PackingProblem;
import bitterend.stock.StockValue;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/** The one place where a day's question is made of what a shop has. */
public final class DayProblem {
    private DayProblem() {}

    /** Which piece comes off which run, by the orders and the rack of a shop; nothing is cut yet. */
    public static PackingProblem of(Shop shop, LocalDate day) {
        CoilCurves curves = new CoilCurves(shop, day);
        Map<String, Rope> ropes = new TreeMap<>();
        Map<String, StockValue> values = new TreeMap<>();
        for (Rope rope : shop.catalogue().ropes()) {
            ropes.put(rope.id(), rope);
            values.put(rope.id(), curves.value(rope));
        }
        return new PackingProblem(
                day,
                ropes,
                shop.pieces(),
                shop.reels(),
                values,
                shop.settings().prices(),
                shop.pins(),
                Map.of(),
                shop.settings().calendar());
    }

    /** A day's question in which rope that is held is given to the pieces that it is held for. */
    public static PackingProblem serving(Shop shop, PackingProblem problem) {
        return HeldPieces.pinned(problem, customers(shop));
    }

    /** The customer of an order of the shop; empty for none. */
    public static UnaryOperator<String> customers(Shop shop) {
        Map<String, String> customers = new HashMap<>();
        shop.orders().forEach(line -> {
            Assembly.Ordered ordered = line.assembly().ordered();
            customers.put(ordered.source().order(), ordered.customer());
        });
        return order -> customers.getOrDefault(order, "");
    }
}
