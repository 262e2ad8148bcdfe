package bitterend.work.plans;

import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.PackingProblem;
import bitterend.packing.strategy.DayPlanner;
import bitterend.packing.strategy.FirstFitStrategy;
import java.time.Duration;

/** Asks what the rule of thumb would make of a day, so that a plan can be held against it. */
public final class FirstFit {
    private FirstFit() {}

    /** Its plan, checked like any other. */
    public static CutPlan of(PackingProblem problem) {
        return new DayPlanner(new FirstFitStrategy()).plan(problem, Effort.of(Duration.ZERO));
    }
}
