package bitterend.work;

import bitterend.day.CutPieces;
import bitterend.day.SparePiece;
import bitterend.day.SparePieces;
import bitterend.demand.Piece;
import bitterend.packing.PackingProblem;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.Ordered;
import bitterend.stock.PieceCut;
import java.util.List;
import java.util.Optional;

/** A spare piece becomes a piece of another line that it fits: same rope, long enough, papers and set respected. */
public final class GiveSpare {
    private final Desk desk;
    private final PackingProblem open;

    /** @param open what is still to be cut, with the sets as they are bound */
    public GiveSpare(Desk desk, PackingProblem open) {
        this.desk = desk;
        this.open = open;
    }

    /** Gives the spare piece to an open one. */
    public Booking give(String spare, String to, String note) {
        return desk.book(
                Event.Kind.GIVEN,
                note,
                books -> write(books, fitting(books, spare, to), to, note),
                event -> List.of(spare + " is " + to + " now: change its tag"));
    }

    private SparePiece fitting(Ledger.Stock stock, String id, String to) {
        SparePiece spare = SparePieces.of(stock, desk.book()).stream()
                .filter(each -> each.piece().equals(id))
                .findFirst()
                .orElseThrow(() -> new LedgerException.Refused("there is no spare piece " + id));
        Piece piece = open.pieces().stream()
                .filter(each -> each.id().equals(to))
                .findFirst()
                .filter(each -> !new CutPieces(stock).cuts().containsKey(to))
                .orElseThrow(() -> new LedgerException.Refused("no piece " + to + " is open"));
        Optional<String> bar = SparePieces.against(spare, piece, open);
        if (bar.isPresent()) {
            throw new LedgerException.Refused(bar.get());
        }
        return spare;
    }

    private void write(Ledger.Books books, SparePiece spare, String to, String note) {
        if (!spare.declared()) {
            MakeSpare.write(books, spare.piece(), note);
        }
        Holding reel = books.findHolding(spare.reel().id()).orElseThrow();
        Ordered ordered = desk.book().ordered().getOrDefault(to, Ordered.NONE);
        books.append(new Entry(
                Kind.GIVEN,
                reel.reel(),
                reel.gone(),
                note,
                new Origin("", "", "", to, spare.piece(), 0),
                new PieceCut(spare.length(), ordered)));
    }
}
