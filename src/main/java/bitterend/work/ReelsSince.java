package bitterend.work;

import bitterend.day.ReelSince;
import bitterend.day.SameSteps;
import bitterend.exchange.PlanFacts;
import bitterend.measure.Length;
import bitterend.measure.Moments;
import bitterend.measure.Sentence;
import bitterend.packing.Cut;
import bitterend.packing.ReelDraw;
import bitterend.stock.Movement;
import bitterend.stock.Movement.Kind;
import bitterend.stock.Reel;
import bitterend.stock.Standing;
import bitterend.work.Verdict.Passed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What happened to the reels of a plan since it was made. */
final class ReelsSince {
    private final Passed plan;
    private final PlanFacts.Whole facts;
    private final ShopToday today;
    private final SameSteps same;
    private final String name;
    private final ComingSince coming;
    private final Map<String, Reel> then = new HashMap<>();

    ReelsSince(Passed plan, PlanFacts.Whole facts, ShopToday today, SameSteps same) {
        this.same = same;
        this.plan = plan;
        this.facts = facts;
        this.today = today;
        name = Gate.name(plan.kept());
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
                    .filter(movement -> movement.count() == seen(draw.reel()))
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
                            : today.rack().map(rack -> booked(rack, draw)).orElseGet(() -> filed(draw.reel())));
        }
        today.rack().ifPresent(rack -> remarks.addAll(rules(rack)));
        return remarks;
    }

    private List<Remark> rules(ShopToday.Rack rack) {
        return ReelRules.of(plan, rack.today().known()).stream()
                .filter(remark -> !rack.today().cut().containsKey(remark.piece()))
                .toList();
    }

    private long seen(String reel) {
        return facts.movements().getOrDefault(reel, -1L);
    }

    private static List<Movement> history(ShopToday.Rack rack, String reel) {
        return rack.histories().getOrDefault(reel, List.of());
    }

    private List<Remark> booked(ShopToday.Rack rack, ReelDraw draw) {
        String reel = draw.reel();
        List<Movement> history = history(rack, reel);
        long seen = seen(reel);
        if (seen < 0
                || history.isEmpty()
                || (!facts.ledger().isKept() && !facts.movements().containsKey(reel))) {
            return List.of(Remark.barring(reel, "reel " + reel + ": the plan was not made with this ledger"));
        }
        if (history.size() < seen) {
            return List.of(Remark.barring(
                    reel, "reel " + reel + ": the plan saw " + seen + " movements, the ledger has " + history.size()));
        }
        List<Remark> remarks = new ArrayList<>();
        posted(history, draw).ifPresent(remarks::add);
        ReelSince since = new ReelSince(history, seen, name, same);
        Optional<Movement> hold = since.hold();
        since.others().stream()
                .filter(movement -> hold.filter(movement::equals).isEmpty())
                .map(movement -> remark(movement, since.changesTheRope(movement)))
                .forEach(remarks::add);
        hold.ifPresent(held -> remarks.add(Remark.hold(reel, ReelSince.told(held))));
        if (!since.changes().isEmpty()) {
            tooShort(history, since, draw).ifPresent(remarks::add);
        }
        return remarks;
    }

    /** The first cut that what is on the reel now does not hold any more, by what is sure of it. */
    private static Optional<Remark> tooShort(List<Movement> history, ReelSince since, ReelDraw draw) {
        Movement.Entry last = history.get(history.size() - 1).entry();
        Set<String> posted = since.posted(draw);
        List<Cut> open = draw.cuts().stream()
                .filter(cut -> !posted.contains(cut.piece()))
                .toList();
        if (last.gone() || open.isEmpty()) {
            return Optional.empty();
        }
        Length before = posted.isEmpty() ? Length.ZERO : open.get(0).from();
        Length sure = Length.max(
                Length.ZERO,
                last.after()
                        .contents()
                        .certainEnd()
                        .minus(last.after().contents().leadTrim()));
        return open.stream()
                .filter(cut -> cut.to().minus(before).isLongerThan(sure))
                .findFirst()
                .map(cut -> new Remark(
                        draw.reel(),
                        "",
                        Sentence.of("reel " + draw.reel() + ": ")
                                .and(sure)
                                .and(" of it can be counted on now, too little for " + cut.piece()
                                        + " where the plan has it; plan again"),
                        false,
                        Remark.About.ANYTHING));
    }

    private static Remark remark(Movement movement, boolean bars) {
        String reel = movement.entry().reel();
        boolean counted = bars && movement.entry().kind() == Kind.COUNTED;
        return new Remark(reel, "", told(movement), bars, counted ? Remark.About.COUNT : Remark.About.ANYTHING);
    }

    /** How far the reel is posted from this plan. */
    private Optional<Remark> posted(List<Movement> history, ReelDraw draw) {
        long cuts = Standing.movements(history).stream()
                .filter(movement -> movement.entry().kind() == Kind.CUT && same.areOf(name, movement))
                .count();
        if (cuts == 0) {
            return Optional.empty();
        }
        String far = cuts >= draw.cuts().size() ? "posted" : "posted up to cut " + cuts;
        return Optional.of(Remark.posted(draw.reel(), "reel " + draw.reel() + ": " + far));
    }

    private static Sentence told(Movement movement) {
        Movement.Entry entry = movement.entry();
        String place = entry.after().where().place();
        return entry.kind() == Kind.MOVED && !place.isEmpty()
                ? Sentence.of("reel " + entry.reel() + ": moved to " + place + " on " + Moments.text(movement.at())
                        + " by " + movement.who())
                : ReelSince.told(movement);
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
