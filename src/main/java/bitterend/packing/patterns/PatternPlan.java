package bitterend.packing.patterns;

import bitterend.packing.proof.FewestProof;
import java.util.List;
import java.util.Optional;

/**
 * The best plan found and what is known about all plans.
 *
 * @param draws the reels to cut
 * @param unplanned how many of each item are left out
 * @param unplannedWeight their weight; items that must be planned weigh one more than all others together
 * @param cost of the draws
 * @param weightBound no plan leaves less weight unplanned
 * @param bound no plan that leaves no more weight unplanned than this one costs less
 * @param root proves a bound on the cost, by numbers that can be checked; at most {@code bound}
 * @param weightRoot proves a bound on the unplanned weight
 * @param denial why one reel less is too few, where reels are alike and cut flat and cases had to show it
 * @param work steps spent
 */
public record PatternPlan(
        List<Draw> draws,
        List<Integer> unplanned,
        long unplannedWeight,
        long cost,
        long weightBound,
        long bound,
        DualProof root,
        DualProof weightRoot,
        Optional<FewestProof> denial,
        long work) {
    public PatternPlan {
        draws = List.copyOf(draws);
        unplanned = List.copyOf(unplanned);
    }

    /** Nothing is left out. */
    public boolean complete() {
        return unplannedWeight == 0;
    }

    /** No plan leaves less unplanned, and none that leaves as little costs less. */
    public boolean proven() {
        return weightBound >= unplannedWeight && bound >= cost;
    }

    /** The bound was raised by branching above what {@link #root} shows: it rests on the search, not on the duals. */
    public boolean boundByBranching() {
        return bound > root.bound();
    }
}
