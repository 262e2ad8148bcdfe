package bitterend.work.orders;

import bitterend.day.CutPieces;
import bitterend.day.DeliveredPieces;
import bitterend.demand.Piece;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.work.Booking;
import java.util.List;
import java.util.Map;

/** Cut pieces were looked over and found good, without a figure. */
public final class PassPieces {
    private final Desk desk;

    public PassPieces(Desk desk) {
        this.desk = desk;
    }

    /** These pieces are good, all of them. */
    public Booking passed(List<String> pieces, String note) {
        return desk.book(
                Event.Kind.PASSED,
                note,
                books -> pieces.forEach(piece -> {
                    checkCut(books, piece);
                    books.fact("piece " + piece, "");
                }),
                event -> List.of(String.join(", ", pieces) + (pieces.size() == 1 ? " is" : " are") + " passed"));
    }

    private void checkCut(Ledger.Stock stock, String id) {
        Map<String, ?> cuts = new CutPieces(stock).cuts();
        if (!cuts.containsKey(id)) {
            throw new LedgerException.Refused("piece " + id + " is not cut");
        }
        if (DeliveredPieces.of(stock).contains(id)) {
            throw new LedgerException.Refused("piece " + id + " is delivered");
        }
        if (desk.book().find(id).map(Piece::id).isEmpty()) {
            throw new LedgerException.Refused("no order asks for piece " + id);
        }
    }
}
