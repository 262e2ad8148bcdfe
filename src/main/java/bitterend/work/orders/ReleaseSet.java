package bitterend.work.orders;

import bitterend.day.CutPieces;
import bitterend.demand.Piece;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.work.Booking;
import java.util.List;
import java.util.Map;

/** A person lets a begun matched set go on off rope that does not match its cut pieces. */
public final class ReleaseSet {
    private final Desk desk;

    public ReleaseSet(Desk desk) {
        this.desk = desk;
    }

    /**
     * Releases a set from what is cut of it by now. The pieces cut from then on bind the rest again.
     *
     * @param note why
     */
    public Booking release(String set, String note) {
        List<Piece> pieces = desk.book().ofSet(set);
        return desk.book(
                Event.Kind.SET_RELEASED,
                note,
                books -> {
                    List<String> cut = cut(set, pieces, new CutPieces(books).cuts());
                    books.fact("set " + set, "");
                    cut.forEach(piece -> books.fact("piece " + piece, ""));
                },
                event -> List.of("set " + set + " is released from " + String.join(", ", event.named("piece"))
                        + ": the next plan may take the rest off another lot or reel, and every page says so"));
    }

    /** The cut pieces of a set; there must be some, and some that are not. */
    static List<String> cut(String set, List<Piece> pieces, Map<String, Movement> cuts) {
        if (pieces.isEmpty()) {
            throw new LedgerException.Refused("no order has a matched set " + set);
        }
        List<String> cut =
                pieces.stream().map(Piece::id).filter(cuts::containsKey).toList();
        if (cut.isEmpty()) {
            throw new LedgerException.Refused("nothing of set " + set + " is cut, so it is bound to nothing");
        }
        return cut;
    }
}
