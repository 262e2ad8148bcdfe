package bitterend.packing.search;

import bitterend.finding.Findings;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.stream.ConstraintStreamImplType;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/**
 * How to search, and for how long at most. The files in solver-config hold the same profiles for tuning; reading one takes
 * half a second, so the profiles here are used unless a file is asked for.
 */
public final class Profile {
    /** Property of the rules: strength of the shaping, in percent of the price of opening a reel. */
    static final String SHAPING = "shapingPercent";

    private static final int USUAL_SHAPING = 10;
    private static final int LATE = 400;

    private final SolverConfig config;
    private final int shapingPercent;

    Profile(SolverConfig config) {
        this.config = copy(config);
        shapingPercent = takeShaping(this.config.getScoreDirectorFactoryConfig());
    }

    /** A good answer while the shop waits: seconds, and stops when nothing has come of the last one. */
    public static Profile quick() {
        return new Profile(config(new TerminationConfig()
                .withSpentLimit(Duration.ofSeconds(3))
                .withUnimprovedSpentLimit(Duration.ofSeconds(1))));
    }

    /** As good as a minute buys. */
    public static Profile thorough() {
        return new Profile(config(new TerminationConfig()
                .withSpentLimit(Duration.ofSeconds(60))
                .withUnimprovedSpentLimit(Duration.ofSeconds(15))));
    }

    /** Stops after so much work, whatever the clock says: the same input and seed give the same plan on any machine. */
    public static Profile reproducible() {
        return new Profile(config(new TerminationConfig().withScoreCalculationCountLimit(400_000L)));
    }

    /** The profile in a file; when the file cannot be used, every problem found in it is told and there is none. */
    public static Optional<Profile> read(Path file, Findings findings) {
        return ProfileFile.read(file, findings).map(Profile::new);
    }

    static SolverConfig config(TerminationConfig termination) {
        return new SolverConfig()
                .withScoreDirectorFactory(new ScoreDirectorFactoryConfig()
                        .withConstraintStreamImplType(ConstraintStreamImplType.BAVET)
                        .withConstraintProviderCustomProperties(Map.of(SHAPING, Integer.toString(USUAL_SHAPING))))
                .withTerminationConfig(termination)
                .withPhases(new LocalSearchPhaseConfig()
                        .withMoveSelectorConfig(
                                new MoveIteratorFactoryConfig().withMoveIteratorFactoryClass(BenchMoves.class))
                        .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(LATE))
                        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1)));
    }

    /** The shaping belongs to the layout of the bench, not to the rules. */
    private static int takeShaping(@Nullable ScoreDirectorFactoryConfig rules) {
        Map<String, String> properties = rules == null ? null : rules.getConstraintProviderCustomProperties();
        if (rules == null || properties == null) {
            return USUAL_SHAPING;
        }
        rules.setConstraintProviderCustomProperties(null);
        return Integer.parseInt(properties.getOrDefault(SHAPING, Integer.toString(USUAL_SHAPING)));
    }

    int shapingPercent() {
        return shapingPercent;
    }

    /** A copy that may be changed. */
    SolverConfig config() {
        return copy(config);
    }

    /** The solver's own copy shares the settings of the rules with its model. */
    private static SolverConfig copy(SolverConfig config) {
        SolverConfig copy = new SolverConfig(config);
        ScoreDirectorFactoryConfig rules = copy.getScoreDirectorFactoryConfig();
        if (rules != null) {
            copy.setScoreDirectorFactoryConfig(rules.copyConfig());
        }
        return copy;
    }

    /** Whether the profile stops by work alone, so that no clock may stop it. */
    boolean isByWork() {
        TerminationConfig own = config.getTerminationConfig();
        return own != null && own.getScoreCalculationCountLimit() != null && own.getSpentLimit() == null;
    }
}
