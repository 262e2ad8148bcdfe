package bitterend.work.plans;

import bitterend.day.Arrived;
import bitterend.day.ChangedSince;
import bitterend.day.RackToday;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanEvent;
import bitterend.exchange.PlanEvent.What;
import bitterend.exchange.PlanFacts;
import bitterend.finding.Findings;
import bitterend.packing.PackingProblem;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import java.util.List;
import java.util.Optional;

/** Holds a plan against the one that was in force before it. */
public final class PlanBefore {
    private final ShopNow shop;
    private final Plans plans;

    public PlanBefore(ShopNow shop, Plans plans) {
        this.shop = shop;
        this.plans = plans;
    }

    /** What changed; nothing where no plan was in force before, or its file does not say what it was asked. */
    public Optional<ChangedSince> since(PlanDocument plan, PackingProblem problem) {
        return before(plan.number())
                .flatMap(number -> plans.read(number, new Findings()))
                .flatMap(earlier -> earlier.document().facts() instanceof PlanFacts.Whole whole
                        ? Optional.of(ChangedSince.of(
                                problem,
                                plan.plan(),
                                earlier.document().number(),
                                Arrived.named(
                                        earlier.document().plan(), shop.rack().orElse(RackToday.NONE), problem),
                                whole.problem(),
                                shop.stillOpen()))
                        : Optional.empty());
    }

    /** The number of the plan that was in force when this one was made; of one without a number the plan that is. */
    private Optional<Integer> before(int number) {
        if (number == 0) {
            return plans.inForce();
        }
        List<Integer> inForce = plans.events().stream()
                .filter(event -> event.what() == What.IN_FORCE)
                .map(PlanEvent::plan)
                .toList();
        int place = inForce.indexOf(number);
        return place > 0 ? Optional.of(inForce.get(place - 1)) : Optional.empty();
    }
}
