package bitterend.packing.check;

import bitterend.catalogue.Rope;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.check.BoundVerdict.State;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Recomputes the bounds of a plan from their duals, with a dynamic program of its own. */
public final class BoundChecker {
    /** States a recomputation may look at: a few seconds. */
    static final long WORK = 400_000_000L;

    private BoundChecker() {}

    /** A verdict for each bound of the plan, in their order, and one more when they do not cover its ropes. */
    public static List<BoundVerdict> check(PackingProblem problem, CutPlan plan) {
        return check(problem, plan, WORK);
    }

    static List<BoundVerdict> check(PackingProblem problem, CutPlan plan, long work) {
        List<BoundVerdict> verdicts = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Bound bound : plan.bounds()) {
            Set<String> twice = new TreeSet<>(bound.ropes());
            twice.retainAll(seen);
            seen.addAll(bound.ropes());
            verdicts.add(
                    twice.isEmpty()
                            ? check(problem, plan, bound, work)
                            : refuted(bound, twice + " stand in two bounds"));
        }
        uncovered(problem, plan, seen).ifPresent(verdicts::add);
        return verdicts;
    }

    /** Bounds are given for all ropes that are cut, or for none. */
    private static Optional<BoundVerdict> uncovered(PackingProblem problem, CutPlan plan, Set<String> covered) {
        Set<String> drawn = plan.draws().stream().map(draw -> draw.reel()).collect(Collectors.toSet());
        List<String> open = problem.reels().stream()
                .filter(reel -> drawn.contains(reel.id()) && !covered.contains(reel.rope()))
                .map(reel -> reel.rope())
                .distinct()
                .sorted()
                .toList();
        return plan.bounds().isEmpty() || open.isEmpty()
                ? Optional.empty()
                : Optional.of(new BoundVerdict(open, State.REFUTED, "no bound speaks of " + open));
    }

    private static BoundVerdict check(PackingProblem problem, CutPlan plan, Bound bound, long work) {
        try {
            BoundClaim claim = new BoundClaim(problem, plan, bound);
            Optional<String> wrong = claim.contradiction();
            if (wrong.isPresent()) {
                return refuted(bound, wrong.get());
            }
            Optional<Cost> root = root(claim, work);
            return root.map(cost -> judge(problem, bound, cost))
                    .orElseGet(() -> new BoundVerdict(
                            bound.ropes(), State.NOT_CHECKED, name(problem, bound) + ": not re-checked, too large"));
        } catch (ArithmeticException tooLarge) {
            return new BoundVerdict(
                    bound.ropes(),
                    State.NOT_CHECKED,
                    name(problem, bound) + ": not re-checked, its numbers are too large");
        }
    }

    /** The greatest that the duals prove. */
    private static Optional<Cost> root(BoundClaim claim, long work) {
        boolean allPlanned = claim.bound().undone().isNone();
        Optional<Cost> root = new RootBound(claim, !allPlanned, work).compute();
        boolean falling = root.isPresent() && root.get().compareTo(claim.bound().root()) < 0;
        return falling && allPlanned && claim.hasPrices() ? new RootBound(claim, true, work).compute() : root;
    }

    private static BoundVerdict judge(PackingProblem problem, Bound bound, Cost root) {
        if (root.compareTo(bound.root()) < 0) {
            return refuted(
                    bound,
                    "the duals prove " + root.millis() + ", not " + bound.root().millis() + " (1/1000 minor units)");
        }
        String branching = bound.best().compareTo(root) <= 0 ? "" : "; its improvement by branching is not re-checked";
        return new BoundVerdict(
                bound.ropes(), State.CONFIRMED, name(problem, bound) + ": " + BoundVerdict.CONFIRMED_WHOLE + branching);
    }

    private static BoundVerdict refuted(Bound bound, String sentence) {
        return new BoundVerdict(bound.ropes(), State.REFUTED, sentence);
    }

    private static String name(PackingProblem problem, Bound bound) {
        return bound.ropes().stream()
                .map(id -> Optional.ofNullable(problem.ropes().get(id))
                        .map(Rope::name)
                        .orElse(id))
                .collect(Collectors.joining(", "));
    }
}
