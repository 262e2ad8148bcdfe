package bitterend.serve;

import bitterend.packing.strategy.EffortLevel;
import bitterend.work.Plans;
import bitterend.work.ShopNow;
import bitterend.work.plans.PlanDay;
import bitterend.work.plans.PlanSearch;
import bitterend.work.plans.PlannedDay;
import java.util.Optional;

/**
 * A plan that is being made while people look on. What it ends with is looked at before anybody puts it in force.
 *
 * @param shop the shop as it was when it began
 * @param verb what makes it, and keeps it
 * @param run how far it is
 */
record PlanRun(ShopNow shop, PlanDay verb, Run<PlannedDay> run) {
    /** What random choices begin with. */
    static final long SEED = 1;

    /** Begins to plan the day; nothing where there is no question to plan. */
    static Optional<PlanRun> begin(ShopNow shop, Plans plans, Runs runs) {
        PlanDay verb = new PlanDay(shop, plans);
        if (!(verb.ask(PlanDay.Request.of(Loft.day(shop))) instanceof PlanDay.Asked.Ready ready)) {
            return Optional.empty();
        }
        PlanSearch search = PlanSearch.of(EffortLevel.QUICK, EffortLevel.QUICK.time(), SEED);
        return Optional.of(new PlanRun(
                shop,
                verb,
                runs.begin(
                        "plan",
                        ear -> verb.plan(
                                ready.question(),
                                search,
                                ear.watcher(shop.shop().settings().money())))));
    }
}
