package bitterend.cli;

import bitterend.day.OpenWork;
import bitterend.day.RackToday;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.Shop;
import bitterend.packing.CutPlan;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import bitterend.packing.check.Fault;
import bitterend.packing.check.PlanChecker;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Whether a plan that was read from a file still is the plan of its shop. */
final class PlanOfShop {
    private PlanOfShop() {}

    /** What changed since it was planned, each as half a sentence. */
    static List<String> changes(PlanDocument document, Shop shop, Optional<RackToday> rack) {
        List<String> changes = new ArrayList<>();
        Map<String, String> then = document.made().inputs();
        Map<String, String> now = shop.digests();
        TreeSet<String> names = new TreeSet<>(then.keySet());
        names.addAll(now.keySet());
        for (String name : names) {
            if (!now.containsKey(name)) {
                changes.add(name + " was taken away");
            } else if (!then.containsKey(name)) {
                changes.add(name + " was added");
            } else if (!then.get(name).equals(now.get(name))) {
                changes.add(name + " was changed");
            }
        }
        Map<String, Long> movements = rack.map(RackToday::movements).orElse(Map.of());
        for (ReelDraw draw : document.plan().draws()) {
            long before = document.made().movements().getOrDefault(draw.reel(), 0L);
            if (movements.getOrDefault(draw.reel(), 0L) != before) {
                changes.add("reel " + draw.reel() + " was moved, cut or counted");
            }
        }
        return changes;
    }

    /** The day it was planned for, what of it was cut by then left out, and held to an earlier plan as it was. */
    static PackingProblem problem(PlanDocument document, Shop shop, Optional<RackToday> rack) {
        PackingProblem open = new OpenWork(shop.problem(document.plan().day()), rack.orElse(RackToday.NONE)).fresh();
        PlanDocument.Near near = document.made().near();
        Map<String, String> pinned = new TreeMap<>(near.kept());
        open.pins().forEach(pin -> pinned.put(pin.piece(), pin.reel()));
        List<Pin> pins = new ArrayList<>();
        pinned.forEach((piece, reel) -> pins.add(new Pin(piece, reel)));
        return new PackingProblem(
                open.day(),
                open.ropes(),
                open.pieces(),
                open.reels(),
                open.values(),
                open.prices(),
                pins,
                near.moved(),
                open.calendar());
    }

    /** What the checker has against it. Its bounds were checked when it was planned; they are not computed again. */
    static List<Fault> faults(PlanDocument document, PackingProblem problem) {
        CutPlan plan = document.plan();
        return PlanChecker.check(
                problem, new CutPlan(plan.day(), plan.draws(), plan.unplanned(), plan.book(), plan.cost(), List.of()));
    }

    /** How it was made, for the foot of a page. */
    static String made(PlanDocument document) {
        PlanDocument.Made made = document.made();
        StringBuilder words = new StringBuilder("Planned by " + made.engine() + ", seed " + made.seed() + ", from");
        String comma = " ";
        for (Map.Entry<String, String> input : made.inputs().entrySet()) {
            String digest = input.getValue();
            words.append(comma)
                    .append(input.getKey())
                    .append(" (")
                    .append(digest, 0, Math.min(12, digest.length()))
                    .append(")");
            comma = ", ";
        }
        return words.append(".").toString();
    }
}
