package bitterend.cli;

import bitterend.finding.Findings;
import bitterend.work.Plans;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** Which pieces the plan in force of a shop cuts. */
final class PlannedPieces {
    private PlannedPieces() {}

    /** The number of the plan by piece; empty without a plan. */
    static Map<String, String> of(Path shop) {
        Map<String, String> planned = new HashMap<>();
        Plans plans = ShopArgument.plans(shop, new Findings());
        plans.inForce()
                .flatMap(number -> plans.read(number, new Findings()))
                .ifPresent(kept -> kept.document().plan().draws().forEach(draw -> draw.cuts()
                        .forEach(cut ->
                                planned.put(cut.piece(), "" + kept.document().number()))));
        return planned;
    }
}
