package bitterend.work;

import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import bitterend.stock.LedgerException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Which plan is meant, by its name: its number, or a file that lies anywhere; by none, the one in force. */
public final class NamedPlan {
    private final Plans plans;

    public NamedPlan(Plans plans) {
        this.plans = plans;
    }

    /** The plan of a name; what is wrong with it is told to the findings. */
    public Optional<PlanFolder.Kept> read(String name, Findings findings) {
        return number(name).map(number -> plans.read(number, findings)).orElseGet(() -> file(Path.of(name), findings));
    }

    /** The plan of a file that lies anywhere. */
    public Optional<PlanFolder.Kept> file(Path file, Findings findings) {
        return PlanFolder.read(file, findings);
    }

    /**
     * The plan of a name, else the one in force; when it cannot be read the findings tell.
     *
     * @throws LedgerException.Refused when no plan was made yet
     */
    public Optional<PlanFolder.Kept> orInForce(@Nullable String name, Findings findings) {
        if (name != null) {
            return read(name, findings);
        }
        Optional<Integer> inForce = plans.inForce();
        if (inForce.isEmpty()) {
            throw new LedgerException.Refused("there is no plan yet: make one first with bitterend plan SHOP");
        }
        return inForce.flatMap(number -> plans.read(number, findings));
    }

    /** The number, where a plan is named by that. */
    public static Optional<Integer> number(String name) {
        return name.matches("[1-9][0-9]{0,8}") ? Optional.of(Integer.parseInt(name)) : Optional.empty();
    }
}
