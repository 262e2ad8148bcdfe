package bitterend.day;

import bitterend.measure.Length;
import bitterend.packing.Words;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Entry;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Movement.Origin;
import bitterend.stock.RopeWork;
import java.util.ArrayList;
import java.util.List;

/** A piece spoiled at the bench: what can be used of it goes back to the rack as a coil, and the piece is to be made again. */
public final class Spoiling {
    private final Ledger ledger;
    private final String who;

    public Spoiling(Ledger ledger, String who) {
        this.ledger = ledger;
        this.who = who;
    }

    /**
     * Books a spoiled piece.
     *
     * @param back sound rope that goes back to the rack, zero when none does; no longer than the piece was cut
     * @return the movements that were added; the coil is the last one when there is one
     */
    public List<Movement> spoil(String piece, Length back, String note) {
        return ledger.change(who, books -> {
            Movement cut = new CutPieces(books).cuts().get(piece);
            if (cut == null) {
                throw new LedgerException.Refused("piece " + piece + " is not cut, so it cannot be spoiled");
            }
            Length taken = Length.ZERO.minus(cut.by());
            if (back.isNegative() || back.isLongerThan(taken)) {
                throw new LedgerException.Refused(
                        "at most " + Words.of(taken) + " came off the reel for piece " + piece);
            }
            Holding reel = books.findHolding(cut.entry().reel()).orElseThrow();
            String plan = cut.entry().origin().plan();
            List<Movement> written = new ArrayList<>();
            written.add(books.append(
                    new Entry(Kind.SPOILED, reel.reel(), reel.gone(), note, new Origin("", plan, "", piece, 0))));
            if (back.isPositive()) {
                String id = CoilIds.next(books, reel.id());
                Origin off = new Origin(reel.id(), plan, "", "", 0);
                written.add(books.append(new Entry(
                        Kind.KEPT, RopeWork.coil(cut.entry().after(), id, back), false, "spoiled " + piece, off)));
            }
            return written;
        });
    }
}
