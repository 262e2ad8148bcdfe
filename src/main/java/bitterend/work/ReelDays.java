package bitterend.work;

import bitterend.exchange.PlanDocument;
import bitterend.exchange.PlanFacts;
import bitterend.packing.CutDays;
import bitterend.packing.Pin;
import bitterend.packing.ReelDraw;
import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * On which day each reel of a plan is cut, and whose sheets are out. What must be cut on the day of the plan, or is out, is
 * the work of that day; the rest is promised for later days. A reel that is on order has no day.
 */
public final class ReelDays {
    private final LocalDate today;
    private final Map<String, LocalDate> days = new LinkedHashMap<>();
    private final Set<String> coming = new LinkedHashSet<>();
    private final Set<String> out;
    private final Map<String, Integer> sheets = new LinkedHashMap<>();

    /**
     * @param plan a plan; one that does not say what it was made from cuts all its reels on its day
     * @param out reels whose sheets of it are out
     */
    public ReelDays(PlanDocument plan, Set<String> out) {
        this.out = Set.copyOf(out);
        today = plan.plan().day();
        if (plan.facts() instanceof PlanFacts.Whole whole) {
            whole.problem().pins().stream().filter(Pin::isIssued).forEach(pin -> sheets.put(pin.reel(), pin.issued()));
        }
        out.forEach(reel -> sheets.put(reel, plan.number()));
        for (ReelDraw draw : plan.plan().draws()) {
            if (plan.facts() instanceof PlanFacts.Whole whole) {
                if (whole.problem().isComing(draw.reel())) {
                    coming.add(draw.reel());
                } else {
                    days.put(draw.reel(), new CutDays(whole.problem()).of(draw));
                }
            } else {
                days.put(draw.reel(), today);
            }
        }
    }

    /** Of a plan that is kept, by what is written down of its sheets. */
    public static ReelDays of(PlanDocument plan, Plans plans) {
        return new ReelDays(plan, plan.number() == 0 ? Set.of() : plans.issuedReels(plan.number()));
    }

    /** The reels whose sheets are out. */
    public Set<String> out() {
        return out;
    }

    /** The plan whose sheet of a reel is out, by its reel: this one, or an earlier one that this one was held to. */
    public Map<String, Integer> sheets() {
        return Collections.unmodifiableMap(sheets);
    }

    /** The reels of the plan that are on order: they have no sheets before they are here. */
    public Set<String> coming() {
        return Collections.unmodifiableSet(coming);
    }

    /** Every reel of the plan that is in the house, in its order. */
    public Set<String> all() {
        return new LinkedHashSet<>(days.keySet());
    }

    /** What must be cut on the day of the plan, or is out. */
    public Set<String> today() {
        return days.keySet().stream()
                .filter(reel -> out.contains(reel) || today.equals(days.get(reel)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The work at hand, which the sheets of the day have: that of today, where there is none that of the next day. */
    public Set<String> atHand() {
        Set<String> now = today();
        return now.isEmpty() && !days.isEmpty() ? on(days().first()) : now;
    }

    /** What is cut on a day by the plan. */
    public Set<String> on(LocalDate day) {
        return days.keySet().stream()
                .filter(reel -> day.equals(days.get(reel)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The days on which the plan cuts, the first in front. */
    public SortedSet<LocalDate> days() {
        return new TreeSet<>(days.values());
    }
}
