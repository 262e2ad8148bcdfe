package bitterend.work.plans;

import bitterend.day.OrdersTold;
import bitterend.exchange.MeasuredRows;
import bitterend.exchange.OrderLine;
import bitterend.exchange.PlanFacts.LedgerMark;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.work.IssuePlan;
import bitterend.work.PlanGate;
import bitterend.work.Plans;
import bitterend.work.ReelDays;
import bitterend.work.Remark;
import bitterend.work.ShopNow;
import bitterend.work.Verdict;
import bitterend.work.orders.AskOrders;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Gets the sheets of a plan ready to be printed, and issues it where that is asked: from then on they are what is cut by. */
public final class PrintSheets {
    private final ShopNow shop;
    private final Plans plans;

    public PrintSheets(ShopNow shop, Plans plans) {
        this.shop = shop;
        this.plans = plans;
    }

    /**
     * What is printed.
     *
     * @param plan the plan
     * @param which which of its sheets
     * @param issuer name of the person who issues them; null for a preview, or for sheets printed again
     */
    public record Request(Kept plan, WhichSheets which, @Nullable String issuer) {}

    /** What comes of it. */
    public sealed interface Result {
        /** What stands on the sheets. */
        record Printed(Sheets sheets) implements Result {}

        /** The plan has no such day or reel. */
        record NoSuchSheets(int plan, ReelDays days) implements Result {}

        /** The gate does not let the plan through. */
        record NotLetThrough(Verdict.Refused why) implements Result {}

        /** It may not be issued; nothing was written. */
        record NotIssued(List<String> reasons) implements Result {
            public NotIssued {
                reasons = List.copyOf(reasons);
            }
        }
    }

    /**
     * What stands on sheets.
     *
     * @param plan the plan
     * @param chosen which of its reels
     * @param issued what issuing them wrote down; nothing where that was not asked, or nothing of them may go out unasked
     * @param out the reels of the plan whose sheets are out
     * @param remarks what changed since it was made
     * @param orders what changed of cut pieces, and what is spare
     * @param lines order lines that still ask for what they asked for then; marks of any other would be of another rope
     * @param measured what was measured last of each finished piece, by piece
     * @param ledger how far the ledger has got now
     */
    public record Sheets(
            Verdict.Passed plan,
            WhichSheets.Chosen chosen,
            Optional<IssuePlan.Outcome> issued,
            Set<String> out,
            List<Remark> remarks,
            OrdersTold orders,
            List<OrderLine> lines,
            Map<String, MeasuredRows.Last> measured,
            LedgerMark ledger) {
        public Sheets {
            out = Set.copyOf(out);
            remarks = List.copyOf(remarks);
            lines = List.copyOf(lines);
            measured = Map.copyOf(measured);
        }

        /** Whether they are all issued. */
        public boolean isOut() {
            return plan.number() > 0 && out.containsAll(chosen.reels());
        }

        /** Whether they are every reel of the plan. */
        public boolean isWhole() {
            return chosen.reels().size() == plan.plan().draws().size();
        }
    }

    /** Gets them ready. */
    public Result print(Request request) {
        Verdict verdict = new PlanGate(shop, plans).verdict(request.plan());
        if (verdict instanceof Verdict.Refused refused) {
            return new Result.NotLetThrough(refused);
        }
        Verdict.Passed plan = verdict.passed().orElseThrow();
        ReelDays days = ReelDays.of(plan.kept().document(), plans);
        return request.which()
                .of(days, plan.plan().day())
                .map(chosen -> print(request, plan, chosen, verdict.remarks()))
                .orElseGet(() -> new Result.NoSuchSheets(plan.number(), days));
    }

    private Result print(Request request, Verdict.Passed plan, WhichSheets.Chosen chosen, List<Remark> remarks) {
        Optional<IssuePlan.Outcome> issued = Optional.ofNullable(request.issuer())
                .filter(who -> !chosen.unasked())
                .map(who -> new IssuePlan(plans, who, shop.at().clock()).issue(plan, chosen.reels(), remarks));
        if (issued.orElse(null) instanceof IssuePlan.Outcome.Refused refused) {
            return new Result.NotIssued(refused.reasons());
        }
        return new Result.Printed(new Sheets(
                plan,
                chosen,
                issued,
                ReelDays.of(plan.kept().document(), plans).out(),
                about(remarks, chosen, plan),
                new AskOrders(shop, plan.plan().day()).ofCuts(),
                LinesAsPlanned.of(shop.shop().orders(), plan.problem()),
                MeasuredRows.last(shop.at().folder()),
                shop.at().mark()));
    }

    /** What changed of the sheets' own reels, and of no reel alone. */
    private static List<Remark> about(List<Remark> remarks, WhichSheets.Chosen chosen, Verdict.Passed plan) {
        Set<String> elsewhere = new HashSet<>();
        plan.plan().draws().forEach(draw -> elsewhere.add(draw.reel()));
        elsewhere.removeAll(chosen.reels());
        return remarks.stream()
                .filter(remark -> !elsewhere.contains(remark.reel()))
                .toList();
    }
}
