package bitterend.packing.search;

import bitterend.measure.Cost;
import bitterend.packing.Packing;
import bitterend.packing.model.Bench;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;

/** The best packing so far: least weight unplanned, then least true cost. */
final class Incumbent {
    private Packing packing;
    private long unplannedWeight;
    private Cost cost;

    /** The start is the first to beat. */
    Incumbent(Packing start, long unplannedWeight, Cost cost) {
        packing = start;
        this.unplannedWeight = unplannedWeight;
        this.cost = cost;
    }

    /** Takes over what is strictly better; a bench that breaks a hard rule never is. */
    boolean offer(Bench bench, HardMediumSoftLongScore score) {
        long weight = -score.mediumScore();
        Cost trueCost = new Cost(-score.softScore() - bench.shapingMillis());
        boolean better = weight < unplannedWeight || (weight == unplannedWeight && trueCost.compareTo(cost) < 0);
        if (score.hardScore() < 0 || !better) {
            return false;
        }
        packing = bench.packing();
        unplannedWeight = weight;
        cost = trueCost;
        return true;
    }

    Packing packing() {
        return packing;
    }

    long unplannedWeight() {
        return unplannedWeight;
    }

    Cost cost() {
        return cost;
    }
}
