package bitterend.work;

import bitterend.day.SameSteps;
import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The plans that cuts were booked from, as far as they are kept, against another. */
public final class SamePlans {
    private SamePlans() {}

    /** What a plan has in common with those that the reels of this rack were posted from. */
    public static SameSteps of(PlanFolder.Kept plan, Plans plans, ShopToday.Rack rack) {
        Set<String> names = new HashSet<>();
        rack.histories()
                .values()
                .forEach(history -> history.forEach(
                        movement -> names.add(movement.entry().origin().plan())));
        names.remove(Gate.name(plan));
        List<SameSteps.Other> others = new ArrayList<>();
        for (int number : plans.numbers()) {
            if (names.stream().anyMatch(name -> name.startsWith(number + "-"))) {
                plans.read(number, new Findings())
                        .filter(other -> names.contains(Gate.name(other)))
                        .map(other -> new SameSteps.Other(
                                Gate.name(other), other.document().plan()))
                        .ifPresent(others::add);
            }
        }
        return SameSteps.of(
                plan.document().plan(),
                plan.document().facts().movements(),
                others,
                rack.today().cut().keySet());
    }
}
