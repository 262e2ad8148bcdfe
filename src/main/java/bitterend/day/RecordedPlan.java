package bitterend.day;

import bitterend.packing.CutPlan;
import bitterend.stock.Ordered;
import java.util.Map;

/**
 * A plan with what it saw of the ledger.
 *
 * @param id the name the ledger knows it by: the digest of its file
 * @param plan the plan
 * @param seen number of movements of every reel when the plan was made
 * @param ordered what is ordered now, of every piece the plan cuts that an order asks for
 */
public record RecordedPlan(String id, CutPlan plan, Map<String, Long> seen, Map<String, Ordered> ordered) {
    public RecordedPlan {
        seen = Map.copyOf(seen);
        ordered = Map.copyOf(ordered);
    }

    /** Of pieces of which nothing is known. */
    public RecordedPlan(String id, CutPlan plan, Map<String, Long> seen) {
        this(id, plan, seen, Map.of());
    }
}
