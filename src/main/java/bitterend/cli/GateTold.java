package bitterend.cli;

import bitterend.day.SameSteps;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder;
import bitterend.exchange.Shop;
import bitterend.work.Gate;
import bitterend.work.Plans;
import bitterend.work.Remark;
import bitterend.work.SamePlans;
import bitterend.work.ShopToday;
import bitterend.work.Verdict;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Lets a plan through the gate, and tells the reader when it does not go. */
final class GateTold {
    private final Terminal terminal;
    private final ShopArgument at;
    private final Plans plans;

    GateTold(Terminal terminal, ShopArgument at, Plans plans) {
        this.terminal = terminal;
        this.at = at;
        this.plans = plans;
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

    /** What the gate says, without a word to the reader. */
    Verdict verdict(PlanFolder.Kept kept, Shop shop) {
        String recorded = plans.digestOf(kept.document().number());
        boolean ours = kept.file().toAbsolutePath().startsWith(at.folder.toAbsolutePath());
        if (ours && recorded.isEmpty() && isNumbered(kept) && kept.document().facts() instanceof PlanFacts.Whole) {
            return new Verdict.Refused(
                    Verdict.Why.UNSOUND,
                    List.of(kept.file() + " was never put in force here: no record says that it is plan "
                            + kept.document().number()));
        }
        ShopToday today = at.today(shop, kept.document());
        SameSteps same =
                today.rack().map(rack -> SamePlans.of(kept, plans, rack)).orElse(SameSteps.NONE);
        return new Gate(today, same).pass(kept, ours && isNumbered(kept) ? recorded : "");
    }

    Passage pass(PlanFolder.Kept kept, Shop shop) {
        Verdict verdict = verdict(kept, shop);
        if (verdict instanceof Verdict.Refused refused) {
            tell(refused);
            return new Passage(null, List.of(), code(refused.why()));
        }
        return verdict instanceof Verdict.Remarked remarked
                ? new Passage(remarked.plan(), remarked.remarks(), ExitCode.DONE)
                : new Passage(((Verdict.Good) verdict).plan(), List.of(), ExitCode.DONE);
    }

    /** A plan that a new one holds to: one whose shop has changed will do, as that is what it is for. */
    Optional<PlanDocument> earlier(PlanFolder.Kept kept, Shop shop) {
        Verdict verdict = verdict(kept, shop);
        if (verdict instanceof Verdict.Refused refused && refused.why() != Verdict.Why.STALE) {
            tell(refused);
            return Optional.empty();
        }
        return Optional.of(kept.document());
    }

    private static boolean isNumbered(PlanFolder.Kept kept) {
        return kept.document().number() > 0;
    }

    private void tell(Verdict.Refused refused) {
        String start =
                switch (refused.why()) {
                    case UNSOUND -> "error: the plan is not sound: ";
                    case FOREIGN -> "error: the plan is not of this shop: ";
                    case STALE -> "error: since this was planned, ";
                };
        refused.reasons().forEach(reason -> terminal.err().println(start + reason));
        if (refused.why() == Verdict.Why.STALE) {
            terminal.err().println("Plan again: bitterend plan " + at.folder);
        }
    }

    private static ExitCode code(Verdict.Why why) {
        return why == Verdict.Why.STALE ? ExitCode.STOCK_CHANGED : ExitCode.BAD_INPUT;
    }
}
