package bitterend.work;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import bitterend.stock.LedgerException;
import bitterend.work.IssuedWork.OnTheBench;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Gives a plan that was made its number and its place among the plans of the shop, and puts it in force. Making a plan is
 * another step: between the two somebody may look at it.
 */
public final class KeepPlan {
    private final Plans plans;
    private final String who;
    private final Clock clock;

    /**
     * @param plans the plans of the shop
     * @param who name of the person
     * @param clock the time
     */
    public KeepPlan(Plans plans, String who, Clock clock) {
        this.plans = plans;
        this.who = who;
        this.clock = clock;
    }

    /** What became of it. */
    public sealed interface Outcome {
        /** It has a number and is in force. */
        record InForce(PlanFolder.Kept plan) implements Outcome {}

        /** It was written, and the plan before it is still in force. */
        record NotInForce(PlanFolder.Kept plan, Exception fault) implements Outcome {}

        /** It could not be written; nothing was changed. */
        record NotWritten(PlanDocument plan, Exception fault) implements Outcome {}
    }

    /**
     * Writes it under the next number, looks whether the file holds what was written, and puts it in force; then
     * these sheets are called back.
     */
    public Outcome keep(PlanDocument made, List<OnTheBench> calledBack) {
        Outcome outcome = keep(made);
        if (outcome instanceof Outcome.InForce) {
            TreeMap<Integer, List<String>> reels = calledBack.stream()
                    .collect(Collectors.groupingBy(
                            OnTheBench::plan, TreeMap::new, Collectors.mapping(OnTheBench::reel, Collectors.toList())));
            reels.forEach((number, called) ->
                    plans.read(number, new Findings()).ifPresent(plan -> plans.withdraw(plan, called, who, clock)));
        }
        return outcome;
    }

    private Outcome keep(PlanDocument made) {
        PlanFolder.Kept kept;
        try {
            plans.moveOver(who, clock);
            kept = plans.keep(made);
        } catch (UncheckedIOException | LedgerException fault) {
            return new Outcome.NotWritten(made, fault);
        }
        try {
            if (!kept.isHeld()) {
                return new Outcome.NotInForce(kept, new LedgerException("the file does not hold what was written"));
            }
            plans.putInForce(kept, who, clock);
            return new Outcome.InForce(kept);
        } catch (UncheckedIOException | LedgerException fault) {
            return new Outcome.NotInForce(kept, fault);
        }
    }
}
