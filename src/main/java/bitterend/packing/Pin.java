package bitterend.packing;

/**
 * A draw that must stay.
 *
 * @param piece id of the piece
 * @param reel id of the reel it must come off
 * @param issued number of the plan whose sheet is out and says so: that reel takes nothing but its pinned pieces; 0 when
 *     it is pinned by choice
 */
public record Pin(String piece, String reel, int issued) {
    public Pin {
        if (issued < 0) {
            throw new IllegalArgumentException("plan " + issued);
        }
    }

    /** Pinned by choice. */
    public Pin(String piece, String reel) {
        this(piece, reel, 0);
    }

    public boolean isIssued() {
        return issued > 0;
    }
}
