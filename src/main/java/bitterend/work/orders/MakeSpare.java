package bitterend.work.orders;

import bitterend.day.CutPieces;
import bitterend.day.DeliveredPieces;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.work.Booking;
import java.util.List;

/** Good cut pieces become spare pieces; what they were cut for is open again, as far as it is still ordered. */
public final class MakeSpare {
    private final Desk desk;

    public MakeSpare(Desk desk) {
        this.desk = desk;
    }

    /** All of these pieces, or none. */
    public Booking pieces(List<String> pieces, String note) {
        return desk.book(
                Event.Kind.MADE_SPARE, note, books -> pieces.forEach(piece -> write(books, piece, note)), this::told);
    }

    /** All cut pieces of a matched set, so that it is made again whole. */
    public Booking set(String set, String note) {
        return desk.book(
                Event.Kind.MADE_SPARE,
                note,
                books -> {
                    books.fact("set " + set, "");
                    ReleaseSet.cut(set, desk.book().ofSet(set), new CutPieces(books).cuts())
                            .forEach(piece -> write(books, piece, note));
                },
                this::told);
    }

    /** Makes one piece spare; the name it has from then on. */
    static String write(Ledger.Books books, String piece, String note) {
        Movement cut = new CutPieces(books).cuts().get(piece);
        if (cut == null) {
            throw new LedgerException.Refused("piece " + piece + " is not cut, so it cannot be a spare piece");
        }
        if (DeliveredPieces.of(books).contains(piece)) {
            throw new LedgerException.Refused("piece " + piece + " is delivered, so it cannot be a spare piece");
        }
        Holding reel = books.findHolding(cut.entry().reel()).orElseThrow();
        Origin origin = CutPieces.spareOf(books, cut.entry().origin().plan(), piece);
        books.append(new Entry(
                Kind.MADE_SPARE,
                reel.reel(),
                reel.gone(),
                note,
                origin,
                cut.entry().piece()));
        return origin.was();
    }

    private List<String> told(Event event) {
        return event.movements().stream()
                .map(movement -> movement.entry().origin())
                .map(origin -> origin.piece() + " is spare piece '" + origin.was() + "' now"
                        + (desk.book().find(origin.piece()).isPresent()
                                ? "; what was ordered is to be made again"
                                : ""))
                .toList();
    }
}
