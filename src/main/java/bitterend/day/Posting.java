package bitterend.day;

import bitterend.finding.CommandWord;
import bitterend.finding.NaturalOrder;
import bitterend.measure.Length;
import bitterend.packing.ReelDraw;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * Writes what was cut into the ledger: all of a part or nothing. Steps that are posted already are passed over, so that
 * the same part may be posted twice, or piece by piece as the day goes on.
 */
public final class Posting {
    private final Ledger ledger;
    private final UnaryOperator<Event.Act> caller;

    public Posting(Ledger ledger, String who) {
        this(ledger, act -> act.by(who));
    }

    /**
     * Posting by somebody.
     *
     * @param caller puts into an act who does it, and under which id
     */
    public Posting(Ledger ledger, UnaryOperator<Event.Act> caller) {
        this.ledger = ledger;
        this.caller = caller;
    }

    /**
     * What posting did.
     *
     * @param written the movements that were added
     * @param already steps of this part that stood in the ledger before
     */
    public record Posted(List<Movement> written, int already) {
        public Posted {
            written = List.copyOf(written);
        }
    }

    /**
     * Posts a part of a plan as one event.
     *
     * @param rules asked while no one else can book: the pieces of the part that nothing ordered may be made of, which are
     *     spare pieces then; it throws where one of them was not said to be cut all the same
     * @throws LedgerException.StockChanged when a reel has had movements since the plan was made that change its rope
     */
    public Posted post(RecordedPlan plan, Part part, Function<Ledger.Stock, Set<String>> rules) {
        AtomicInteger already = new AtomicInteger();
        Event.Act act = caller.apply(Event.Act.of(Event.Kind.POSTED, "", ""));
        Optional<Event> event = ledger.change(act, books -> {
            checkNamed(plan, part);
            List<ReelDraw> draws =
                    plan.plan().draws().stream().filter(part::has).toList();
            checkUnchanged(books, plan, part, draws);
            Set<String> spare = new HashSet<>(new CutElsewhere(books, plan, part).spare(draws));
            spare.addAll(rules.apply(books));
            List<String> asks = new ArrayList<>();
            for (ReelDraw draw : draws) {
                already.addAndGet(post(books, plan, draw, new How(part, spare), asks));
            }
            if (!asks.isEmpty()) {
                throw new LedgerException.Contradictory(String.join("\n", asks));
            }
        });
        return new Posted(event.map(Event::movements).orElse(List.of()), already.get());
    }

    /** Posts a part of a plan in whose sets nobody else can have a hand. */
    public Posted post(RecordedPlan plan, Part part) {
        return post(plan, part, stock -> Set.of());
    }

    /**
     * How a part is posted.
     *
     * @param part the part
     * @param spare the pieces of it that are spare pieces at once
     */
    record How(Part part, Set<String> spare) {}

    private static int post(Ledger.Books books, RecordedPlan plan, ReelDraw draw, How how, List<String> asks) {
        ReelSince since = plan.since(books, draw.reel());
        boolean done = since.isPosted(draw, how.part());
        boolean closed = done && !since.changes().isEmpty();
        Optional<EarlierCount> count = done ? Optional.empty() : EarlierCount.of(since, how.part());
        count.ifPresent(each -> each.takeAway(books));
        DrawPosting posting = new DrawPosting(books, plan, draw, how, count.isPresent());
        int already = posting.post(since.steps(), closed);
        asks.addAll(posting.asks());
        if (!how.part().found().isSure()) {
            count.ifPresent(each -> each.check(posting.standing(), posting.stillToCut()));
        }
        count.ifPresent(each -> each.bringBack(books, posting.leftToTheCount()));
        if (!posting.written().isEmpty()) {
            state(books, plan, draw);
        }
        return already;
    }

    private static void state(Ledger.Books books, RecordedPlan plan, ReelDraw draw) {
        books.fact("plan", plan.id());
        books.fact("reel " + draw.reel(), "");
        if (plan.number() > 0) {
            books.fact("number", "" + plan.number());
        }
    }

    private static void checkNamed(RecordedPlan plan, Part part) {
        Set<String> known = new HashSet<>();
        Set<String> posted = new HashSet<>();
        for (ReelDraw draw : plan.plan().draws()) {
            known.add(draw.reel());
            draw.cuts().forEach(cut -> known.add(cut.piece()));
            if (part.has(draw)) {
                posted.add(draw.reel());
                draw.cuts().stream().limit(part.cutsOf(draw)).forEach(cut -> posted.add(cut.piece()));
            }
        }
        Set<String> named = new HashSet<>(part.reels());
        named.addAll(part.upTo());
        refuse(named, known, "the plan cuts no ");
        Set<String> found = new HashSet<>(part.found().measured().keySet());
        found.addAll(part.found().left().keySet());
        found.addAll(part.found().pieces().skipped());
        found.addAll(part.found().pieces().wasCut());
        refuse(found, posted, "no part of what is posted: ");
        for (Map.Entry<String, Length> measured : part.found().measured().entrySet()) {
            if (!measured.getValue().isPositive()) {
                throw new LedgerException.Contradictory("a measured length is above nothing: " + measured.getKey());
            }
        }
    }

    private static void refuse(Set<String> named, Set<String> known, String sentence) {
        Set<String> unknown = new HashSet<>(named);
        unknown.removeAll(known);
        if (!unknown.isEmpty()) {
            throw new LedgerException.Contradictory(sentence
                    + String.join(
                            ", ", unknown.stream().sorted(NaturalOrder.IDS).toList()));
        }
    }

    private static void checkUnchanged(Ledger.Stock stock, RecordedPlan plan, Part part, List<ReelDraw> draws) {
        List<String> changes = new ArrayList<>();
        for (ReelDraw draw : draws) {
            Long seen = plan.seen().get(draw.reel());
            Holding holding = stock.findHolding(draw.reel()).orElse(null);
            if (seen == null || holding == null) {
                changes.add("reel " + draw.reel() + ": the plan was not made with this ledger");
            } else if (holding.movements() < seen) {
                changes.add("reel " + draw.reel() + ": the plan saw " + seen + " movements, the ledger has "
                        + holding.movements());
            } else if (!plan.since(stock, draw.reel()).isPosted(draw, part)) {
                changes.addAll(changes(plan.since(stock, holding.id()), part));
            }
        }
        if (!changes.isEmpty()) {
            throw new LedgerException.StockChanged(String.join("\n", changes));
        }
    }

    private static List<String> changes(ReelSince reel, Part part) {
        List<Movement> since = reel.changes();
        boolean counted = EarlierCount.isAll(since);
        List<String> changes = new ArrayList<>();
        if (!counted || !part.found().isBeforeTheCount()) {
            since.forEach(movement -> changes.add(ReelSince.told(movement).exact()));
        }
        if (counted && !changes.isEmpty()) {
            changes.add("  if it was counted after these cuts: stock post ... --before-count");
        }
        reel.hold()
                .ifPresent(hold -> changes.add(ReelSince.told(hold)
                        + "\n  when that is over: bitterend stock release SHOP "
                        + CommandWord.of(hold.entry().reel())));
        return changes;
    }
}
