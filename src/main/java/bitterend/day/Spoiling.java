package bitterend.day;

import bitterend.measure.Length;
import bitterend.packing.Words;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.PieceCut;
import bitterend.stock.Reel;
import java.util.function.UnaryOperator;

/** A piece spoiled at the bench: what can be used of it goes back to the rack as a coil, and the piece is to be made again. */
public final class Spoiling {
    private final Ledger ledger;
    private final UnaryOperator<Event.Act> caller;

    public Spoiling(Ledger ledger, String who) {
        this(ledger, act -> act.by(who));
    }

    /**
     * Spoiling by somebody.
     *
     * @param caller puts into an act who does it, and under which id
     */
    public Spoiling(Ledger ledger, UnaryOperator<Event.Act> caller) {
        this.ledger = ledger;
        this.caller = caller;
    }

    /**
     * Books a spoiled piece.
     *
     * @param back sound rope that goes back to the rack, zero when none does; no longer than the piece
     * @return the event; the coil is its last movement when there is one
     */
    public Event spoil(String piece, Length back, String note) {
        Event.Act act = caller.apply(Event.Act.of(Event.Kind.SPOILED, "", note));
        return ledger.change(act, books -> write(books, piece, back, note)).orElseThrow();
    }

    /** Writes the movements of a spoiled piece into an event. */
    public static void write(Ledger.Books books, String piece, Length back, String note) {
        Movement cut = new CutPieces(books).cuts().get(piece);
        if (cut == null) {
            throw new LedgerException.Refused("piece " + piece + " is not cut, so it cannot be spoiled");
        }
        if (DeliveredPieces.of(books).contains(piece)) {
            throw new LedgerException.Refused("piece " + piece + " is delivered, so it cannot be spoiled");
        }
        write(books, cut, back, note);
    }

    private static void write(Ledger.Books books, Movement cut, Length back, String note) {
        PieceCut was = cut.entry().piece();
        String piece = cut.entry().origin().piece();
        if (back.isNegative() || back.isLongerThan(was.length())) {
            throw new LedgerException.Refused("piece " + piece + " is " + Words.of(was.length()) + " long");
        }
        Holding reel = books.findHolding(cut.entry().reel()).orElseThrow();
        String plan = cut.entry().origin().plan();
        books.append(new Entry(Kind.SPOILED, reel.reel(), reel.gone(), note, Origin.ofPiece(plan, piece), was));
        if (back.isPositive()) {
            Reel coil = RopeBack.coil(books, reel.id(), back);
            books.append(new Entry(Kind.KEPT, coil, false, "spoiled " + piece, Origin.off(reel.id(), plan)));
        }
    }
}
