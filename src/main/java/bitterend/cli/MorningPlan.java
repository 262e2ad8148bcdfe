package bitterend.cli;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import bitterend.packing.PackingProblem;
import bitterend.work.Plans;
import java.util.Optional;

/** An earlier plan of the day, which says what was on the rack in the morning. */
final class MorningPlan {
    private MorningPlan() {}

    /** What the plan in force was asked, if it can be read and says so. */
    static Optional<PackingProblem> inForce(Plans plans) {
        return plans.inForce()
                .flatMap(number -> plans.read(number, new Findings()))
                .map(PlanFolder.Kept::document)
                .flatMap(MorningPlan::questionOf);
    }

    /** What a plan was asked, where its file says so. */
    static Optional<PackingProblem> questionOf(PlanDocument plan) {
        return plan.facts() instanceof PlanFacts.Whole whole ? Optional.of(whole.problem()) : Optional.empty();
    }
}
