package bitterend.packing;

import bitterend.measure.Cost;
import java.util.List;

/**
 * No plan for these ropes that leaves no more weight unplanned costs less than {@code best}.
 *
 * <p>With integer duals pi, weights w ({@link Urgency}), mu the price and U the weight of what is unplanned, and Z of a
 * reel the largest {@code sum of pi - scale * cost} over all ways to draw from it (at least 0), the root is at most
 *
 * <pre>ceil((sum over pieces of min(pi, mu * w) - mu * U - sum over reels of Z) / scale)</pre>
 *
 * <p>with U = 0 the term {@code mu * w} being left out. Matched sets, split orders and moved pieces are left out of it:
 * they can only add to the cost.
 *
 * @param ropes the ropes that were packed together
 * @param best the proven bound
 * @param root the part of it that the duals below prove; not above {@code best}
 * @param scale how many units of a dual make 1/1000 minor unit; at least 1
 * @param unplannedWeight weight of the pieces this plan leaves unplanned (U)
 * @param unplannedPrice price per unit of that weight (mu), in units of a dual
 * @param duals an integer price for every piece
 */
public record Bound(
        List<String> ropes,
        Cost best,
        Cost root,
        long scale,
        long unplannedWeight,
        long unplannedPrice,
        List<Dual> duals) {
    public Bound {
        if (scale < 1) {
            throw new IllegalArgumentException("scale must be at least 1: " + scale);
        }
        ropes = List.copyOf(ropes);
        duals = List.copyOf(duals);
    }

    /**
     * The dual price of pieces that are alike.
     *
     * @param pieces their ids
     * @param price price of each, in units of a dual; never negative
     */
    public record Dual(List<String> pieces, long price) {
        public Dual {
            pieces = List.copyOf(pieces);
        }
    }
}
