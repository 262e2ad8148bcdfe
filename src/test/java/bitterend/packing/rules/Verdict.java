package bitterend.packing.rules;

import bitterend.packing.model.Bench;
import bitterend.packing.model.PieceToCut;
import org.optaplanner.core.api.score.ScoreExplanation;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.api.solver.SolutionManager;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.SolverConfig;

/** What the rules say of a bench, as the solver hands it on. */
final class Verdict {
    private static final SolutionManager<Bench, BendableLongScore> MANAGER =
            SolutionManager.create(SolverFactory.<Bench>create(new SolverConfig()
                    .withSolutionClass(Bench.class)
                    .withEntityClasses(PieceToCut.class)
                    .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                            .withConstraintStreamImplType(ConstraintStreamImplType.BAVET)
                            .withConstraintProviderClass(BenchRules.class))));

    private final ScoreExplanation<Bench, BendableLongScore> explanation;

    private Verdict(ScoreExplanation<Bench, BendableLongScore> explanation) {
        this.explanation = explanation;
    }

    static Verdict on(Bench bench) {
        return new Verdict(MANAGER.explain(bench));
    }

    BendableLongScore score() {
        return explanation.getScore();
    }

    boolean isSound() {
        return Bench.isSound(score());
    }

    long softCost() {
        return Bench.softMillis(score());
    }
}
