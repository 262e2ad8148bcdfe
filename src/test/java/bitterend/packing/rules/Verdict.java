package bitterend.packing.rules;

import bitterend.packing.Rule;
import bitterend.packing.model.Bench;
import bitterend.packing.model.PieceToCut;
import java.util.List;
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

    /** The sentences said under a rule. */
    List<String> sentences(Rule rule) {
        return explanation.getJustificationList(RuleJustification.class).stream()
                .map(RuleJustification::reason)
                .filter(reason -> reason.rule() == rule)
                .map(reason -> reason.sentence())
                .toList();
    }

    /** The pieces that are named with a sentence, in the order of the bench. */
    List<String> pieces(String sentence) {
        return explanation.getSolution().pieces().stream()
                .filter(piece -> explanation.getIndictmentMap().containsKey(piece)
                        && explanation
                                .getIndictmentMap()
                                .get(piece)
                                .getJustificationList(RuleJustification.class)
                                .stream()
                                .anyMatch(why -> why.reason().sentence().equals(sentence)))
                .map(PieceToCut::getId)
                .toList();
    }
}
