package bitterend.packing;

import bitterend.measure.Cost;
import java.util.Collections;
import java.util.List;

/**
 * No plan for these ropes that leaves no more work undone costs less than {@code best}.
 *
 * <p>With integer duals pi, U the weight left undone and mu its price, both by class k, w the weight of a piece in its
 * class ({@link Urgency}), and Z of a reel the largest {@code sum of pi - scale * cost} over all ways to draw from it (at
 * least 0), the root is at most
 *
 * <pre>ceil((sum over pieces of min(pi, mu_k * w) - sum over classes of mu_k * U_k - sum over reels of Z) / scale)</pre>
 *
 * <p>with U = 0 the term {@code mu * w} being left out. It holds for every plan whose undone work costs no more at these
 * prices. Matched sets, split orders and moved pieces are left out of it:
 * they can only add to the cost.
 *
 * @param ropes the ropes that were packed together
 * @param best the proven bound
 * @param root the part of it that the duals below prove; not above {@code best}
 * @param scale how many units of a dual make 1/1000 minor unit; at least 1
 * @param undone what this plan leaves undone of these ropes (U)
 * @param undonePrices price of a unit of weight in each class (mu), the first class first, in units of a dual
 * @param duals an integer price for every piece
 */
public record Bound(
        List<String> ropes,
        Cost best,
        Cost root,
        long scale,
        Undone undone,
        List<Long> undonePrices,
        List<Dual> duals) {
    public Bound {
        if (scale < 1) {
            throw new IllegalArgumentException("scale must be at least 1: " + scale);
        }
        if (undonePrices.size() != Undone.CLASSES) {
            throw new IllegalArgumentException("a price for each class: " + undonePrices);
        }
        ropes = List.copyOf(ropes);
        undonePrices = List.copyOf(undonePrices);
        duals = List.copyOf(duals);
    }

    /** Prices of undone work that are all nothing. */
    public static List<Long> noPrices() {
        return Collections.nCopies(Undone.CLASSES, 0L);
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
