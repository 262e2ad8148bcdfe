package bitterend.day;

import bitterend.day.SparePieces.Use;
import java.util.List;

/**
 * How things stand with what is ordered.
 *
 * @param orders every order, what is overdue first
 * @param changes orders that changed after cutting
 * @param spares the spare pieces
 * @param uses what they could become
 */
public record OrdersTold(List<OrderStatus> orders, List<OrderChange> changes, List<SparePiece> spares, List<Use> uses) {
    /** Nothing is cut. */
    public static final OrdersTold NOTHING = new OrdersTold(List.of(), List.of(), List.of(), List.of());

    public OrdersTold {
        orders = List.copyOf(orders);
        changes = List.copyOf(changes);
        spares = List.copyOf(spares);
        uses = List.copyOf(uses);
    }

    /** One order alone. */
    public OrdersTold ofOrder(String order) {
        return new OrdersTold(
                orders.stream().filter(each -> each.order().equals(order)).toList(),
                changes.stream()
                        .filter(change -> change.piece().startsWith(order + "/"))
                        .toList(),
                List.of(),
                List.of());
    }

    /** What of it is about one cut piece. */
    public OrdersTold about(String piece) {
        return new OrdersTold(
                List.of(),
                changes.stream().filter(change -> change.piece().equals(piece)).toList(),
                spares.stream()
                        .filter(spare ->
                                spare.cutAs().equals(piece) || spare.piece().equals(piece))
                        .toList(),
                uses);
    }
}
