package bitterend.packing.search;

import bitterend.measure.Cost;
import bitterend.packing.Packing;
import bitterend.packing.Undone;
import bitterend.packing.model.Bench;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/** The best packing so far: least work undone, then least true cost. */
final class Incumbent {
    private Packing packing;
    private Undone undone;
    private Cost cost;

    /** The start is the first to beat. */
    Incumbent(Packing start, Undone undone, Cost cost) {
        packing = start;
        this.undone = undone;
        this.cost = cost;
    }

    /** Takes over what is strictly better; a bench that breaks a hard rule never is. */
    boolean offer(Bench bench, BendableLongScore score) {
        Undone left = Bench.undone(score);
        Cost trueCost = new Cost(Bench.softMillis(score) - bench.shapingMillis());
        int work = left.compareTo(undone);
        boolean better = work < 0 || (work == 0 && trueCost.compareTo(cost) < 0);
        if (!Bench.isSound(score) || !better) {
            return false;
        }
        packing = bench.packing();
        undone = left;
        cost = trueCost;
        return true;
    }

    Packing packing() {
        return packing;
    }

    Undone undone() {
        return undone;
    }

    Cost cost() {
        return cost;
    }
}
