package bitterend.work;

import bitterend.day.SameSteps;
import bitterend.exchange.PlanFacts;
import bitterend.measure.Length;
import bitterend.measure.Sentence;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import bitterend.stock.Reel;
import bitterend.work.Verdict.Passed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What happened to the reels of a plan since it was made. */
final class ReelsSince {
    private final Passed plan;
    private final PlanFacts.Whole facts;
    private final ShopToday today;
    private final LedgerSince booked;
    private final ComingSince coming;
    private final Map<String, Reel> then = new HashMap<>();

    ReelsSince(Passed plan, PlanFacts.Whole facts, ShopToday today, SameSteps same) {
        this.plan = plan;
        this.facts = facts;
        this.today = today;
        booked = new LedgerSince(facts, Gate.name(plan.kept()), same);
        coming = new ComingSince(
                facts.problem(),
                today.shop(),
                today.rack().map(rack -> rack.today().came()).orElse(Map.of()));
        facts.problem().reels().forEach(reel -> then.put(reel.id(), reel.holding(Length.ZERO)));
    }

    /** Why the plan was not made for this shop; empty when it may have been. */
    List<String> foreign() {
        if (today.rack().isEmpty() || !facts.ledger().isKept()) {
            return List.of();
        }
        ShopToday.Rack rack = today.rack().get();
        if (!rack.mark().id().equals(facts.ledger().id())) {
            return List.of(
                    "the plan was made with another ledger (" + facts.ledger().id() + ") than that of this shop ("
                            + rack.mark().id() + ")");
        }
        List<String> foreign = new ArrayList<>();
        for (ReelDraw draw : plan.plan().draws()) {
            history(rack, draw.reel()).stream()
                    .filter(movement -> movement.count() == booked.seen(draw.reel()))
                    .filter(movement -> !movement.entry().after().equals(then.get(draw.reel())))
                    .forEach(movement -> foreign.add("reel " + draw.reel()
                            + ": the plan does not say of it what the ledger said when it was made"));
        }
        return foreign;
    }

    List<Remark> remarks() {
        List<Remark> remarks = new ArrayList<>();
        for (ReelDraw draw : plan.plan().draws()) {
            remarks.addAll(
                    coming.isAbout(draw.reel())
                            ? coming.of(draw)
                            : today.rack()
                                    .map(rack -> booked.of(draw, history(rack, draw.reel())))
                                    .orElseGet(() -> filed(draw.reel())));
        }
        today.rack().ifPresent(rack -> remarks.addAll(rules(rack)));
        return remarks;
    }

    private List<Remark> rules(ShopToday.Rack rack) {
        return ReelRules.of(plan, rack.today().known()).stream()
                .filter(remark -> !rack.today().cut().containsKey(remark.piece()))
                .toList();
    }

    private static List<Movement> history(ShopToday.Rack rack, String reel) {
        return rack.histories().getOrDefault(reel, List.of());
    }

    /** Plans of before hold no lengths as they were typed. */
    private static Reel inMillimetres(Reel reel) {
        return reel.withContents(reel.contents().worked());
    }

    /** Without a ledger: what {@code reels.csv} says otherwise. */
    private List<Remark> filed(String id) {
        Reel was = then.get(id);
        Optional<Reel> now = today.shop().reels().stream()
                .filter(reel -> reel.id().equals(id))
                .findFirst();
        if (was == null || now.isEmpty()) {
            return List.of(Remark.barring(id, "reel " + id + " is not on the rack any more"));
        }
        Reel is = now.get();
        List<Remark> remarks = new ArrayList<>();
        if (!was.length().equals(is.length())) {
            remarks.add(Remark.barring(
                    id,
                    "",
                    Sentence.of("reel " + id + ": held ")
                            .and(was.length())
                            .and(", holds ")
                            .and(is.length())
                            .and(" now")));
        } else if (!inMillimetres(was).withWhere(is.where()).equals(inMillimetres(is))) {
            remarks.add(Remark.barring(id, "reel " + id + " was changed"));
        }
        if (!was.where().place().equals(is.where().place())) {
            remarks.add(Remark.told(
                    id,
                    "reel " + id + " is at "
                            + (is.where().place().isEmpty() ? "?" : is.where().place())));
        }
        return remarks;
    }
}
