package bitterend.work;

import bitterend.day.SameSteps;
import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder;
import bitterend.exchange.Shop;
import java.util.List;
import java.util.Optional;

/** The gate of a shop: a plan is held against the shop's record of its plans, and against its rack as it is at this moment. */
public final class PlanGate {
    private final ShopAccess at;
    private final Shop shop;
    private final Plans plans;

    public PlanGate(ShopNow shop, Plans plans) {
        at = shop.at();
        this.shop = shop.shop();
        this.plans = plans;
    }

    /** What the gate says of a plan. */
    public Verdict verdict(PlanFolder.Kept kept) {
        String recorded = plans.digestOf(kept.document().number());
        boolean ours = kept.file().toAbsolutePath().startsWith(at.folder().toAbsolutePath());
        if (ours && recorded.isEmpty() && isNumbered(kept) && kept.document().facts() instanceof PlanFacts.Whole) {
            return new Verdict.Refused(
                    Verdict.Why.UNSOUND,
                    List.of(kept.file() + " was never put in force here: no record says that it is plan "
                            + kept.document().number()));
        }
        ShopToday today = at.today(shop, kept.document().plan());
        SameSteps same =
                today.rack().map(rack -> SamePlans.of(kept, plans, rack)).orElse(SameSteps.NONE);
        return new Gate(today, same).pass(kept, ours && isNumbered(kept) ? recorded : "");
    }

    /** Why a new plan may not hold to this one; that the shop has changed since is no reason: that is what it is for. */
    public Optional<Verdict.Refused> refusalToHoldTo(PlanFolder.Kept kept) {
        return verdict(kept) instanceof Verdict.Refused refused && refused.why() != Verdict.Why.STALE
                ? Optional.of(refused)
                : Optional.empty();
    }

    private static boolean isNumbered(PlanFolder.Kept kept) {
        return kept.document().number() > 0;
    }
}
