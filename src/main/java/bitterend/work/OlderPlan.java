package bitterend.work;

import bitterend.day.OpenWork;
import bitterend.day.RackToday;
import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.packing.PackingProblem;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** A plan in the older form, which kept nothing but digests of its input: it is good while that is as it was. */
final class OlderPlan {
    private OlderPlan() {}

    /** What changed since it was planned, each a sentence. */
    static List<String> changes(PlanDocument document, ShopToday today) {
        List<String> changes = new ArrayList<>();
        Map<String, String> then = document.made().inputs();
        Map<String, String> now = today.shop().digests();
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
        Map<String, Long> movements =
                today.rack().map(rack -> rack.today().movements()).orElse(Map.of());
        for (ReelDraw draw : document.plan().draws()) {
            long before = document.facts().movements().getOrDefault(draw.reel(), 0L);
            if (movements.getOrDefault(draw.reel(), 0L) != before) {
                changes.add("reel " + draw.reel() + " was moved, cut or counted");
            }
        }
        return changes;
    }

    /** The day it was planned for, what of it was cut by then left out, and held to an earlier plan as it was. */
    static PackingProblem problem(PlanDocument document, PlanFacts.Older near, ShopToday today) {
        Optional<RackToday> rack = today.rack().map(ShopToday.Rack::today);
        PackingProblem open =
                new OpenWork(DayProblem.of(today.shop(), document.plan().day()), rack.orElse(RackToday.NONE)).fresh();
        Map<String, String> pinned = new TreeMap<>(near.kept());
        open.pins().forEach(pin -> pinned.put(pin.piece(), pin.reel()));
        List<Pin> pins = new ArrayList<>();
        pinned.forEach((piece, reel) -> pins.add(new Pin(piece, reel)));
        return open.withPins(pins).withEarlier(near.moved());
    }
}
