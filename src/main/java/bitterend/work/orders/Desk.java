package bitterend.work.orders;

import bitterend.day.OrderBook;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.work.Booking;
import bitterend.work.ShopAccess;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Where things are decided about ordered pieces: the ledger, what is ordered now, and who decides.
 *
 * @param at the way to the shop and its ledger
 * @param book what is ordered now
 * @param caller puts into an act who does it, and under which id
 */
public record Desk(ShopAccess at, OrderBook book, UnaryOperator<Event.Act> caller) {

    /** Books one event, or says why not. */
    Booking book(Event.Kind kind, String note, Consumer<Ledger.Books> work, Function<Event, List<String>> told) {
        return at.writing(ledger -> {
            try {
                return ledger.change(caller.apply(Event.Act.of(kind, "", note)), work)
                        .<Booking>map(event -> new Booking.Booked(event, told.apply(event)))
                        .orElse(new Booking.Refused("there is nothing to book"));
            } catch (LedgerException.Refused refused) {
                return new Booking.Refused(refused.sentence());
            }
        });
    }
}
