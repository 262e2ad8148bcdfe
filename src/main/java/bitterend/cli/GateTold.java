package bitterend.cli;

import bitterend.exchange.PlanFolder;
import bitterend.work.PlanGate;
import bitterend.work.Plans;
import bitterend.work.Remark;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Tells the reader why a plan does not go through the gate. */
final class GateTold {
    private final Terminal terminal;
    private final Path folder;

    /** {@code folder} is the shop folder as it was typed. */
    GateTold(Terminal terminal, Path folder) {
        this.terminal = terminal;
        this.folder = folder;
    }

    /**
     * A plan that may be used, with what is to be said of it.
     *
     * @param plan the plan; nothing when it may not be used
     * @param remarks what is not as it was
     * @param code what the command ends with when it may not
     */
    record Passage(Verdict.@Nullable Passed plan, List<Remark> remarks, ExitCode code) {
        Optional<Verdict.Passed> passed() {
            return Optional.ofNullable(plan);
        }
    }

    /** Whether a plan may be used; the reader is told when not. */
    Passage pass(ShopNow shop, Plans plans, PlanFolder.Kept kept) {
        Verdict verdict = new PlanGate(shop, plans).verdict(kept);
        if (verdict instanceof Verdict.Refused refused) {
            return new Passage(null, List.of(), tell(refused));
        }
        return verdict instanceof Verdict.Remarked remarked
                ? new Passage(remarked.plan(), remarked.remarks(), ExitCode.DONE)
                : new Passage(((Verdict.Good) verdict).plan(), List.of(), ExitCode.DONE);
    }

    /** Tells why it does not go; what the command ends with. */
    ExitCode tell(Verdict.Refused refused) {
        String start =
                switch (refused.why()) {
                    case UNSOUND -> "error: the plan is not sound: ";
                    case FOREIGN -> "error: the plan is not of this shop: ";
                    case STALE -> "error: since this was planned, ";
                };
        refused.reasons().forEach(reason -> terminal.err().println(start + reason));
        if (refused.why() == Verdict.Why.STALE) {
            terminal.err().println("Plan again: bitterend plan " + folder);
            return ExitCode.STOCK_CHANGED;
        }
        return ExitCode.BAD_INPUT;
    }
}
