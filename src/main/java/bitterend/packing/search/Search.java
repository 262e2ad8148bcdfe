package bitterend.packing.search;

import bitterend.measure.Cost;
import bitterend.packing.Effort;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.Undone;
import bitterend.packing.model.Bench;
import bitterend.packing.model.BenchLayout;
import bitterend.packing.model.PieceToCut;
import bitterend.packing.rules.BenchRules;
import java.time.Duration;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.api.solver.event.BestSolutionChangedEvent;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.monitoring.MonitoringConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/** Improves a packing under all rules of the bench at once. */
public final class Search {
    /** The solver registers one meter per run whatever its configuration, and the meters complain of the second. */
    private static final Logger METERS = Logger.getLogger("io.micrometer");

    static {
        METERS.setLevel(Level.OFF);
    }

    private final PackingProblem problem;
    private final Effort effort;
    private final Profile profile;
    private final Cost bound;
    private final PlanPrice prices;
    private final Undone hopeless;

    private Search(PackingProblem problem, Effort effort, Profile profile, Cost bound, Bench bench) {
        this.problem = problem;
        this.effort = effort;
        this.profile = profile;
        this.bound = bound;
        prices = new PlanPrice(problem);
        hopeless = bench.pieces().stream()
                .filter(piece -> piece.getHomes().isEmpty())
                .map(piece -> Undone.of(piece.urgency(), piece.weight()))
                .reduce(Undone.NONE, Undone::plus);
    }

    /**
     * The best packing found within the effort and the profile's own limits: never one that leaves more undone than the
     * start, nor a dearer one that leaves the same. Ends early when the bound is met.
     *
     * @param start a packing that breaks no rule; the search sets out from it
     * @param bound no packing that leaves as little unplanned as can be costs less; zero when nothing is proven
     */
    public static Packing improve(PackingProblem problem, Packing start, Effort effort, Profile profile, Cost bound) {
        Bench bench = new BenchLayout(problem, profile.shapingPercent()).with(start);
        return new Search(problem, effort, profile, bound, bench).from(start, bench);
    }

    private Packing from(Packing start, Bench bench) {
        Incumbent best = new Incumbent(start, prices.undone(start), prices.of(start));
        boolean nothingToDo =
                bench.pieces().stream().allMatch(piece -> piece.getHomes().isEmpty());
        if (nothingToDo || isProven(best) || effort.cancelled().getAsBoolean()) {
            return start;
        }
        Solver<Bench> solver = SolverFactory.<Bench>create(config()).buildSolver();
        solver.addEventListener(event -> hear(event, best, solver));
        Watch watch = Watch.over(solver, effort.cancelled());
        try {
            solver.solve(bench);
        } finally {
            watch.end();
        }
        return best.packing();
    }

    private void hear(BestSolutionChangedEvent<Bench> event, Incumbent best, Solver<Bench> solver) {
        Bench bench = event.getNewBestSolution();
        if (!best.offer(bench, (BendableLongScore) event.getNewBestScore())) {
            return;
        }
        int unplanned = problem.pieces().size() - best.packing().places().size();
        effort.progress().accept(new Effort.Progress(ropes(), best.cost(), bound, unplanned));
        if (isProven(best)) {
            solver.terminateEarly();
        }
    }

    /** With a bound of zero nothing says how little can be left unplanned, except that what has no home must be. */
    private boolean isProven(Incumbent best) {
        boolean asLittleAsCanBe = !bound.equals(Cost.ZERO) || best.undone().compareTo(hopeless) <= 0;
        return asLittleAsCanBe && best.cost().compareTo(bound) <= 0;
    }

    private String ropes() {
        return String.join(", ", problem.ropes().keySet());
    }

    private SolverConfig config() {
        SolverConfig config = profile.config();
        TerminationConfig own = config.getTerminationConfig();
        TerminationConfig limits = own == null ? new TerminationConfig() : own.copyConfig();
        if (!profile.isByWork()) {
            Duration spent = limits.getSpentLimit();
            limits.setSpentLimit(
                    spent == null || spent.compareTo(effort.time()) > 0 ? wholeMillis(effort.time()) : spent);
        }
        Long work = limits.getScoreCalculationCountLimit();
        if (effort.work() < (work == null ? Long.MAX_VALUE : work)) {
            limits.setScoreCalculationCountLimit(effort.work());
        }
        return onTheBench(config.withTerminationConfig(limits).withRandomSeed(effort.seed()));
    }

    /** The solver takes no nanoseconds. */
    private static Duration wholeMillis(Duration time) {
        return Duration.ofMillis(Math.max(1, time.toMillis()));
    }

    /** The same profile with the classes it is about, and without meters that nobody reads. */
    static SolverConfig onTheBench(SolverConfig config) {
        return config.withSolutionClass(Bench.class)
                .withEntityClasses(PieceToCut.class)
                .withConstraintProviderClass(BenchRules.class)
                .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()));
    }
}
