package bitterend.history;

import bitterend.demand.Piece;
import java.time.LocalDate;
import java.util.List;

/**
 * One week of work, from Monday to Sunday; weeks without an order are weeks too.
 *
 * @param monday its first day
 * @param orders placed in it, by number
 */
public record Week(LocalDate monday, List<PastOrder> orders) {
    public Week {
        orders = List.copyOf(orders);
    }

    /** Every piece of the week, by order and id. */
    public List<Piece> pieces() {
        return orders.stream().flatMap(order -> order.pieces().stream()).toList();
    }
}
