package bitterend.day;

import bitterend.packing.CutPlan;
import java.util.Map;

/**
 * A plan with what it saw of the ledger.
 *
 * @param id the name the ledger knows it by: the digest of its file
 * @param plan the plan
 * @param seen number of movements of every reel when the plan was made
 */
public record RecordedPlan(String id, CutPlan plan, Map<String, Long> seen) {
    public RecordedPlan {
        seen = Map.copyOf(seen);
    }
}
