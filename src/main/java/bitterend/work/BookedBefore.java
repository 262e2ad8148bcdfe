package bitterend.work;

import bitterend.stock.Event;
import java.util.Optional;

/** What was booked under an id that its caller chose: whoever sends it again, since no answer came, is told so first. */
public final class BookedBefore {
    private BookedBefore() {}

    /** The event of that id, if the shop's ledger has one. */
    public static Optional<Event> under(ShopAccess shop, String id) {
        return shop.keepsLedger()
                ? shop.reading(ledger -> ledger.read(stock -> stock.eventOfId(id)))
                : Optional.empty();
    }
}
