package bitterend.quoting.sharing;

import bitterend.packing.Bound;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import java.util.List;
import java.util.Map;

/**
 * Pieces of one rope cut from new reels.
 *
 * @param rope the rope as it is bought
 * @param problem what is cut from what
 * @param packing how it is cut
 * @param cost what that costs
 * @param bounds what is proven, as the packer told it
 */
public record Cutting(NewRope rope, PackingProblem problem, Packing packing, CostRange cost, List<Bound> bounds) {
    public Cutting {
        bounds = List.copyOf(bounds);
    }

    /** How many new reels of each size are cut; sizes of which none is cut are left out. */
    public Map<NewReel, Integer> reels() {
        return rope.taken(problem, packing);
    }
}
