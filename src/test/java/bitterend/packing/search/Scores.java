package bitterend.packing.search;

import bitterend.packing.Undone;
import bitterend.packing.model.Bench;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolverFactory;

/** What the solver makes of a bench. */
final class Scores {
    private static final SolutionManager<Bench, BendableLongScore> MANAGER = SolutionManager.create(
            SolverFactory.<Bench>create(Search.onTheBench(Profile.reproducible().config())));

    private Scores() {}

    static long softCost(Bench bench) {
        return Bench.softMillis(MANAGER.explain(bench).getScore());
    }

    static Undone undone(Bench bench) {
        return Bench.undone(MANAGER.explain(bench).getScore());
    }
}
