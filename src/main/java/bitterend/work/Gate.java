package bitterend.work;

import bitterend.day.SameSteps;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder;
import bitterend.packing.PackingProblem;
import bitterend.packing.check.Fault;
import bitterend.packing.check.PlanChecker;
import bitterend.work.Verdict.Passed;
import bitterend.work.Verdict.Refused;
import bitterend.work.Verdict.Why;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The one door before every use of a plan: printing, booking, planning from it, explaining it. The independent checker
 * looks at all of it, bounds included, in the light of what it was made from; that again is held against the shop as it is
 * now, reel by reel and order by order.
 */
public final class Gate {
    private final ShopToday today;
    private final SameSteps same;

    /** @param same what the plan has in common with others that were posted */
    public Gate(ShopToday today, SameSteps same) {
        this.today = today;
        this.same = same;
    }

    /**
     * Lets a plan through or not.
     *
     * @param kept the plan
     * @param recorded SHA-256 of its file as it was written down; empty when it was not
     */
    public Verdict pass(PlanFolder.Kept kept, String recorded) {
        if (!recorded.isEmpty() && !recorded.equals(kept.digest())) {
            return refused(Why.UNSOUND, kept.file() + " is not as it was written: its contents were changed");
        }
        PlanFacts facts = kept.document().facts();
        List<String> stale = facts instanceof PlanFacts.Older ? OlderPlan.changes(kept.document(), today) : List.of();
        if (!stale.isEmpty()) {
            return new Refused(Why.STALE, stale);
        }
        PackingProblem problem = facts instanceof PlanFacts.Whole whole
                ? whole.problem()
                : OlderPlan.problem(kept.document(), (PlanFacts.Older) facts, today);
        PlanChecker.Verdict checked = facts instanceof PlanFacts.Whole whole
                ? CheckedPlans.verdict(kept, whole)
                : PlanChecker.verdict(problem, kept.document().plan());
        if (!checked.isSound()) {
            return new Refused(
                    Why.UNSOUND, checked.faults().stream().map(Fault::toString).toList());
        }
        Passed passed =
                new Passed(kept, problem, PlanClaims.of(kept.document().plan(), checked.bounds(), !recorded.isEmpty()));
        return facts instanceof PlanFacts.Whole whole ? held(passed, whole) : new Verdict.Good(passed);
    }

    private Verdict held(Passed plan, PlanFacts.Whole facts) {
        List<Remark> remarks = new ArrayList<>();
        ReelsSince reels = new ReelsSince(plan, facts, today, same);
        List<String> foreign = reels.foreign();
        if (!foreign.isEmpty()) {
            return new Refused(Why.FOREIGN, foreign);
        }
        remarks.addAll(reels.remarks());
        remarks.addAll(new OrdersSince(plan, today).remarks());
        remarks.addAll(setsSince(plan));
        remarks.addAll(new SettingsSince(plan, today.shop()).remarks());
        return remarks.isEmpty() ? new Verdict.Good(plan) : new Verdict.Remarked(plan, remarks);
    }

    /** Sets of which other pieces were cut since, off rope that these would not match. */
    private List<Remark> setsSince(Passed plan) {
        return today.rack()
                .map(rack -> TornSets.of(plan.plan(), today.shop().pieces(), rack.book()))
                .orElse(List.of());
    }

    private static Verdict refused(Why why, String reason) {
        return new Refused(why, List.of(reason));
    }

    /** The name by which the ledger knows the steps of a plan: its number and the beginning of its digest. */
    public static String name(PlanFolder.Kept kept) {
        PlanDocument document = kept.document();
        return document.facts() instanceof PlanFacts.Older
                ? kept.digest()
                : document.number() + "-" + kept.digest().substring(0, 16);
    }

    /** The number of the plan that such a name would be of; nothing where none begins it. */
    public static Optional<Integer> number(String name) {
        return NamedPlan.number(name.replaceFirst("-.*", ""));
    }
}
