package bitterend.packing;

import bitterend.measure.Cost;
import java.util.List;

/**
 * No plan for these ropes that leaves no more weight unplanned costs less than {@code best}.
 *
 * @param ropes the ropes that were packed together
 * @param best the proven bound
 * @param root the part of it that the duals below prove; not above {@code best}
 * @param unplannedWeight weight of the pieces this plan leaves unplanned
 * @param unplannedPrice price per unit of that weight (mu), in 1/1000 minor unit; zero when nothing is unplanned
 * @param duals an integer price for every piece, in 1/1000 minor unit
 */
public record Bound(
        List<String> ropes, Cost best, Cost root, long unplannedWeight, long unplannedPrice, List<Dual> duals) {
    public Bound {
        ropes = List.copyOf(ropes);
        duals = List.copyOf(duals);
    }

    /**
     * The dual price of pieces that are alike.
     *
     * @param pieces their ids
     * @param millis price of each, never negative
     */
    public record Dual(List<String> pieces, long millis) {
        public Dual {
            pieces = List.copyOf(pieces);
        }
    }
}
