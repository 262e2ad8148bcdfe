package bitterend.bench;

import bitterend.demand.Piece;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.PlanPrice;
import bitterend.packing.RunId;
import bitterend.packing.Undone;
import bitterend.packing.Urgency;
import bitterend.packing.check.Fault;
import bitterend.packing.check.PlanChecker;
import bitterend.packing.order.CuttingOrder;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** One day packed in several ways, each judged by the best bound that any of them proved. */
final class DayTrial {
    private final PackingProblem problem;
    private final Map<Way, Stopwatch.Lap<Packer.Result>> laps = new EnumMap<>(Way.class);

    DayTrial(PackingProblem problem) {
        this.problem = problem;
    }

    /**
     * A plan, judged.
     *
     * @param cost of the plan
     * @param compared it leaves exactly the work undone that the bound speaks of; otherwise the figures below say nothing
     * @param avoidable cost less bound
     * @param acrossReels what split orders cost, a part of the cost of which no bound knows
     * @param inPieces value of the rope in the planned pieces
     * @param refused by the checker, or cheaper than the bound says any such plan can be
     * @param wall seconds by the clock
     * @param processor seconds of the processor
     */
    record Judged(
            Cost cost,
            boolean compared,
            Cost avoidable,
            Cost acrossReels,
            Cost inPieces,
            boolean refused,
            double wall,
            double processor) {
        /** No smaller difference can be paid. */
        private static final Cost SMALLEST_COIN = new Cost(Cost.MILLIS_PER_MINOR);

        boolean provenBest() {
            return compared && avoidable.compareTo(SMALLEST_COIN) < 0;
        }

        /** Avoidable cost in per cent of the rope in the pieces. */
        double gap() {
            return avoidable.millis() <= 0 ? 0 : 100.0 * avoidable.millis() / inPieces.millis();
        }

        /** Avoidable cost in per cent of that of another plan. */
        double percentOf(Judged other) {
            return 100.0 * Math.max(0, avoidable.millis()) / other.avoidable.millis();
        }
    }

    /** Packs in one way. */
    Packer.Result run(Way way, long seed, Stopwatch stopwatch, Consumer<Effort.Progress> progress) {
        Stopwatch.Lap<Packer.Result> lap = stopwatch.lap(seed, progress, effort -> way.pack(problem, effort));
        laps.put(way, lap);
        return lap.result();
    }

    /** What the checker has against a result once it is put in order. */
    static List<Fault> faults(PackingProblem problem, Packer.Result result) {
        CutPlan ordered = new CuttingOrder(problem).plan(result.packing());
        CutPlan plan = new CutPlan(
                ordered.day(), ordered.draws(), ordered.unplanned(), ordered.book(), result.cost(), result.bounds());
        return PlanChecker.check(problem, plan);
    }

    /** One judgement for each way; the checker looks at the plans here, when the time is taken. */
    Map<Way, Judged> judged() {
        List<Bound> bounds = bestBounds();
        Map<Way, Judged> judged = new EnumMap<>(Way.class);
        laps.forEach((way, lap) -> judged.put(way, judge(lap, bounds)));
        return judged;
    }

    /** Those that leave the least undone, and of these the highest. */
    private List<Bound> bestBounds() {
        return laps.values().stream()
                .map(lap -> lap.result().bounds())
                .filter(bounds -> !bounds.isEmpty())
                .min(Comparator.comparing((List<Bound> bounds) -> sumUndone(bounds))
                        .thenComparing(DayTrial::sum, Comparator.reverseOrder()))
                .orElse(List.of());
    }

    private static Undone sumUndone(List<Bound> bounds) {
        return bounds.stream().map(Bound::undone).reduce(Undone.NONE, Undone::plus);
    }

    private static Cost sum(List<Bound> bounds) {
        return bounds.stream().map(Bound::best).reduce(Cost.ZERO, Cost::plus);
    }

    private Judged judge(Stopwatch.Lap<Packer.Result> lap, List<Bound> bounds) {
        Packer.Result result = lap.result();
        boolean compared = !bounds.isEmpty()
                && bounds.stream()
                        .allMatch(bound -> undone(result.packing(), bound).equals(bound.undone()));
        Cost avoidable = result.cost().minus(sum(bounds));
        boolean belowTheBound = compared && avoidable.compareTo(Cost.ZERO) < 0;
        return new Judged(
                result.cost(),
                compared,
                avoidable,
                new PlanPrice(problem).acrossReels(result.packing()),
                inPieces(problem, result.packing()),
                belowTheBound || !faults(problem, result).isEmpty(),
                lap.wall(),
                lap.processor());
    }

    /** What a packing leaves undone of the ropes that a bound speaks of. */
    private Undone undone(Packing packing, Bound bound) {
        Urgency urgency = new Urgency(problem);
        return problem.pieces().stream()
                .filter(piece -> bound.ropes().contains(piece.orderedRope()))
                .filter(piece -> packing.placeOf(piece.id()).isEmpty())
                .map(urgency::of)
                .reduce(Undone.NONE, Undone::plus);
    }

    /** What the rope in the planned pieces is worth. */
    static Cost inPieces(PackingProblem problem, Packing packing) {
        Map<String, String> ropes = new HashMap<>();
        problem.reels().forEach(reel -> ropes.put(reel.id(), reel.rope()));
        Cost sum = Cost.ZERO;
        for (Piece piece : problem.pieces()) {
            RunId place = packing.placeOf(piece.id()).orElse(null);
            if (place != null) {
                String rope = ropes.getOrDefault(place.reel(), "");
                sum = sum.plus(
                        problem.rope(rope).price().of(piece.lengthOn(rope).orElseThrow()));
            }
        }
        return sum;
    }
}
