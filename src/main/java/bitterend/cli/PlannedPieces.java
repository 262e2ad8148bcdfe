package bitterend.cli;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanJson;
import bitterend.finding.Findings;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** Which pieces the plan in force of a shop cuts. */
final class PlannedPieces {
    private PlannedPieces() {}

    /** The name of the plan by piece; empty without a plan. */
    static Map<String, String> of(Path shop) {
        Map<String, String> planned = new HashMap<>();
        Path file = shop.resolve("plan.json");
        if (Files.exists(file)) {
            PlanJson.read(file, new Findings()).map(PlanDocument::plan).ifPresent(plan -> plan.draws()
                    .forEach(draw -> draw.cuts().forEach(cut -> planned.put(cut.piece(), "" + plan.day()))));
        }
        return planned;
    }
}
