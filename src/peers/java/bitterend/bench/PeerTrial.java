package bitterend.bench;

import bitterend.bench.peers.CostLines;
import bitterend.bench.peers.DayModel;
import bitterend.bench.peers.GeneralSolver;
import bitterend.bench.peers.Outcome;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.strategy.PeerDay;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One day packed by our ways and by general solvers, all in the same time and threads; plans are checked and priced by us. */
final class PeerTrial {
    /** A general solver may call a plan a millionth of its cost cheaper than it is: it reckons in floating point. */
    private static final double PER_COST = 1e-6;

    private final PackingProblem problem;
    private final PlanPrice prices;
    private final double seconds;
    private final int threads;
    private final long seed;
    private final Map<String, Tried> tried = new LinkedHashMap<>();

    PeerTrial(PackingProblem problem, double seconds, int threads, long seed) {
        this.problem = problem;
        this.seconds = seconds;
        this.threads = threads;
        this.seed = seed;
        prices = new PlanPrice(problem);
    }

    /**
     * What a way came to.
     *
     * @param packing its plan; nothing is planned where it found none
     * @param cost of the plan by our prices
     * @param bound no plan costs less, by this way; zero where it proved nothing
     * @param steps its plans on the way, by its own reckoning
     * @param refused by the checker
     * @param differs its model made the plan cheaper than it is
     */
    record Tried(Packing packing, Cost cost, Cost bound, List<Outcome.Step> steps, boolean refused, boolean differs) {
        boolean planned() {
            return !packing.equals(Packing.EMPTY);
        }
    }

    /** Everything tried, by title. */
    Map<String, Tried> tried() {
        return tried;
    }

    /** Packs in one of our ways. */
    void run(String title, Way way) {
        long from = System.nanoTime();
        List<Outcome.Step> steps = new ArrayList<>();
        Map<String, Cost> byRopes = new HashMap<>();
        Duration time = Duration.ofMillis(Math.round(1_000 * seconds));
        Packer.Result result = way.pack(problem, new Effort(time, Long.MAX_VALUE, seed, threads, () -> false, told -> {
            synchronized (steps) {
                byRopes.put(told.ropes(), told.cost());
                long sum = byRopes.values().stream().mapToLong(Cost::millis).sum();
                steps.add(new Outcome.Step(secondsSince(from), sum));
            }
        }));
        double end = secondsSince(from);
        // While a part of the day has not been heard of, or pieces are out, the sum is less than the whole.
        List<Outcome.Step> sound = new ArrayList<>(steps.stream()
                .filter(step -> step.cost() >= result.cost().millis())
                .toList());
        sound.add(new Outcome.Step(end, result.cost().millis()));
        long bound =
                result.bounds().stream().mapToLong(part -> part.best().millis()).sum();
        tried.put(title, judged(result, bound, sound, false));
    }

    /** Packs with a general solver. */
    void run(PeerWay way) {
        long from = System.nanoTime();
        PeerDay day = new PeerDay(problem);
        Optional<DayModel> model = way.shape().of(problem, day, seconds);
        double built = secondsSince(from);
        Outcome outcome = model.isEmpty() || built >= seconds
                ? Outcome.NOTHING
                : way.solver().solve(model.get(), new GeneralSolver.Limits(seconds - built, threads));
        if (model.isEmpty() || !outcome.hasPlan() || !model.get().program().holds(outcome.values())) {
            tried.put(way.title(), new Tried(Packing.EMPTY, Cost.ZERO, bound(model, outcome), List.of(), false, false));
            return;
        }
        Packing packing = day.packing(model.get().draws(outcome.values()));
        Packer.Result result = new Packer.Result(packing, prices.of(packing), List.of());
        long said = model.get().program().cost(outcome.values());
        long runs = packing.places().values().stream().distinct().count();
        boolean differs = result.cost().millis() > said + CostLines.TOLERANCE * runs + PER_COST * said;
        List<Outcome.Step> steps = new ArrayList<>(outcome.steps().stream()
                .map(step -> new Outcome.Step(built + step.seconds(), step.cost()))
                .toList());
        steps.add(new Outcome.Step(secondsSince(from), result.cost().millis()));
        tried.put(way.title(), judged(result, bound(model, outcome).millis(), steps, differs));
    }

    private static Cost bound(Optional<DayModel> model, Outcome outcome) {
        boolean holds = model.isPresent() && model.get().isWhole();
        return holds ? new Cost(Math.max(0, outcome.bound())) : Cost.ZERO;
    }

    private Tried judged(Packer.Result result, long bound, List<Outcome.Step> steps, boolean differs) {
        List<Bound> own = result.bounds();
        boolean refused = !prices.undone(result.packing()).isNone()
                || !DayTrial.faults(problem, new Packer.Result(result.packing(), result.cost(), own))
                        .isEmpty();
        return new Tried(result.packing(), result.cost(), new Cost(bound), steps, refused, differs);
    }

    private static double secondsSince(long from) {
        return (System.nanoTime() - from) / 1e9;
    }
}
