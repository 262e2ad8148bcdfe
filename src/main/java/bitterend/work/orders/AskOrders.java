package bitterend.work.orders;

import bitterend.day.OrderBook;
import bitterend.day.OrderChanges;
import bitterend.day.OrderStates;
import bitterend.day.OrderStatus;
import bitterend.day.OrdersTold;
import bitterend.day.SparePiece;
import bitterend.day.SparePieces;
import bitterend.finding.Findings;
import bitterend.stock.Ledger;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** How far the orders have come, what changed after cutting, what is spare: a question that writes nothing. */
public final class AskOrders {
    private final ShopNow shop;
    private final LocalDate day;
    private final OrderBook book;

    /** Asks about the orders of a shop on a day. */
    public AskOrders(ShopNow shop, LocalDate day) {
        this.shop = shop;
        this.day = day;
        book = shop.book();
    }

    /** How far every order has come, and what is to be told of the pieces that are cut. */
    public OrdersTold status() {
        Map<String, String> planned = planned();
        return shop.at().ledger().isKept()
                ? reading(stock -> told(new OrderStates(book, planned, stock).orders(day), stock))
                : new OrdersTold(new OrderStates(book, planned).orders(day), List.of(), List.of(), List.of());
    }

    /** What changed of cut pieces, and what is spare; nothing in a shop without a ledger. */
    public OrdersTold ofCuts() {
        return shop.at().ledger().isKept() ? reading(stock -> told(List.of(), stock)) : OrdersTold.NOTHING;
    }

    private OrdersTold reading(java.util.function.Function<Ledger.Stock, OrdersTold> question) {
        return shop.at().reading(ledger -> ledger.read(question));
    }

    /** The number of the plan in force, by each piece that it cuts. */
    private Map<String, String> planned() {
        Map<String, String> planned = new HashMap<>();
        Plans plans = shop.at().plans(new Findings());
        plans.inForce()
                .flatMap(number -> plans.read(number, new Findings()))
                .ifPresent(kept -> kept.document().plan().draws().forEach(draw -> draw.cuts()
                        .forEach(cut ->
                                planned.put(cut.piece(), "" + kept.document().number()))));
        return planned;
    }

    private OrdersTold told(List<OrderStatus> orders, Ledger.Stock stock) {
        List<SparePiece> spares = SparePieces.of(stock, book);
        return new OrdersTold(
                orders, new OrderChanges(book).in(stock), spares, SparePieces.uses(spares, shop.open(day)));
    }
}
