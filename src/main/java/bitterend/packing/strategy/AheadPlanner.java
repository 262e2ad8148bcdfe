package bitterend.packing.strategy;

import bitterend.packing.Cut;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.packing.Unplanned;
import bitterend.packing.Urgency;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Function;

/**
 * Plans a day that looks ahead, in up to three ways. As far ahead as was asked; without what the brake holds back, where the
 * plan would cut any of that today; and today alone, where the plan leaves first-class work of today undone and today alone
 * leaves less of it.
 */
public final class AheadPlanner {
    private final Function<PackingProblem, DayPlanner.Checked> planner;

    /** @param planner plans one question */
    public AheadPlanner(Function<PackingProblem, DayPlanner.Checked> planner) {
        this.planner = planner;
    }

    /** A plan, and the question that it answers. */
    public record Planned(PackingProblem problem, DayPlanner.Checked checked) {
        CutPlan plan() {
            return checked.plan();
        }
    }

    /**
     * The plan of a day.
     *
     * @param near all that is looked at
     * @param held the same without what is not to be cut ahead
     * @param atTheBench ids of pieces that stay, since sheets at the bench have them
     */
    public Planned plan(PackingProblem near, PackingProblem held, Set<String> atTheBench) {
        Planned far = planned(near);
        if (cutsToday(far, held.horizon())) {
            far = planned(held);
        }
        long undone = undoneToday(near, far.plan());
        PackingProblem today = Horizon.today(far.problem(), atTheBench);
        if (undone == 0 || today.pieces().size() == far.problem().pieces().size()) {
            return far;
        }
        Planned alone = planned(today);
        return undoneToday(near, alone.plan()) < undone ? alone : far;
    }

    private Planned planned(PackingProblem problem) {
        return new Planned(problem, planner.apply(problem));
    }

    /** Whether anything that is to wait is on a reel that is cut today. */
    private static boolean cutsToday(Planned planned, Horizon held) {
        CutDays days = new CutDays(planned.problem());
        return !held.waiting().isEmpty()
                && planned.plan().draws().stream().filter(days::isToday).anyMatch(draw -> draw.cuts().stream()
                        .map(Cut::piece)
                        .anyMatch(piece -> held.waitingOf(piece).isPresent()));
    }

    /** The weight of first-class pieces that must be cut today and are not planned. */
    private static long undoneToday(PackingProblem near, CutPlan plan) {
        Set<String> undone = new HashSet<>();
        plan.unplanned().stream().map(Unplanned::piece).forEach(undone::add);
        CutDays days = new CutDays(near);
        Urgency urgency = new Urgency(near);
        return near.pieces().stream()
                .filter(piece -> undone.contains(piece.id()) && urgency.classOf(piece) == 1)
                .filter(piece -> days.lastFor(piece).equals(near.day()))
                .mapToLong(Urgency::weight)
                .sum();
    }
}
