package bitterend.day;

import bitterend.packing.CutPlan;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Steps that a plan and others have in common. A new plan that cuts a reel as an earlier one does, what was posted meanwhile
 * apart, asks for the same cuts: such a step is one step, whichever of the two it was booked under.
 */
public final class SameSteps {
    /** Where no other plan is known. */
    public static final SameSteps NONE = new SameSteps(Map.of(), Map.of());

    /** By reel and name of the other plan: our step for each of theirs. */
    private final Map<String, Map<String, Map<String, String>>> ours;

    /** How many movements of each reel the plan saw when it was made: none of those is a step of it. */
    private final Map<String, Long> seen;

    private SameSteps(Map<String, Map<String, Map<String, String>>> ours, Map<String, Long> seen) {
        this.ours = ours;
        this.seen = Map.copyOf(seen);
    }

    /**
     * Another plan of the shop.
     *
     * @param name the name that the ledger knows it by
     * @param plan the plan
     */
    public record Other(String name, CutPlan plan) {}

    /**
     * What a plan has in common with others. What was booked under another before the plan was made is no step of it: the
     * plan knew of that, and asks for more.
     *
     * @param seen how many movements of each reel the plan saw
     * @param cut every piece that is cut by now, off whichever reel
     */
    public static SameSteps of(CutPlan plan, Map<String, Long> seen, List<Other> others, Set<String> cut) {
        Map<String, Map<String, Map<String, String>>> ours = new HashMap<>();
        for (ReelDraw draw : plan.draws()) {
            for (Other other : others) {
                other.plan().draws().stream()
                        .filter(theirs -> theirs.reel().equals(draw.reel()))
                        .findFirst()
                        .flatMap(theirs -> common(draw, theirs, cut))
                        .ifPresent(steps -> ours.computeIfAbsent(draw.reel(), reel -> new HashMap<>())
                                .put(other.name(), steps));
            }
        }
        return new SameSteps(ours, seen);
    }

    /** Our step for each of theirs, where one of two draws is the other less pieces that are cut. */
    private static Optional<Map<String, String>> common(ReelDraw draw, ReelDraw other, Set<String> cut) {
        List<Step> ours = Step.of(draw);
        List<Step> theirs = Step.of(other);
        int both = Math.min(ours.size(), theirs.size());
        List<Step> more = ours.size() > both ? ours : theirs;
        boolean before = more.subList(0, more.size() - both).stream()
                .allMatch(step -> step.piece().isEmpty() || cut.contains(step.piece()));
        Map<String, String> common = new HashMap<>();
        for (int i = 1; i <= both; i++) {
            Step own = ours.get(ours.size() - i);
            Step their = theirs.get(theirs.size() - i);
            if (!before || !own.isSameAs(their)) {
                return Optional.empty();
            }
            common.put(their.key(), own.key());
        }
        return Optional.of(common);
    }

    /** Whether the plan of this name cuts a reel alike, what is cut by now apart. */
    public boolean isCutAlike(String reel, String plan) {
        return ours.getOrDefault(reel, Map.of()).containsKey(plan);
    }

    /** Whether a movement of a reel was posted from the plan of this name, or from one that cuts that reel alike. */
    public boolean areOf(String plan, Movement movement) {
        String by = movement.entry().origin().plan();
        return by.equals(plan) || of(movement).containsKey(by);
    }

    /** Whether a movement posted a step of the plan of this name, whichever plan it was booked under. */
    public boolean isStepOf(String plan, Movement movement) {
        return !step(plan, movement).isEmpty();
    }

    /** The step of the plan of this name that a movement of it was; empty for one that was none. */
    String step(String plan, Movement movement) {
        Movement.Origin origin = movement.entry().origin();
        return origin.plan().equals(plan)
                ? origin.step()
                : of(movement).getOrDefault(origin.plan(), Map.of()).getOrDefault(origin.step(), "");
    }

    private Map<String, Map<String, String>> of(Movement movement) {
        if (movement.count() <= seen.getOrDefault(movement.entry().reel(), 0L)) {
            return Map.of();
        }
        String parent = movement.entry().origin().parent();
        return ours.getOrDefault(parent.isEmpty() ? movement.entry().reel() : parent, Map.of());
    }
}
