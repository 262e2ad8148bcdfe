package bitterend.packing.model;

import bitterend.demand.Piece;
import bitterend.packing.Eligibility;
import org.jspecify.annotations.Nullable;

/**
 * All of a piece that does not change during a search.
 *
 * @param piece the piece
 * @param kind pieces of one kind differ in their number alone
 * @param urgency class in which it is left undone, from 1
 * @param weight its weight in that class
 * @param homes where it may come from
 * @param eligibility the hard rules of one piece on one run
 * @param set its matched set; null when it stands alone
 * @param isPinned whether a pin holds it to one reel
 * @param earlierReel id of its reel in an earlier plan; empty when none
 * @param hasOrderMates whether its order has other pieces
 */
record PieceFacts(
        Piece piece,
        int kind,
        int urgency,
        long weight,
        Homes homes,
        Eligibility eligibility,
        @Nullable MatchedSet set,
        boolean isPinned,
        String earlierReel,
        boolean hasOrderMates) {}
