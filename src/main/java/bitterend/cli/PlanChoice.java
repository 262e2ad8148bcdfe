package bitterend.cli;

import bitterend.exchange.PlanFolder;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.work.Plans;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which plan is meant: the one that was named, else the one in force. */
final class PlanChoice {
    private final Plans plans;

    PlanChoice(Plans plans) {
        this.plans = plans;
    }

    /** The plan; when there is none or it cannot be read the findings tell. */
    Optional<PlanFolder.Kept> plan(@Nullable String named, Findings findings) {
        if (named != null) {
            return PlanName.read(named, plans, findings);
        }
        Optional<Integer> inForce = plans.inForce();
        if (inForce.isEmpty()) {
            findings.add(Finding.error(PlanFolder.NAME, "", "", "", "a plan, made with bitterend plan SHOP"));
        }
        return inForce.flatMap(number -> plans.read(number, findings));
    }
}
