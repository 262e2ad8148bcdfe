package bitterend.packing.check;

import bitterend.catalogue.Rope;
import bitterend.measure.Cost;
import bitterend.packing.Bound;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Undone;
import bitterend.packing.check.BoundVerdict.State;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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
        List<Set<String>> twice = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Bound bound : plan.bounds()) {
            Set<String> again = new TreeSet<>(bound.ropes());
            again.retainAll(seen);
            seen.addAll(bound.ropes());
            twice.add(again);
        }
        List<BoundVerdict> verdicts = IntStream.range(0, twice.size())
                .parallel()
                .mapToObj(i -> twice.get(i).isEmpty()
                        ? check(problem, plan, plan.bounds().get(i), work)
                        : refuted(plan.bounds().get(i), twice.get(i) + " are in two bounds"))
                .collect(Collectors.toCollection(ArrayList::new));
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
                : Optional.of(refuted(open, "no bound speaks of " + open));
    }

    private static BoundVerdict check(PackingProblem problem, CutPlan plan, Bound bound, long work) {
        try {
            BoundClaim claim = new BoundClaim(problem, plan, bound);
            Optional<String> wrong = claim.contradiction();
            return wrong.isPresent()
                    ? refuted(bound, wrong.get())
                    : new ClaimCheck(claim, name(problem, bound), work).verdict();
        } catch (ArithmeticException tooLarge) {
            return new BoundVerdict(
                    bound.ropes(),
                    State.NOT_CHECKED,
                    name(problem, bound) + ": not re-checked, its numbers are too large",
                    List.of(),
                    Cost.ZERO,
                    Undone.NONE);
        }
    }

    private static BoundVerdict refuted(Bound bound, String sentence) {
        return refuted(bound.ropes(), sentence);
    }

    private static BoundVerdict refuted(List<String> ropes, String sentence) {
        return new BoundVerdict(ropes, State.REFUTED, sentence, List.of(), Cost.ZERO, Undone.NONE);
    }

    private static String name(PackingProblem problem, Bound bound) {
        return bound.ropes().stream()
                .map(id -> Optional.ofNullable(problem.ropes().get(id))
                        .map(Rope::name)
                        .orElse(id))
                .collect(Collectors.joining(", "));
    }
}
