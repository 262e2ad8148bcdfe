package bitterend.work.orders;

import bitterend.day.CutPieces;
import bitterend.day.OrderChange;
import bitterend.day.OrderChanges;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.work.Booking;
import java.util.List;

/** A person decides that a cut piece will do for what is ordered now, although the order changed after it was cut. */
public final class KeepAsCut {
    private final Desk desk;

    public KeepAsCut(Desk desk) {
        this.desk = desk;
    }

    /** Accepts the piece until its order changes again. */
    public Booking keep(String piece, String note) {
        return desk.book(
                Event.Kind.ORDER_CHANGED,
                note,
                books -> {
                    if (!new CutPieces(books).cuts().containsKey(piece)) {
                        throw new LedgerException.Refused("piece " + piece + " is not cut");
                    }
                    OrderChange change = new OrderChanges(desk.book())
                            .in(books).stream()
                                    .filter(each -> each.piece().equals(piece))
                                    .findFirst()
                                    .orElseThrow(() -> new LedgerException.Refused(
                                            "the order of piece " + piece + " has not changed since it was cut"));
                    if (change.isUnwanted()) {
                        throw new LedgerException.Refused("no order asks for " + piece + ": it is a spare piece");
                    }
                    books.fact("piece " + piece, change.accepted());
                },
                event -> List.of(piece + " stays as it is cut"));
    }
}
