package bitterend.packing.loads;

import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;

/** Keeps the best of the plans offered, with nothing done to them. */
public final class BestPlans implements Plans {
    private final PlanPrice prices;
    private Standing best;

    public BestPlans(PackingProblem problem) {
        prices = new PlanPrice(problem);
        best = standing(Packing.EMPTY);
    }

    private Standing standing(Packing packing) {
        return new Standing(packing, prices.undone(packing), prices.of(packing).millis());
    }

    @Override
    public void offer(Packing packing) {
        Standing offered = standing(packing);
        int order = offered.work().compareTo(best.work());
        if (order < 0 || (order == 0 && offered.cost() < best.cost())) {
            best = offered;
        }
    }

    @Override
    public Standing best() {
        return best;
    }
}
