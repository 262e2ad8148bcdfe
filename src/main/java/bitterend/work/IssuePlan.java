package bitterend.work;

import bitterend.exchange.PlanEvent;
import bitterend.measure.Sentence;
import bitterend.packing.PackingProblem;
import bitterend.packing.ReelDraw;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Issues sheets of a plan: they go to the bench and are what is cut by. Written down once; sheets printed again are no event. */
public final class IssuePlan {
    private final Plans plans;
    private final String who;
    private final Clock clock;

    /**
     * @param plans the plans of the shop
     * @param who name of the person
     * @param clock the time
     */
    public IssuePlan(Plans plans, String who, Clock clock) {
        this.plans = plans;
        this.who = who;
        this.clock = clock;
    }

    /** What became of it. */
    public sealed interface Outcome {
        /** It is issued now. */
        record Issued(PlanEvent event) implements Outcome {}

        /** It was before; nothing was written. */
        record Already(PlanEvent event) implements Outcome {}

        /** It may not be issued; nothing was written. */
        record Refused(List<String> reasons) implements Outcome {}
    }

    /** Issues these reels of a plan that went through the gate. What is not among them keeps no reel from going out. */
    public Outcome issue(Verdict.Passed plan, Set<String> reels, List<Remark> remarks) {
        if (plan.number() == 0) {
            return new Outcome.Refused(List.of("a plan without a number cannot be issued; make one of the shop"));
        }
        plans.moveOver(who, clock);
        List<String> now = plan.plan().draws().stream()
                .map(ReelDraw::reel)
                .filter(reels::contains)
                .toList();
        Set<String> before = plans.issuedReels(plan.number());
        List<String> missing =
                now.stream().filter(reel -> !before.contains(reel)).toList();
        Optional<PlanEvent> last = plans.issued(plan.number());
        if (missing.isEmpty() && last.isPresent()) {
            return new Outcome.Already(last.get());
        }
        List<String> barred = Stream.concat(
                        coming(plan.problem(), missing),
                        remarks.stream()
                                .filter(Remark::bars)
                                .filter(remark -> remark.reel().isEmpty() || missing.contains(remark.reel()))
                                .map(Remark::sentence)
                                .map(Sentence::exact))
                .toList();
        if (!barred.isEmpty()) {
            return new Outcome.Refused(barred);
        }
        plans.issue(plan.kept(), missing, who, clock);
        return new Outcome.Issued(plans.issued(plan.number()).orElseThrow());
    }

    /** Nobody cuts a reel that is not in the house. */
    private static Stream<String> coming(PackingProblem problem, List<String> reels) {
        return reels.stream()
                .filter(problem::isComing)
                .map(reel -> "reel " + reel + " is on order and not in the house: receive it, then plan again");
    }
}
