package bitterend.work.plans;

import bitterend.day.Part;
import bitterend.day.ReelSince;
import bitterend.day.SameSteps;
import bitterend.finding.NaturalOrder;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.work.Gate;
import bitterend.work.Remark;
import bitterend.work.ShopToday;
import bitterend.work.Verdict;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The part of a plan that is booked: reels, and of these the pieces that are meant and do not stand in the ledger yet. */
public final class PostedPart {
    private final Verdict.Passed plan;
    private final Part part;
    private final Set<String> reels = new TreeSet<>(NaturalOrder.IDS);
    private final Set<String> open = new TreeSet<>(NaturalOrder.IDS);
    private final Set<String> pieces = new TreeSet<>(NaturalOrder.IDS);

    PostedPart(Verdict.Passed plan, Part part, ShopToday.Rack rack, SameSteps same) {
        this.plan = plan;
        this.part = part;
        String name = Gate.name(plan.kept());
        for (ReelDraw draw : draws()) {
            ReelSince since = new ReelSince(rack.histories().getOrDefault(draw.reel(), List.of()), 0, name, same);
            Set<String> steps = since.steps();
            reels.add(draw.reel());
            part.pieces(draw).stream()
                    .filter(piece -> !steps.contains("piece " + piece))
                    .forEach(pieces::add);
            if (!since.isPosted(draw, part)) {
                open.add(draw.reel());
            }
        }
    }

    private List<ReelDraw> draws() {
        return plan.plan().draws().stream().filter(part::has).toList();
    }

    /** The number of the plan. */
    public int number() {
        return plan.number();
    }

    /** The reels that are meant. */
    public Set<String> reels() {
        return reels;
    }

    /** The pieces that are booked. */
    Set<String> pieces() {
        return pieces;
    }

    /** The cuts that are booked off a reel, in the order of the plan. */
    public List<Cut> cuts(String reel) {
        return draws().stream()
                .filter(draw -> draw.reel().equals(reel))
                .flatMap(draw -> draw.cuts().stream())
                .filter(cut -> pieces.contains(cut.piece()))
                .toList();
    }

    /** Whether a remark keeps this part from being booked: of its pieces, and of reels of which some are not booked. */
    boolean isBarredBy(Remark remark) {
        if (!remark.bars()) {
            return false;
        }
        return remark.piece().isEmpty()
                ? open.contains(remark.reel())
                : pieces.contains(remark.piece()) && !part.found().wasCut(remark.piece());
    }
}
