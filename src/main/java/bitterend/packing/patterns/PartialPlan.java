package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;

/** A plan in the making: the reels cut so far, what is still wanted, and the reels still there. */
final class PartialPlan {
    final List<Pattern> reels;
    final int[] residual;
    final int[] supply;
    long cost;

    PartialPlan(Instance instance) {
        reels = new ArrayList<>();
        residual = instance.demand.clone();
        supply = new int[instance.types.length];
        for (ReelType type : instance.types) {
            supply[type.index] = type.supply;
        }
    }

    private PartialPlan(PartialPlan from) {
        reels = new ArrayList<>(from.reels);
        residual = from.residual.clone();
        supply = from.supply.clone();
        cost = from.cost;
    }

    PartialPlan copy() {
        return new PartialPlan(this);
    }

    /** How many reels can be cut by this pattern without cutting a piece too many. */
    int room(Pattern pattern) {
        return Math.min(pattern.timesWithin(residual), supply[pattern.type]);
    }

    void cut(Pattern pattern, int times) {
        pattern.takeFrom(residual, times);
        supply[pattern.type] -= times;
        cost += pattern.cost * times;
        for (int t = 0; t < times; t++) {
            reels.add(pattern);
        }
    }

    boolean done() {
        for (int left : residual) {
            if (left > 0) {
                return false;
            }
        }
        return true;
    }
}
