package bitterend.work.plans;

import bitterend.day.BenchDay;
import bitterend.demand.Piece;
import bitterend.packing.CutDays;
import bitterend.packing.CutPlan;
import bitterend.packing.Effort;
import bitterend.packing.Horizon;
import bitterend.packing.Packer;
import bitterend.packing.Packing;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.PlanPrice;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunId;
import bitterend.packing.strategy.DayPlanner;
import bitterend.work.ShopNow;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Where the bench has too little time today, what is cut ahead leaves today's reels for reels of a later day: all that is not
 * cut today is planned once more, without these reels. That plan is taken if less work is late in all and no more is undone,
 * whatever it costs; its bound is that of the plan without, for the question is the same.
 */
final class FullToday {
    private final ShopNow shop;
    private final PackingProblem problem;
    private final Horizon brake;

    /** @param brake what is not cut ahead before more rope comes */
    FullToday(ShopNow shop, PackingProblem problem, Horizon brake) {
        this.shop = shop;
        this.problem = problem;
        this.brake = brake;
    }

    /** The better of a plan and what becomes of it without what may leave today; {@code engine} plans the rest. */
    DayPlanner.Checked eased(DayPlanner.Checked plan, Function<PackingProblem, CutPlan> engine) {
        Set<String> leave = mayLeave(plan.plan());
        if (leave.isEmpty()) {
            return plan;
        }
        CutDays days = new CutDays(problem);
        List<ReelDraw> today =
                plan.plan().draws().stream().filter(days::isToday).toList();
        Map<String, RunId> places = new TreeMap<>(Packing.of(today).places());
        places.keySet().removeAll(leave);
        places.putAll(
                Packing.of(engine.apply(rest(today, places.keySet())).draws()).places());
        DayPlanner.Checked other = checked(new Packing(places), plan);
        return other.unsound().isEmpty() && isBetter(other.plan(), plan.plan()) ? withTold(other, plan) : plan;
    }

    /** What is cut ahead today beyond the hours of the day; sets stay together, and what is pinned stays. */
    private Set<String> mayLeave(CutPlan plan) {
        Set<String> leave = new HashSet<>();
        BenchTime.of(shop, problem, plan).stream()
                .filter(day -> day.day().equals(problem.day()) && day.isTooFull())
                .map(BenchDay::leave)
                .forEach(leave::addAll);
        problem.pieces().stream().filter(Piece::isMatched).map(Piece::id).forEach(leave::remove);
        problem.pins().stream().map(Pin::piece).forEach(leave::remove);
        return leave;
    }

    /** The question without today's reels and what stays on them or is pinned there. */
    private PackingProblem rest(List<ReelDraw> today, Set<String> stay) {
        Set<String> reels = new HashSet<>();
        today.forEach(draw -> reels.add(draw.reel()));
        Set<String> out = new HashSet<>(stay);
        problem.pins().stream()
                .filter(pin -> reels.contains(pin.reel()))
                .map(Pin::piece)
                .forEach(out::add);
        List<Piece> pieces = problem.pieces().stream()
                .filter(piece -> !out.contains(piece.id()))
                .toList();
        return problem.about(pieces)
                .withRack(
                        problem.ropes(),
                        problem.values(),
                        problem.reels().stream()
                                .filter(reel -> !reels.contains(reel.id()))
                                .toList());
    }

    /** The whole packing, with the bounds of the plan without. */
    private DayPlanner.Checked checked(Packing packing, DayPlanner.Checked plan) {
        Packer whole = (question, effort) -> new Packer.Result(
                packing, new PlanPrice(question).of(packing), plan.plan().bounds());
        return new DayPlanner(whole).checked(problem, Effort.of(Duration.ZERO));
    }

    private boolean isBetter(CutPlan one, CutPlan other) {
        PlanPrice price = new PlanPrice(problem);
        boolean noMoreUndone =
                price.undone(Packing.of(one.draws())).compareTo(price.undone(Packing.of(other.draws()))) <= 0;
        return noMoreUndone && late(one) < late(other);
    }

    /** Minutes that are not done in time, reels brought forward where that helps. */
    private long late(CutPlan plan) {
        return BenchTime.of(shop, problem, BenchTime.spread(shop, problem, brake, plan)).stream()
                .mapToLong(BenchDay::over)
                .sum();
    }

    private static DayPlanner.Checked withTold(DayPlanner.Checked other, DayPlanner.Checked plan) {
        return new DayPlanner.Checked(other.plan(), other.bounds(), plan.unsound());
    }
}
