package bitterend.work;

import bitterend.day.CutPieces;
import bitterend.demand.Piece;
import bitterend.measure.Length;
import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import java.util.List;
import java.util.Map;

/** What becomes of a cut piece at the bench: it is spliced and measured, then looked over and found good. */
public final class RecordMade {
    private final Desk desk;

    public RecordMade(Desk desk) {
        this.desk = desk;
    }

    /**
     * Both ends of a piece are made.
     *
     * @param finished what it measures finished, as the order measures it; above nothing
     */
    public Booking spliced(String piece, Length finished, String note) {
        return desk.book(
                Event.Kind.SPLICED,
                note,
                books -> {
                    checkCut(books, piece);
                    if (!finished.isPositive()) {
                        throw new LedgerException.Refused("a measured length is above nothing: " + piece);
                    }
                    books.fact("piece " + piece, finished.mm() + " mm");
                },
                event -> List.of(piece + " is spliced"));
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
        if (desk.book().find(id).map(Piece::id).isEmpty()) {
            throw new LedgerException.Refused("no order asks for piece " + id);
        }
    }
}
