package bitterend.packing.patterns;

import java.util.ArrayList;
import java.util.List;

/** A plan in the making: the reels cut so far, what is still wanted, and the reels still there. */
final class Partial {
    final List<Pattern> reels;
    final int[] residual;
    final int[] supply;
    long cost;

    Partial(Task task) {
        reels = new ArrayList<>();
        residual = task.demand.clone();
        supply = new int[task.kinds.length];
        for (Kind kind : task.kinds) {
            supply[kind.index] = kind.supply;
        }
    }

    private Partial(Partial from) {
        reels = new ArrayList<>(from.reels);
        residual = from.residual.clone();
        supply = from.supply.clone();
        cost = from.cost;
    }

    Partial copy() {
        return new Partial(this);
    }

    /** How many reels can be cut by this pattern without cutting a piece too many. */
    int room(Pattern pattern) {
        return Math.min(pattern.timesWithin(residual), supply[pattern.kind]);
    }

    void cut(Pattern pattern, int times) {
        pattern.takeFrom(residual, times);
        supply[pattern.kind] -= times;
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
