package bitterend.work;

import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.check.BoundVerdict;
import java.util.ArrayList;
import java.util.List;

/** What a plan may claim of its cost: how much of each bound was computed again, and how much a search says beside. */
public final class PlanClaims {
    private PlanClaims() {}

    /**
     * The plan, with bounds that show no more than the checker confirmed.
     *
     * @param verdicts what it said of each bound, in their order
     * @param searched whether what a search says beyond that stands as what it is, found by search: of a plan that this
     *     program wrote down, and not of a file that anyone may have written
     */
    public static CutPlan of(CutPlan plan, List<BoundVerdict> verdicts, boolean searched) {
        List<Bound> claimed = new ArrayList<>();
        for (int i = 0; i < plan.bounds().size(); i++) {
            claimed.add(claimed(plan.bounds().get(i), verdicts.get(i), searched));
        }
        return plan.withBounds(claimed);
    }

    /** Ropes of which nothing was confirmed stay among those that are counted. */
    private static Bound claimed(Bound bound, BoundVerdict verdict, boolean searched) {
        if (verdict.isWhollyConfirmed()) {
            return bound;
        }
        Cost confirmed = verdict.confirmed();
        Bound shown = new Bound(
                bound.ropes(),
                searched ? bound.best() : least(bound.best(), confirmed),
                least(bound.root(), confirmed),
                bound.scale(),
                bound.undone(),
                bound.undonePrices(),
                bound.duals());
        return shown.with(new Bound.Cases(
                bound.cases().costs().stream()
                        .filter(proof -> proof.cost().compareTo(confirmed) <= 0)
                        .toList(),
                List.of()));
    }

    private static Cost least(Cost one, Cost other) {
        return one.compareTo(other) < 0 ? one : other;
    }
}
