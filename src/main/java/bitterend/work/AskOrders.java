package bitterend.work;

import bitterend.day.OrderBook;
import bitterend.day.OrderChanges;
import bitterend.day.OrderStates;
import bitterend.day.OrderStatus;
import bitterend.day.OrdersTold;
import bitterend.day.SparePiece;
import bitterend.day.SparePieces;
import bitterend.packing.PackingProblem;
import bitterend.stock.Ledger;
import java.util.List;
import java.util.Map;

/** How far the orders have come, what changed after cutting, what is spare: a question that writes nothing. */
public final class AskOrders {
    private final OrderBook book;
    private final PackingProblem open;
    private final Map<String, String> planned;

    /**
     * Asks about an order book.
     *
     * @param open what is still to be cut on the day of the question, with the sets as they are bound
     * @param planned the plan in force, of every piece that it cuts
     */
    public AskOrders(OrderBook book, PackingProblem open, Map<String, String> planned) {
        this.book = book;
        this.open = open;
        this.planned = Map.copyOf(planned);
    }

    /** Of a shop that keeps no ledger. */
    public OrdersTold withoutLedger() {
        return new OrdersTold(new OrderStates(book, planned).orders(open.day()), List.of(), List.of(), List.of());
    }

    /** By what the ledger says. */
    public OrdersTold of(Ledger ledger) {
        return ledger.read(stock -> told(new OrderStates(book, planned, stock).orders(open.day()), stock));
    }

    /** What changed of cut pieces, and what is spare; how far the orders have come is not asked. */
    public OrdersTold ofCuts(Ledger ledger) {
        return ledger.read(stock -> told(List.of(), stock));
    }

    private OrdersTold told(List<OrderStatus> orders, Ledger.Stock stock) {
        List<SparePiece> spares = SparePieces.of(stock, book);
        return new OrdersTold(orders, new OrderChanges(book).in(stock), spares, SparePieces.uses(spares, open));
    }
}
