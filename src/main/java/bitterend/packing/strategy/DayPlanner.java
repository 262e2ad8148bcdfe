package bitterend.packing.strategy;

import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.PackingProblem;
import bitterend.packing.check.BoundVerdict;
import bitterend.packing.check.Check;
import bitterend.packing.check.Fault;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.order.CuttingOrder;
import java.util.ArrayList;
import java.util.List;

/**
 * Plans a day: packs, puts the cuts in order, and lets the checker have the last word. Where the checker refuses a plan the
 * quick starts make another: a fault of this program is told, and does not cost the shop its day.
 */
public final class DayPlanner {
    private final Packer packer;

    public DayPlanner(Packer packer) {
        this.packer = packer;
    }

    /**
     * A plan that passed the checker, and what was told of the way to it.
     *
     * @param plan the plan
     * @param bounds what became of each bound it claims; each was computed again once
     * @param unsound what was wrong with plans that were thrown away: faults of this program, never of the input
     */
    public record Checked(CutPlan plan, List<BoundVerdict> bounds, List<String> unsound) {
        public Checked {
            bounds = List.copyOf(bounds);
            unsound = List.copyOf(unsound);
        }
    }

    /** The plan of {@link #checked} alone. */
    public CutPlan plan(PackingProblem problem, Effort effort) {
        return checked(problem, effort).plan();
    }

    /**
     * A plan that passed the checker. A bound that does not hold is left out, all of them with it; a plan that breaks a
     * rule gives way to that of the quick starts.
     *
     * @throws UnsoundPlanException when the checker refuses that one too
     */
    public Checked checked(PackingProblem problem, Effort effort) {
        Packer.Result result = packer.pack(problem, effort);
        List<String> unsound = new ArrayList<>(result.unsound());
        CutPlan plan = ordered(problem, result);
        PlanChecker.Verdict verdict = PlanChecker.verdict(problem, plan);
        if (verdict.isSound()) {
            return new Checked(plan, verdict.bounds(), unsound);
        }
        verdict.faults().forEach(fault -> unsound.add(fault.toString()));
        boolean onlyBounds = verdict.faults().stream().allMatch(DayPlanner::isOfBound);
        CutPlan instead = onlyBounds ? unproven(plan) : ordered(problem, new GreedyStrategy().pack(problem, effort));
        List<Fault> faults = PlanChecker.check(problem, instead);
        if (!faults.isEmpty()) {
            throw new UnsoundPlanException(faults);
        }
        return new Checked(instead, List.of(), unsound);
    }

    private static boolean isOfBound(Fault fault) {
        return fault.check() == Check.BOUND;
    }

    private static CutPlan ordered(PackingProblem problem, Packer.Result result) {
        CutPlan ordered = new CuttingOrder(problem).numbered(result.packing());
        return ordered.withBounds(result.bounds());
    }

    private static CutPlan unproven(CutPlan plan) {
        return plan.withBounds(List.of());
    }
}
