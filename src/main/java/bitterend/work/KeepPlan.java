package bitterend.work;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFolder;
import bitterend.finding.Finding;
import bitterend.finding.Findings;
import bitterend.stock.LedgerException;
import java.io.UncheckedIOException;
import java.time.Clock;

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

    /** Writes it under the next number, reads it back, and puts it in force. */
    public Outcome keep(PlanDocument made) {
        PlanFolder.Kept kept;
        try {
            plans.moveOver(who, clock);
            kept = plans.keep(made);
        } catch (UncheckedIOException | LedgerException fault) {
            return new Outcome.NotWritten(made, fault);
        }
        Findings unreadable = new Findings();
        if (plans.read(kept.document().number(), unreadable).isEmpty()) {
            return new Outcome.NotInForce(kept, new LedgerException("it cannot be read back: " + told(unreadable)));
        }
        try {
            plans.putInForce(kept, who, clock);
            return new Outcome.InForce(kept);
        } catch (UncheckedIOException | LedgerException fault) {
            return new Outcome.NotInForce(kept, fault);
        }
    }

    private static String told(Findings unreadable) {
        return unreadable.sorted().stream()
                .filter(Finding::isError)
                .map(Finding::toString)
                .findFirst()
                .orElse("the file is not there");
    }
}
