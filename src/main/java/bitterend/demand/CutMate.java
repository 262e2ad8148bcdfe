package bitterend.demand;

import java.util.List;

/**
 * A piece of a matched set that is cut already. What is left of the set must match it.
 *
 * @param piece id of the piece
 * @param rope the rope it was cut from
 * @param lot the lot of that rope as it is known today; empty when it is not known
 * @param reels the reel it came off, then the other reels and coils that are rope of the same reel
 */
public record CutMate(String piece, String rope, String lot, List<String> reels) {
    public CutMate {
        reels = List.copyOf(reels);
        if (reels.isEmpty()) {
            throw new IllegalArgumentException("no reel for " + piece);
        }
    }

    /** What the rest of its set is bound to, in words. */
    public String origin(boolean toTheReel) {
        String reel = "reel " + reels.get(0);
        return toTheReel ? reel : lot.isEmpty() ? reel + " of unknown lot" : "lot " + lot;
    }

    /** Whether rope of this reel and lot is of the lot that the mate came from: rope of one reel is, whatever its lot is called. */
    public boolean isOfItsLot(String otherRope, String otherLot, String reel) {
        return rope.equals(otherRope) && (reels.contains(reel) || (!lot.isEmpty() && lot.equals(otherLot)));
    }
}
