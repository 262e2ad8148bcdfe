package bitterend.work.rack;

import bitterend.day.Spoiling;
import bitterend.measure.Length;
import bitterend.work.Booking;

/** Books that a piece went wrong at the bench: it is to be made again. */
public final class SpoilPiece {
    private final RackDesk desk;

    public SpoilPiece(RackDesk desk) {
        this.desk = desk;
    }

    /**
     * Books it, or says why not.
     *
     * @param back sound rope that goes back to the rack as a coil; may be nothing
     */
    public Booking spoil(String piece, Length back) {
        return desk.book(ledger -> new Spoiling(ledger, desk.caller()).spoil(piece, back, desk.note()));
    }
}
