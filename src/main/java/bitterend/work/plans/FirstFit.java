package bitterend.work.plans;

import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.FirstFitStrategy;
import java.time.Duration;
import java.util.Map;

/** Asks what the rule of thumb would make of a day, so that a plan can be held against it. */
public final class FirstFit {
    private FirstFit() {}

    /** Its plan, checked like any other; it knows nothing of an earlier one, and pays for no change of it. */
    public static CutPlan of(PackingProblem problem) {
        return new DayPlanner(new FirstFitStrategy()).plan(problem.withEarlier(Map.of()), Effort.of(Duration.ZERO));
    }
}
