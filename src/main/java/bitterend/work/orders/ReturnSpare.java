package bitterend.work.orders;

import bitterend.day.RopeBack;
import bitterend.day.SparePiece;
import bitterend.day.SparePieces;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import bitterend.work.Booking;
import java.util.List;

/** A spare piece goes back to the rack as a coil, with the lot and the papers that its reel has today. */
public final class ReturnSpare {
    private final Desk desk;

    public ReturnSpare(Desk desk) {
        this.desk = desk;
    }

    /** All of the piece; the coil is the last movement of the event. */
    public Booking back(String id, String note) {
        return desk.book(
                Event.Kind.BACK_ON_RACK,
                note,
                books -> write(books, id, note),
                event -> List.of(id + " is on the rack as coil "
                        + event.movements()
                                .get(event.movements().size() - 1)
                                .entry()
                                .reel()));
    }

    private void write(Ledger.Books books, String id, String note) {
        SparePiece spare = SparePieces.named(id, books, desk.book());
        String name = spare.declared() ? spare.piece() : MakeSpare.write(books, id, note);
        Holding reel = books.findHolding(spare.reel().id()).orElseThrow();
        books.append(new Entry(
                Kind.BACK_ON_RACK,
                reel.reel(),
                reel.gone(),
                note,
                Origin.ofPiece("", name),
                new PieceCut(spare.length(), Ordered.NONE)));
        Reel coil = RopeBack.coil(books, spare.reel().id(), spare.length());
        books.append(new Entry(
                Kind.KEPT,
                coil,
                false,
                "spare piece " + name,
                Origin.off(spare.reel().id(), "")));
    }
}
