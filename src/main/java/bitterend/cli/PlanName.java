package bitterend.cli;

import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import bitterend.work.Plans;
import java.nio.file.Path;
import java.util.Optional;

/** How a plan is named on a command line: by its number, or by a file that lies anywhere. */
final class PlanName {
    private PlanName() {}

    /** The plan; what is wrong with it is told to the findings. */
    static Optional<PlanFolder.Kept> read(String name, Plans plans, Findings findings) {
        return number(name)
                .map(number -> plans.read(number, findings))
                .orElseGet(() -> PlanFolder.read(Path.of(name), findings));
    }

    /** The number, where it is named by that. */
    static Optional<Integer> number(String name) {
        return name.matches("[1-9][0-9]{0,8}") ? Optional.of(Integer.parseInt(name)) : Optional.empty();
    }
}
