package bitterend.work.plans;

import bitterend.day.Part;
import bitterend.day.ReelSince;
import bitterend.day.SameSteps;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.work.Gate;
import bitterend.work.Remark;
import bitterend.work.ShopToday;
import bitterend.work.Verdict;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
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

    /** Reels that are cut to the end of the plan and have other than planned left: what their tags say is not so. */
    public List<Reel> otherwiseThanPlanned(List<Movement> written) {
        Map<String, Movement.Entry> last = new TreeMap<>(NaturalOrder.IDS);
        written.forEach(movement -> last.put(movement.entry().reel(), movement.entry()));
        return draws().stream()
                .filter(draw -> part.cutsOf(draw) == draw.cuts().size() && last.containsKey(draw.reel()))
                .filter(draw -> !isAsPlanned(draw, Objects.requireNonNull(last.get(draw.reel()))))
                .map(draw -> Objects.requireNonNull(last.get(draw.reel())).after())
                .toList();
    }

    private boolean isAsPlanned(ReelDraw draw, Movement.Entry last) {
        Length wraps = plan.problem().reel(draw.reel()).contents().innerWraps();
        return !last.left().isPositive()
                || (draw.leftOnReel().isPositive()
                        && last.left().equals(draw.leftOnReel().plus(wraps)));
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
