package bitterend.packing.strategy;

import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.order.CuttingOrder;

/** Plans a day: packs, puts the cuts in order, and lets the checker have the last word. */
public final class DayPlanner {
    private final Packer packer;

    public DayPlanner(Packer packer) {
        this.packer = packer;
    }

    /** The plan of the packing found within the effort. */
    public CutPlan plan(PackingProblem problem, Effort effort) {
        Packer.Result result = packer.pack(problem, effort);
        CutPlan ordered = new CuttingOrder(problem).plan(result.packing());
        return new CutPlan(
                ordered.day(), ordered.draws(), ordered.unplanned(), ordered.book(), ordered.cost(), result.bounds());
    }
}
