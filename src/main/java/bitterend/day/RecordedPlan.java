package bitterend.day;

import bitterend.packing.CutPlan;
import bitterend.stock.Ledger;
import java.util.Map;

/**
 * A plan with what it saw of the ledger.
 *
 * @param id the name the ledger knows it by: the digest of its file
 * @param number its number among the plans of the shop; 0 when it has none
 * @param plan the plan
 * @param seen number of movements of every reel when the plan was made
 * @param facts what the files of the shop say now
 */
public record RecordedPlan(String id, long number, CutPlan plan, Map<String, Long> seen, ShopFacts facts) {
    public RecordedPlan {
        seen = Map.copyOf(seen);
    }

    /** What happened to a reel since it was made. */
    ReelSince since(Ledger.Stock stock, String reel) {
        return new ReelSince(stock.history(reel), seen.getOrDefault(reel, 0L), id, facts.same());
    }

    /** A plan without a number, of a shop whose files are not known. */
    public RecordedPlan(String id, CutPlan plan, Map<String, Long> seen) {
        this(id, 0, plan, seen, ShopFacts.NONE);
    }
}
