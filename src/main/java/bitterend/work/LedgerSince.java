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
import bitterend.stock.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the ledger says of a reel of a plan that it did not say when the plan was made. */
final class LedgerSince {
    private final PlanFacts.Whole facts;
    private final String name;
    private final SameSteps same;

    /**
     * @param facts what the plan was made from
     * @param name the name that the ledger knows it by
     * @param same what it has in common with others that were posted
     */
    LedgerSince(PlanFacts.Whole facts, String name, SameSteps same) {
        this.facts = facts;
        this.name = name;
        this.same = same;
    }

    /** How many movements of a reel the plan saw; -1 where it saw none of it. */
    long seen(String reel) {
        return facts.movements().getOrDefault(reel, -1L);
    }

    /** The pieces of a draw that are posted from the plan. */
    Set<String> posted(ReelDraw draw, List<Movement> history) {
        return new ReelSince(history, 0, name, same).posted(draw);
    }

    /**
     * What it says.
     *
     * @param history every movement of the reel, oldest first
     */
    List<Remark> of(ReelDraw draw, List<Movement> history) {
        String reel = draw.reel();
        long seen = seen(reel);
        if (history.isEmpty() || (seen < 0 && !isBefore(reel))) {
            return List.of(Remark.barring(reel, "reel " + reel + ": the plan was not made with this ledger"));
        }
        List<Remark> remarks = new ArrayList<>();
        if (isBefore(reel)) {
            remarks.add(Remark.beforeLedger(reel));
            remarks.addAll(since(draw, history, 1));
            return remarks;
        }
        if (history.size() < seen) {
            return List.of(Remark.barring(
                    reel, "reel " + reel + ": the plan saw " + seen + " movements, the ledger has " + history.size()));
        }
        posted(history, draw).ifPresent(remarks::add);
        remarks.addAll(since(draw, history, seen));
        return remarks;
    }

    /** Whether the plan was made before there was a ledger: the first movement of the reel is what the plan saw of it. */
    boolean isBefore(String reel) {
        return !facts.ledger().isKept() && seen(reel) < 0;
    }

    private List<Remark> since(ReelDraw draw, List<Movement> history, long seen) {
        List<Remark> remarks = new ArrayList<>();
        ReelSince since = new ReelSince(history, seen, name, same);
        Optional<Movement> hold = since.hold();
        since.others().stream()
                .filter(movement -> hold.filter(movement::equals).isEmpty())
                .map(movement -> remark(movement, since))
                .forEach(remarks::add);
        hold.ifPresent(held -> remarks.add(Remark.hold(draw.reel(), ReelSince.told(held))));
        if (!since.changes().isEmpty()) {
            tooShort(history, since, draw).ifPresent(remarks::add);
            remarks.addAll(FlawsSince.in(since, draw));
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

    private static Remark remark(Movement movement, ReelSince since) {
        String reel = movement.entry().reel();
        boolean bars = since.changesTheRope(movement);
        boolean counted = bars && movement.entry().kind() == Kind.COUNTED;
        return new Remark(reel, "", told(movement, since), bars, counted ? Remark.About.COUNT : Remark.About.ANYTHING);
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

    private static Sentence told(Movement movement, ReelSince since) {
        Movement.Entry entry = movement.entry();
        String place = entry.after().where().place();
        if (entry.kind() == Kind.MOVED && !place.isEmpty()) {
            return Sentence.of("reel " + entry.reel() + ": moved to " + place + " on " + Moments.text(movement.at())
                    + " by " + movement.who());
        }
        Sentence found = entry.kind() == Kind.FLAW_FOUND ? FlawsSince.found(movement, since.history()) : Sentence.NONE;
        return ReelSince.told(movement).and(found.isEmpty() ? "" : ": ").and(found);
    }
}
