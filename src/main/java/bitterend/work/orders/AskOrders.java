package bitterend.work.orders;

import bitterend.day.CutPlace;
import bitterend.day.OrderBook;
import bitterend.day.OrderChanges;
import bitterend.day.OrderStates;
import bitterend.day.OrderStatus;
import bitterend.day.OrdersTold;
import bitterend.day.SparePiece;
import bitterend.day.SparePieces;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.finding.Findings;
import bitterend.packing.ShopCalendar;
import bitterend.stock.Ledger;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;

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
        Map<String, CutPlace> planned = planned();
        ShopCalendar calendar = shop.shop().settings().calendar();
        return shop.at().ledger().isKept()
                ? reading(stock -> told(new OrderStates(book, planned, calendar, stock).orders(day), stock))
                : new OrdersTold(new OrderStates(book, planned, calendar).orders(day), List.of(), List.of(), List.of());
    }

    /** What changed of cut pieces, and what is spare; nothing in a shop without a ledger. */
    public OrdersTold ofCuts() {
        return shop.at().ledger().isKept() ? reading(stock -> told(List.of(), stock)) : OrdersTold.NOTHING;
    }

    private OrdersTold reading(java.util.function.Function<Ledger.Stock, OrdersTold> question) {
        return shop.at().reading(ledger -> ledger.read(question));
    }

    /** Where and when the plan in force cuts each piece of it. */
    private Map<String, CutPlace> planned() {
        Plans plans = shop.at().plans(new Findings());
        return plans.inForce()
                .flatMap(plans::needed)
                .map(kept -> places(
                        kept.document(), plans.issuedReels(kept.document().number())))
                .orElse(Map.of());
    }

    private static Map<String, CutPlace> places(PlanDocument plan, Set<String> out) {
        return plan.facts() instanceof PlanFacts.Whole whole
                ? CutPlace.of(plan.number(), plan.plan(), whole.problem(), out)
                : CutPlace.of(plan.number(), plan.plan());
    }

    private OrdersTold told(List<OrderStatus> orders, Ledger.Stock stock) {
        List<SparePiece> spares = SparePieces.of(stock, book);
        return new OrdersTold(
                orders, new OrderChanges(book).in(stock), spares, SparePieces.uses(spares, shop.open(day)));
    }
}
