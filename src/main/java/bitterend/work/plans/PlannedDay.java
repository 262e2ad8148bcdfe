package bitterend.work.plans;

import bitterend.day.Changes;
import bitterend.exchange.PlanDocument;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.work.IssuedWork.OnTheBench;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A plan that was made and passed the checker. It has no number yet and is not in force.
 *
 * @param plan the plan
 * @param claiming the same with no more claimed of it than was confirmed, or is said to be found by search
 * @param problem the question that it answers, which may look less far ahead than the one asked
 * @param since what it does otherwise than the plan before; null where there is none
 * @param proof what the checker made of its bounds
 * @param calledBack sheets on the bench that it plans anew, called back once it is in force
 * @param unsound what was wrong with plans that were thrown away: faults of this program, never of the input
 */
public record PlannedDay(
        PlanDocument plan,
        CutPlan claiming,
        PackingProblem problem,
        @Nullable Since since,
        Proof proof,
        List<OnTheBench> calledBack,
        List<String> unsound) {
    public PlannedDay {
        calledBack = List.copyOf(calledBack);
        unsound = List.copyOf(unsound);
    }

    /**
     * What moved.
     *
     * @param inForce number of the plan it is held against when that is in force; 0 when it was named
     * @param changes what moved, by piece
     */
    public record Since(int inForce, List<Changes.Change> changes) {
        public Since {
            changes = List.copyOf(changes);
        }
    }

    /**
     * Bounds computed again.
     *
     * @param whole how many are confirmed whole
     * @param open of each other one what is not confirmed, in a sentence
     */
    public record Proof(int whole, List<String> open) {
        public Proof {
            open = List.copyOf(open);
        }
    }

    public Optional<Since> changes() {
        return Optional.ofNullable(since);
    }

    /** Whether all work that is ordered is planned, or waits for rope that is there or on order. */
    public boolean isWhole() {
        return plan.plan().unplanned().isEmpty()
                && problem.horizon().isRopeForWhatWaits()
                && plan.made().leftOut().isEmpty();
    }
}
