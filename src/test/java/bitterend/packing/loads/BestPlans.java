package bitterend.packing.loads;

import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import java.util.Arrays;

/** Keeps the best of the plans offered, with nothing done to them. */
public final class BestPlans implements Plans {
    private final PlanPrice prices;
    private Standing best;

    public BestPlans(PackingProblem problem) {
        prices = new PlanPrice(problem);
        best = standing(Packing.EMPTY);
    }

    private Standing standing(Packing packing) {
        return new Standing(
                packing,
                prices.undone(packing).weights().stream()
                        .mapToLong(Long::longValue)
                        .toArray(),
                prices.of(packing).millis());
    }

    @Override
    public void offer(Packing packing) {
        Standing offered = standing(packing);
        int order = Arrays.compare(offered.undone(), best.undone());
        if (order < 0 || (order == 0 && offered.cost() < best.cost())) {
            best = offered;
        }
    }

    @Override
    public Standing best() {
        return best;
    }
}
