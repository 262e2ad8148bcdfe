package bitterend.work.plans;

import bitterend.day.Arrived;
import bitterend.day.Changes;
import bitterend.day.Morning;
import bitterend.day.OpenWork;
import bitterend.day.RackToday;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.finding.Findings;
import bitterend.packing.Brake;
import bitterend.packing.CutPlan;
import bitterend.packing.Horizon;
import bitterend.packing.PackingProblem;
import bitterend.packing.ShopCalendar;
import bitterend.packing.WorkingDays;
import bitterend.packing.check.BoundVerdict;
import bitterend.packing.strategy.AheadPlanner;
import bitterend.packing.strategy.DayPlanner;
import bitterend.work.ComingReels;
import bitterend.work.DayProblem;
import bitterend.work.IssuedWork;
import bitterend.work.IssuedWork.OnTheBench;
import bitterend.work.KeepPlan;
import bitterend.work.PlanClaims;
import bitterend.work.PlanGate;
import bitterend.work.Plans;
import bitterend.work.Release;
import bitterend.work.ShopNow;
import bitterend.work.UrgentReserve;
import bitterend.work.Verdict;
import bitterend.work.Watcher;
import bitterend.work.plans.DayQuestion.Before;
import bitterend.work.plans.PlannedDay.Proof;
import bitterend.work.plans.PlannedDay.Since;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Plans a day, in the morning or while it is under way. Asking, planning and keeping the plan are three steps:
 * between any two somebody may look, and go no further.
 */
public final class PlanDay {
    private final ShopNow shop;
    private final PlanGate gate;
    private final Plans plans;

    public PlanDay(ShopNow shop, Plans plans) {
        this.shop = shop;
        this.plans = plans;
        gate = new PlanGate(shop, plans);
    }

    /**
     * What is to be planned.
     *
     * @param day the day
     * @param from an earlier plan: pieces stay on their reels where they may; null for the one in force, if it is of the
     *     day or of an earlier one
     * @param keep an earlier plan whose pieces must stay on their reels, like pins
     * @param withdraw whether what is issued and not cut is planned anew, too
     * @param until what must be cut by this day is planned; null for as far ahead as the shop usually looks
     */
    public record Request(
            LocalDate day, @Nullable Kept from, @Nullable Kept keep, boolean withdraw, @Nullable LocalDate until) {
        /** A day with nothing to hold to but what is issued. */
        public static Request of(LocalDate day) {
            return new Request(day, null, null, false, null);
        }
    }

    /** What comes of asking. */
    public sealed interface Asked {
        /** It can be planned. */
        record Ready(DayQuestion question) implements Asked {}

        /** An earlier plan is not one to hold to. */
        record NotHeldTo(List<Verdict.Refused> refused) implements Asked {
            public NotHeldTo {
                refused = List.copyOf(refused);
            }
        }
    }

    /** Asks what is to be planned, by what orders, rack and bench say now. */
    public Asked ask(Request request) {
        List<Verdict.Refused> refused = Stream.of(request.from(), request.keep())
                .filter(Objects::nonNull)
                .flatMap(plan -> gate.refusalToHoldTo(plan).stream())
                .toList();
        return refused.isEmpty() ? new Asked.Ready(question(request)) : new Asked.NotHeldTo(refused);
    }

    private DayQuestion question(Request request) {
        Kept inForce = inForce();
        Kept from = request.from();
        PackingProblem now = ComingReels.with(DayProblem.of(shop.shop(), request.day()), shop.shop());
        PackingProblem day = KeptDraws.pinned(morning(now, from == null ? inForce : from), kept(request));
        OpenWork work = shop.open(day);
        Kept start = from == null ? promised(inForce, request) : from;
        PackingProblem open =
                start == null ? work.fresh() : work.after(here(start.document().plan()));
        List<OnTheBench> bench = new IssuedWork(plans, gate::verdict, open).reels();
        Set<String> atTheBench = DayQuestion.piecesOf(bench);
        PackingProblem known = request.withdraw() ? open : IssuedWork.pinned(open, bench);
        PackingProblem near = DayProblem.serving(shop.shop(), Horizon.near(known, until(request), atTheBench));
        return new DayQuestion(
                near,
                new Brake(DayProblem.serving(shop.shop(), known), UrgentReserve.of(shop.shop(), request.day()))
                        .held(near, atTheBench),
                stock(day, open),
                bench,
                request.withdraw(),
                before(from, inForce));
    }

    /** What was promised for the day or before it, unless pieces must stay where another plan has them. */
    private static @Nullable Kept promised(@Nullable Kept inForce, Request request) {
        return inForce == null
                        || request.keep() != null
                        || inForce.document().plan().day().isAfter(request.day())
                ? null
                : inForce;
    }

    private @Nullable CutPlan kept(Request request) {
        Kept keep = request.keep();
        return keep == null ? null : here(keep.document().plan());
    }

    /** An earlier plan with the ids that its reels have now. */
    private CutPlan here(CutPlan earlier) {
        return Arrived.named(earlier, shop.rack().orElse(RackToday.NONE));
    }

    private LocalDate until(Request request) {
        ShopCalendar calendar = shop.shop().settings().calendar();
        return request.until() == null
                ? new WorkingDays(calendar).ahead(request.day(), calendar.horizon())
                : request.until();
    }

    /** The plan that the shop works by, if there is one. */
    private @Nullable Kept inForce() {
        return plans.inForce().flatMap(plans::needed).orElse(null);
    }

    /** Coils are worth all day what an earlier plan of the day says they were in the morning. */
    private static PackingProblem morning(PackingProblem now, @Nullable Kept earlier) {
        return Optional.ofNullable(earlier)
                .flatMap(plan -> plan.document().question())
                .map(before -> Morning.kept(now, before))
                .orElse(now);
    }

    /** What the plan in force was asked, if it can be read and says so. */
    public static Optional<PackingProblem> inForceAsked(Plans plans) {
        return plans.inForce().flatMap(plans::needed).flatMap(plan -> plan.document()
                .question());
    }

    private DayQuestion.Stock stock(PackingProblem day, PackingProblem open) {
        return new DayQuestion.Stock(
                shop.rack().isPresent() ? shop.at().ledger().name() : "reels.csv",
                day.inTheHouse().reels().size(),
                day.pieces().size() - open.pieces().size(),
                shop.shop().supplies().values().learned().keySet());
    }

    /** Unless an earlier plan is named, the new one is held against the one that is in force. */
    private static @Nullable Before before(@Nullable Kept from, @Nullable Kept inForce) {
        if (from != null) {
            return new Before(from.document().plan(), 0);
        }
        return inForce == null
                ? null
                : new Before(inForce.document().plan(), inForce.document().number());
    }

    /** Has the question answered. The answer passed the checker; nothing is written. */
    public PlannedDay plan(DayQuestion question, PlanSearch search, Watcher watcher) {
        AheadPlanner.Planned ahead = search.ahead(question, watcher);
        PackingProblem problem = ahead.problem();
        Horizon brake = question.held().horizon();
        DayPlanner.Checked checked =
                new FullToday(shop, problem, brake).eased(ahead.checked(), rest -> search.inWhatIsLeft(rest, watcher));
        CutPlan spread = BenchTime.spread(shop, problem, brake, checked.plan());
        CutPlan plan = RopeOnOrder.named(problem, spread);
        Since since = question.earlier()
                .map(before -> new Since(
                        before.inForce(), new Changes(problem, shop.stillOpen()).since(here(before.plan()), plan)))
                .orElse(null);
        return new PlannedDay(
                document(problem, plan, search),
                PlanClaims.of(plan, checked.bounds(), true),
                problem,
                since,
                proof(checked.bounds()),
                question.calledBack(),
                checked.unsound());
    }

    /** Gives the plan the next number and puts it in force; then the sheets that it plans anew are called back. */
    public KeepPlan.Outcome keep(PlannedDay planned, String who) {
        Plans now = shop.at().plans(new Findings());
        return new KeepPlan(now, who, shop.at().clock()).keep(planned.plan(), planned.calledBack());
    }

    private PlanDocument document(PackingProblem problem, CutPlan plan, PlanSearch search) {
        return new PlanDocument(
                0,
                plan,
                shop.shop().settings().money(),
                new PlanDocument.Made(
                        Release.name(),
                        search.seed(),
                        search.word(),
                        search.time(),
                        shop.shop().digests(),
                        shop.shop().leftOut()),
                new PlanFacts.Whole(shop.mark(), shop.movements(), problem));
    }

    private static Proof proof(List<BoundVerdict> bounds) {
        List<String> open = bounds.stream()
                .filter(verdict -> !verdict.isWhollyConfirmed())
                .map(BoundVerdict::sentence)
                .toList();
        return new Proof(bounds.size() - open.size(), open);
    }
}
