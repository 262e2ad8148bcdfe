package bitterend.work.rack;

import bitterend.exchange.Settings;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.Rack;
import bitterend.work.Booking;
import bitterend.work.ShopAccess;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Where deeds at the rack are booked.
 *
 * @param at the way to the shop
 * @param caller puts into an act who does it, and under which id
 * @param note why, in the words of who does it; may be empty
 */
public record RackDesk(ShopAccess at, UnaryOperator<Event.Act> caller, String note) {

    /** Books an event of the ledger, or says why not. */
    Booking book(Function<Ledger, Event> deed) {
        return Booking.of(() -> new Booking.Booked(at.writing(deed)));
    }

    /** Books what is done with a reel as a whole. */
    Booking rack(Function<Rack, Event> deed) {
        return book(ledger -> deed.apply(new Rack(ledger, caller)));
    }

    /** The day that it is at the rack. */
    LocalDate today() {
        return LocalDate.now(at.clock().withZone(ZoneId.systemDefault()));
    }

    /** The day that the shop says it is, else that at the rack. */
    LocalDate shopDay() {
        return at.settings()
                .map(Settings::day)
                .filter(day -> !day.equals(LocalDate.MIN))
                .orElseGet(this::today);
    }
}
