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
        return name.matches("[1-9][0-9]{0,8}")
                ? plans.read(Integer.parseInt(name), findings)
                : PlanFolder.read(Path.of(name), findings);
    }
}
