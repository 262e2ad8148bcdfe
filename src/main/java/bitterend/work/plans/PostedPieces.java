package bitterend.work.plans;

import bitterend.day.ReelSince;
import bitterend.day.SameSteps;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.packing.ReelDraw;
import bitterend.work.Gate;
import bitterend.work.Plans;
import bitterend.work.SamePlans;
import bitterend.work.ShopNow;
import bitterend.work.ShopToday;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * The pieces that are booked off the reels of a plan by it, whatever became of them since: one that was spoiled is off its
 * reel as well, and the next cut there is the one behind it.
 */
public final class PostedPieces {
    private PostedPieces() {}

    /** Their ids; none where no ledger is kept. */
    public static Set<String> of(ShopNow shop, Plans plans, Kept plan) {
        Set<String> pieces = new TreeSet<>();
        if (shop.rack().isEmpty()) {
            return pieces;
        }
        ShopToday.Rack rack = shop.at().reading(ShopToday.Rack::of);
        SameSteps same = SamePlans.of(plan, plans, rack);
        for (ReelDraw draw : plan.document().plan().draws()) {
            long seen = plan.document().facts().movements().getOrDefault(draw.reel(), 0L);
            pieces.addAll(
                    new ReelSince(rack.histories().getOrDefault(draw.reel(), List.of()), seen, Gate.name(plan), same)
                            .posted(draw));
        }
        return pieces;
    }
}
