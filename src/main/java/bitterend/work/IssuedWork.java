package bitterend.work;

import bitterend.demand.Piece;
import bitterend.exchange.PlanFolder;
import bitterend.finding.Findings;
import bitterend.packing.Cut;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What is issued and not cut yet: its sheets lie on the bench, and a new plan leaves it as it is. */
public final class IssuedWork {
    private final Plans plans;
    private final Function<PlanFolder.Kept, Verdict> gate;
    private final Set<String> open;

    /**
     * @param plans the plans of the shop
     * @param gate what the gate says of a plan
     * @param day the pieces that are still to be cut
     */
    public IssuedWork(Plans plans, Function<PlanFolder.Kept, Verdict> gate, PackingProblem day) {
        this.plans = plans;
        this.gate = gate;
        open = day.pieces().stream().map(Piece::id).collect(Collectors.toSet());
    }

    /**
     * A reel whose sheet is out.
     *
     * @param plan number of the plan it was issued with
     * @param reel the reel
     * @param pieces the pieces still to be cut off it
     * @param broken why the sheet no longer holds; empty while it does
     */
    public record OnTheBench(int plan, String reel, List<String> pieces, String broken) {
        public OnTheBench {
            pieces = List.copyOf(pieces);
        }

        public boolean holds() {
            return broken.isEmpty();
        }
    }

    /** Every reel that is issued and of which some pieces are not cut yet, by plan; of two sheets the later one counts. */
    public List<OnTheBench> reels() {
        List<OnTheBench> reels = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int number : new TreeSet<>(plans.issuedPlans()).descendingSet()) {
            Set<String> issued = new HashSet<>(plans.issuedReels(number));
            issued.removeAll(seen);
            seen.addAll(issued);
            if (!issued.isEmpty()) {
                plans.read(number, new Findings()).ifPresent(plan -> reels.addAll(0, onTheBench(plan, issued)));
            }
        }
        return reels;
    }

    private List<OnTheBench> onTheBench(PlanFolder.Kept plan, Set<String> issued) {
        Map<String, List<String>> left = new HashMap<>();
        for (ReelDraw draw : plan.document().plan().draws()) {
            List<String> pieces =
                    draw.cuts().stream().map(Cut::piece).filter(open::contains).toList();
            if (issued.contains(draw.reel()) && !pieces.isEmpty()) {
                left.put(draw.reel(), pieces);
            }
        }
        if (left.isEmpty()) {
            return List.of();
        }
        Map<String, String> broken = broken(gate.apply(plan), left.keySet());
        return plan.document().plan().draws().stream()
                .map(ReelDraw::reel)
                .filter(left::containsKey)
                .map(reel -> new OnTheBench(
                        plan.document().number(),
                        reel,
                        left.getOrDefault(reel, List.of()),
                        broken.getOrDefault(reel, "")))
                .toList();
    }

    private static Map<String, String> broken(Verdict verdict, Set<String> reels) {
        Map<String, String> broken = new HashMap<>();
        if (verdict instanceof Verdict.Refused refused) {
            reels.forEach(reel -> broken.put(reel, refused.reasons().get(0)));
        } else if (verdict instanceof Verdict.Remarked remarked) {
            remarked.remarks().stream()
                    .filter(Remark::bars)
                    .forEach(remark -> broken.putIfAbsent(remark.reel(), remark.sentence()));
        }
        return broken;
    }

    /**
     * The day held to what stays on the bench: a pin for every piece of an issued reel, which takes nothing else then.
     * What the shop has pinned to another reel is left to the shop.
     */
    public static PackingProblem pinned(PackingProblem day, List<OnTheBench> reels) {
        Map<String, Pin> issued = new LinkedHashMap<>();
        for (OnTheBench reel : reels) {
            if (reel.holds()) {
                reel.pieces().forEach(piece -> issued.put(piece, new Pin(piece, reel.reel(), reel.plan())));
            }
        }
        List<Pin> pins = new ArrayList<>();
        for (Pin pin : day.pins()) {
            Pin out = issued.remove(pin.piece());
            pins.add(out != null && out.reel().equals(pin.reel()) ? out : pin);
        }
        pins.addAll(issued.values());
        return day.withPins(pins);
    }
}
