package bitterend.packing.patterns;

import java.util.List;

/**
 * Whole numbers that prove a lower bound; whoever doubts it can work it out again.
 *
 * <p>Let pi be {@code duals}, mu {@code unplannedPrice}, U {@code unplannedWeight}, d the demands, w the weights (an
 * item that must be planned weighs one more than all others together). Let Z of a reel kind be the largest {@code pi
 * value - scale * cost} over all ways to draw from one such reel, each run by itself within the demand, at least 0; s
 * its supply, at most the number of pieces that fit on it. No plan that leaves at most U unplanned costs less than
 *
 * <pre>ceil((sum d * min(pi, mu * w) - mu * U - sum s * Z) / scale)</pre>
 *
 * <p>rounded up to a multiple of the common divisor of all possible costs. With U = 0 the term {@code mu * w} is left
 * out. For the proof of the unplanned weight itself, cost is 0 and {@code min(pi, scale * w)} takes its place.
 *
 * @param scale how many units of a dual make one unit of cost, at least 1
 * @param duals one for each item of the problem, never negative
 * @param unplannedPrice mu, never negative
 * @param unplannedWeight U
 * @param numerator what is rounded up there: the bound times the scale, before any rounding
 * @param bound that they prove
 */
public record DualProof(
        long scale, List<Long> duals, long unplannedPrice, long unplannedWeight, long numerator, long bound) {
    public DualProof {
        duals = List.copyOf(duals);
        if (scale < 1) {
            throw new IllegalArgumentException("scale must be at least 1: " + scale);
        }
    }
}
