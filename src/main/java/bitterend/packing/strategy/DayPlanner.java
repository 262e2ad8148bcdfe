package bitterend.packing.strategy;

import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.check.Fault;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.order.CuttingOrder;
import java.util.List;

/** Plans a day: packs, puts the cuts in order, and lets the checker have the last word. */
public final class DayPlanner {
    private final Packer packer;

    public DayPlanner(Packer packer) {
        this.packer = packer;
    }

    /**
     * A plan that passed the checker.
     *
     * @throws UnsoundPlanException when the checker finds a fault: an error of this program, never of the input
     */
    public CutPlan plan(PackingProblem problem, Effort effort) {
        Packer.Result result = packer.pack(problem, effort);
        CutPlan ordered = new CuttingOrder(problem).plan(result.packing());
        CutPlan plan = new CutPlan(
                ordered.day(), ordered.draws(), ordered.unplanned(), ordered.book(), ordered.cost(), result.bounds());
        List<Fault> faults = PlanChecker.check(problem, plan);
        if (!faults.isEmpty()) {
            throw new UnsoundPlanException(faults);
        }
        return plan;
    }
}
