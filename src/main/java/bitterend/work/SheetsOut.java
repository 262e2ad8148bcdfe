package bitterend.work;

import bitterend.day.ReelSince;
import bitterend.day.SameSteps;
import bitterend.exchange.PlanFolder.Kept;
import bitterend.packing.ReelDraw;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The sheets that lie on the bench with pieces to cut: issued, not called back, and not all posted. */
public final class SheetsOut {
    private final Plans plans;
    private final ShopToday.Rack rack;
    private final Set<String> toCut;

    /**
     * @param plans the plans of the shop
     * @param rack what its ledger says
     * @param toCut ids of what is ordered and not cut
     */
    public SheetsOut(Plans plans, ShopToday.Rack rack, Set<String> toCut) {
        this.plans = plans;
        this.rack = rack;
        this.toCut = Set.copyOf(toCut);
    }

    /** The plans that have such sheets, the first first. */
    public List<Kept> plans() {
        List<Kept> out = new ArrayList<>();
        for (int number : new TreeSet<>(plans.issuedPlans())) {
            if (!plans.issuedReels(number).isEmpty()) {
                plans.needed(number).filter(plan -> !reels(plan).isEmpty()).ifPresent(out::add);
            }
        }
        return out;
    }

    /** The reels of a plan that have such sheets, in its order. */
    public Set<String> reels(Kept plan) {
        Set<String> issued = plans.issuedReels(plan.document().number());
        SameSteps same = SamePlans.of(plan, plans, rack);
        Set<String> reels = new LinkedHashSet<>();
        for (ReelDraw draw : plan.document().plan().draws()) {
            if (issued.contains(draw.reel()) && isOpen(plan, draw, same)) {
                reels.add(draw.reel());
            }
        }
        return reels;
    }

    /** A piece that was posted and spoiled is open again, but not by this sheet. */
    private boolean isOpen(Kept plan, ReelDraw draw, SameSteps same) {
        Set<String> posted = new ReelSince(
                        rack.histories().getOrDefault(draw.reel(), List.of()), 0, Gate.name(plan), same)
                .posted(draw);
        return draw.cuts().stream().anyMatch(cut -> toCut.contains(cut.piece()) && !posted.contains(cut.piece()));
    }
}
