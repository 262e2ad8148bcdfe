package bitterend.work;

import bitterend.demand.Piece;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.exchange.PlanFolder;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.Cut;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import bitterend.packing.RunDraw;
import bitterend.stock.Reel;
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
    private final Set<String> rack;

    /**
     * @param plans the plans of the shop
     * @param gate what the gate says of a plan
     * @param day the pieces that are still to be cut
     */
    public IssuedWork(Plans plans, Function<PlanFolder.Kept, Verdict> gate, PackingProblem day) {
        this.plans = plans;
        this.gate = gate;
        open = day.pieces().stream().map(Piece::id).collect(Collectors.toSet());
        rack = day.reels().stream().map(Reel::id).collect(Collectors.toSet());
    }

    /**
     * A reel whose sheet is out.
     *
     * @param plan number of the plan it was issued with
     * @param reel the reel
     * @param pins the pieces still to be cut off it, as its sheet has them
     * @param broken why the sheet no longer holds; empty while it does
     */
    public record OnTheBench(int plan, String reel, List<Pin> pins, Sentence broken) {
        public OnTheBench {
            pins = List.copyOf(pins);
        }

        /** The pieces still to be cut off it, in the order of the sheet. */
        public List<String> pieces() {
            return pins.stream().map(Pin::piece).toList();
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
                plans.needed(number).ifPresent(plan -> reels.addAll(0, onTheBench(plan, issued)));
            }
        }
        return reels;
    }

    private List<OnTheBench> onTheBench(PlanFolder.Kept plan, Set<String> issued) {
        Map<String, List<Pin>> left = new HashMap<>();
        for (ReelDraw draw : plan.document().plan().draws()) {
            List<Pin> pins = pins(plan.document(), draw).stream()
                    .filter(pin -> open.contains(pin.piece()))
                    .toList();
            if (issued.contains(draw.reel()) && rack.contains(draw.reel()) && !pins.isEmpty()) {
                left.put(draw.reel(), pins);
            }
        }
        if (left.isEmpty()) {
            return List.of();
        }
        Map<String, Sentence> broken = broken(gate.apply(plan), left.keySet());
        return plan.document().plan().draws().stream()
                .map(ReelDraw::reel)
                .filter(left::containsKey)
                .map(reel -> new OnTheBench(
                        plan.document().number(),
                        reel,
                        left.getOrDefault(reel, List.of()),
                        broken.getOrDefault(reel, Sentence.NONE)))
                .toList();
    }

    /** The cuts of a sheet. How its runs are counted is known where the plan has all its facts. */
    private static List<Pin> pins(PlanDocument plan, ReelDraw draw) {
        int runs = 0;
        Map<String, String> heldFor = new HashMap<>();
        if (plan.facts() instanceof PlanFacts.Whole whole) {
            runs = whole.problem().reel(draw.reel()).holding(Length.ZERO).runs().size();
            whole.problem().pins().stream()
                    .filter(pin -> pin.reel().equals(draw.reel()))
                    .forEach(pin -> heldFor.put(pin.piece(), pin.heldFor()));
        }
        List<Pin> pins = new ArrayList<>();
        for (RunDraw run : draw.runs()) {
            for (Cut cut : run.cuts()) {
                Pin pin = runs == 0
                        ? new Pin(cut.piece(), draw.reel(), plan.number())
                        : new Pin(cut.piece(), draw.reel(), plan.number(), pins.size() + 1, runs - run.run());
                pins.add(pin.ofHeldRope(heldFor.getOrDefault(cut.piece(), "")));
            }
        }
        return pins;
    }

    /** Off rope that is held for it only while it still is. */
    private static Pin whileHeld(PackingProblem day, Pin pin) {
        boolean held = day.reel(pin.reel()).custody().heldOn(day.day()).stream()
                .anyMatch(each -> each.whom().equals(pin.heldFor()));
        return held ? pin : pin.ofHeldRope("");
    }

    private static Map<String, Sentence> broken(Verdict verdict, Set<String> reels) {
        Map<String, Sentence> broken = new HashMap<>();
        if (verdict instanceof Verdict.Refused refused) {
            reels.forEach(reel -> broken.put(reel, Sentence.of(refused.reasons().get(0))));
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
                reel.pins().forEach(pin -> issued.put(pin.piece(), whileHeld(day, pin)));
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
