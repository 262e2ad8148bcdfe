package bitterend.packing.explain;

import bitterend.measure.Cost;
import bitterend.measure.Sentence;
import bitterend.packing.Reason;
import bitterend.packing.RunId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a plan cuts from one reel, and what that costs by rule.
 *
 * @param reel id of the reel
 * @param runs what comes off each run, in physical order; empty runs included
 * @param charges what the draw costs, rule by rule; they add up to {@code cost}
 * @param cost what the draw costs in all; zero for a reel that is not touched
 * @param untouched why nothing comes off it; empty when something does
 * @param held what of it is held, whom for and until when
 * @param kept for what it is kept that is not cut today, where that costs other work something; null where it does not
 */
public record ReelAnswer(
        String reel,
        List<OnRun> runs,
        List<Charge> charges,
        Cost cost,
        List<Reason> untouched,
        List<Sentence> held,
        @Nullable KeptFor kept) {
    public ReelAnswer {
        held = List.copyOf(held);
        runs = List.copyOf(runs);
        charges = List.copyOf(charges);
        untouched = List.copyOf(untouched);
    }

    /** The same of a reel that is kept for later work. */
    public ReelAnswer keptFor(@Nullable KeptFor other) {
        return new ReelAnswer(reel, runs, charges, cost, untouched, held, other);
    }

    /**
     * The pieces of one run.
     *
     * @param run the run
     * @param pieces their ids
     */
    public record OnRun(RunId run, List<String> pieces) {
        public OnRun {
            pieces = List.copyOf(pieces);
        }
    }

    /**
     * What one rule charges.
     *
     * @param reason the rule and what it is charged for
     * @param cost how much
     */
    public record Charge(Reason reason, Cost cost) {}
}
