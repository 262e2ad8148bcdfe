package bitterend.packing;

import bitterend.demand.CutMate;
import bitterend.demand.Piece;
import java.time.LocalDate;
import java.util.List;

/**
 * All that decides which reels a piece may come off: pieces of one kind are asked about once. See {@link
 * Eligibility#kindOf}.
 *
 * @param choices the ropes allowed, with the cut length on each
 * @param certificate the papers that it needs, empty for none
 * @param ownRope cut from the customer's own rope
 * @param order its order where a reel is kept for that order, else empty
 * @param begun cut pieces of its matched set
 * @param pin the reel that it is pinned to, empty for none
 * @param arrival the latest day on which rope comes that it can wait for; {@link LocalDate#MIN} for none
 */
public record PieceKind(
        List<Piece.RopeChoice> choices,
        String certificate,
        boolean ownRope,
        String order,
        List<CutMate> begun,
        String pin,
        LocalDate arrival) {

    /** Whether it is pinned to a reel. */
    public boolean isPinned() {
        return !pin.isEmpty();
    }
}
