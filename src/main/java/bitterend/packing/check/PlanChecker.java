package bitterend.packing.check;

import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import bitterend.stock.Reel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * Checks a finished plan against the day it was made for. Every plan goes through here last, whoever made it; a plan with
 * a fault is not to be cut.
 */
public final class PlanChecker {
    private PlanChecker() {}

    /**
     * What the checker says of a plan.
     *
     * @param faults everything wrong with it; empty for a sound plan
     * @param bounds what became of each bound it claims
     */
    public record Verdict(List<Fault> faults, List<BoundVerdict> bounds) {
        public Verdict {
            faults = List.copyOf(faults);
            bounds = List.copyOf(bounds);
        }

        public boolean isSound() {
            return faults.isEmpty();
        }
    }

    /** Everything wrong with a plan, a bound that does not hold included; empty for a sound plan. */
    public static List<Fault> check(PackingProblem problem, CutPlan plan) {
        return verdict(problem, plan).faults();
    }

    /** Everything wrong with a plan, and for each bound whether it was confirmed. */
    public static Verdict verdict(PackingProblem problem, CutPlan plan) {
        CompletableFuture<List<BoundVerdict>> beside =
                CompletableFuture.supplyAsync(() -> BoundChecker.check(problem, plan));
        List<Fault> faults = new ArrayList<>(faultsOfPlan(problem, plan));
        List<BoundVerdict> bounds = beside.join();
        for (BoundVerdict bound : bounds) {
            if (bound.state() == BoundVerdict.State.REFUTED) {
                faults.add(new Fault(Check.BOUND, String.join(", ", bound.ropes()), bound.sentence()));
            }
        }
        return new Verdict(faults, bounds);
    }

    private static List<Fault> faultsOfPlan(PackingProblem problem, CutPlan plan) {
        Facts facts = new Facts(problem);
        Faults faults = new Faults();
        try {
            checkAll(facts, faults, plan);
        } catch (ArithmeticException tooLarge) {
            faults.add(Check.SIZE, "plan", "a length or an amount of money is too large to add up");
        }
        return faults.all();
    }

    private static void checkAll(Facts facts, Faults faults, CutPlan plan) {
        faults.unless(
                plan.day().equals(facts.problem().day()),
                Check.DAY,
                "plan",
                Faults.says("day", "" + plan.day(), "" + facts.problem().day()));
        for (ReelDraw draw : plan.draws()) {
            Optional<Reel> reel = facts.findReel(draw.reel());
            if (reel.isPresent()) {
                new DrawCheck(facts, faults, reel.get(), draw).check();
            } else {
                faults.add(Check.KNOWN, draw.reel(), "there is no such reel");
            }
        }
        new WholePlanCheck(facts, faults, plan).check();
        new SetCheck(facts, faults, plan).check();
        new ReasonCheck(facts, faults, plan).check();
        new CurveCheck(facts, faults).check();
        if (faults.all().isEmpty()) {
            new OrderCheck(facts, faults, plan).check();
        }
    }
}
