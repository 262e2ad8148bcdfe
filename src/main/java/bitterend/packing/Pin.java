package bitterend.packing;

/**
 * A draw that must stay.
 *
 * @param piece id of the piece
 * @param reel id of the reel it must come off
 * @param issued number of the plan whose sheet is out and says so: that reel takes nothing but its pinned pieces; 0 when
 *     it is pinned by choice
 * @param step its place among the cuts of that sheet, from 1; 0 when the sheet is not known
 * @param behind how many sound runs of the reel lie behind the one that the sheet cuts it from
 * @param heldFor whom the rope is held for that the piece comes off, see {@link bitterend.stock.Held#whom}; empty where
 *     it comes off no rope that is held
 */
public record Pin(String piece, String reel, int issued, int step, int behind, String heldFor) {
    public Pin {
        if (issued < 0 || step < 0 || behind < 0) {
            throw new IllegalArgumentException("plan " + issued + ", step " + step + ", " + behind + " runs behind");
        }
    }

    /** Of no rope that is held. */
    public Pin(String piece, String reel, int issued, int step, int behind) {
        this(piece, reel, issued, step, behind, "");
    }

    /** Pinned by choice. */
    public Pin(String piece, String reel) {
        this(piece, reel, 0);
    }

    /** Issued, the place on the sheet not known. */
    public Pin(String piece, String reel, int issued) {
        this(piece, reel, issued, 0, 0);
    }

    public boolean isIssued() {
        return issued > 0;
    }

    /** Whether it comes off rope that is held for it. */
    public boolean isOfHeldRope() {
        return !heldFor.isEmpty();
    }

    /** The same, off rope that is held for it. */
    public Pin ofHeldRope(String whom) {
        return new Pin(piece, reel, issued, step, behind, whom);
    }
}
