package bitterend.packing.search;

import bitterend.packing.model.Bench;
import org.optaplanner.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolverFactory;

/** What the solver makes of a bench. */
final class Scores {
    private static final SolutionManager<Bench, HardMediumSoftLongScore> MANAGER = SolutionManager.create(
            SolverFactory.<Bench>create(Search.onTheBench(Profile.reproducible().config())));

    private Scores() {}

    static long softCost(Bench bench) {
        return -MANAGER.explain(bench).getScore().softScore();
    }

    static long mediumCost(Bench bench) {
        return -MANAGER.explain(bench).getScore().mediumScore();
    }
}
