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
import bitterend.stock.Standing;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * Writes what was cut into the ledger: all of a part or nothing. Steps that are posted already are passed over, so that
 * the same part may be posted twice, or piece by piece as the day goes on.
 */
public final class Posting {
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);

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
     * @param guard looks at the ledger before anything is written and while no one else can book; it throws where that may
     *     not be
     * @throws LedgerException.StockChanged when a reel has had movements since the plan was made that change its rope
     */
    public Posted post(RecordedPlan plan, Part part, Consumer<Ledger.Stock> guard) {
        AtomicInteger already = new AtomicInteger();
        Event.Act act = caller.apply(Event.Act.of(Event.Kind.POSTED, "", ""));
        Optional<Event> event = ledger.change(act, books -> {
            checkNamed(plan, part);
            List<Movement> ofPlan = Standing.movements(books.ofPlan(plan.id()));
            checkUnchanged(books, plan, part);
            checkNotCut(books, plan, part);
            guard.accept(books);
            List<String> asks = new ArrayList<>();
            for (ReelDraw draw : plan.plan().draws()) {
                if (part.has(draw)) {
                    Set<String> steps = steps(ofPlan, draw);
                    boolean done = part.pieces(draw).stream().allMatch(piece -> steps.contains("piece " + piece));
                    Optional<EarlierCount> count =
                            done ? Optional.empty() : EarlierCount.since(books, plan, draw, part);
                    count.ifPresent(each -> each.takeAway(books));
                    DrawPosting posting = new DrawPosting(books, plan, draw, part, count.isPresent());
                    already.addAndGet(posting.post(steps));
                    asks.addAll(posting.asks());
                    count.ifPresent(each -> each.bringBack(books, posting.leftToTheCount()));
                    if (!posting.written().isEmpty()) {
                        state(books, plan, draw);
                    }
                }
            }
            if (!asks.isEmpty()) {
                throw new LedgerException.Contradictory(String.join("\n", asks));
            }
        });
        return new Posted(event.map(Event::movements).orElse(List.of()), already.get());
    }

    /** Posts a part of a plan in whose sets nobody else can have a hand. */
    public Posted post(RecordedPlan plan, Part part) {
        return post(plan, part, stock -> {});
    }

    private static void state(Ledger.Books books, RecordedPlan plan, ReelDraw draw) {
        books.fact("plan", plan.id());
        books.fact("reel " + draw.reel(), "");
        if (plan.number() > 0) {
            books.fact("number", "" + plan.number());
        }
    }

    private static Set<String> steps(List<Movement> ofPlan, ReelDraw draw) {
        Set<String> steps = new HashSet<>();
        ofPlan.stream()
                .filter(movement -> movement.entry().reel().equals(draw.reel()))
                .forEach(movement -> steps.add(movement.entry().origin().step()));
        return steps;
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
        found.addAll(part.found().skipped());
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

    private static void checkUnchanged(Ledger.Stock stock, RecordedPlan plan, Part part) {
        List<String> changes = new ArrayList<>();
        for (ReelDraw draw : plan.plan().draws()) {
            if (!part.has(draw)) {
                continue;
            }
            Long seen = plan.seen().get(draw.reel());
            Holding holding = stock.findHolding(draw.reel()).orElse(null);
            if (seen == null || holding == null) {
                changes.add("reel " + draw.reel() + ": the plan was not made with this ledger");
            } else if (holding.movements() < seen) {
                changes.add("reel " + draw.reel() + ": the plan saw " + seen + " movements, the ledger has "
                        + holding.movements());
            } else {
                List<Movement> foreign = foreign(stock.history(draw.reel()), seen, plan.id());
                if (!part.found().isBeforeTheCount() || !EarlierCount.isAll(foreign)) {
                    foreign.forEach(movement -> changes.add(told(movement)));
                }
                if (EarlierCount.isAll(foreign) && !changes.isEmpty()) {
                    changes.add("  if it was counted after these cuts: stock post ... --before-count");
                }
            }
        }
        if (!changes.isEmpty()) {
            throw new LedgerException.StockChanged(String.join("\n", changes));
        }
    }

    /** A piece that another plan had cut in the meantime, off whichever reel, is not cut again. */
    private static void checkNotCut(Ledger.Stock stock, RecordedPlan plan, Part part) {
        Map<String, Movement> cut = new CutPieces(stock).cuts();
        List<String> again = new ArrayList<>();
        for (ReelDraw draw : plan.plan().draws()) {
            if (part.has(draw)) {
                part.pieces(draw).stream()
                        .flatMap(piece -> Optional.ofNullable(cut.get(piece)).stream())
                        .filter(movement -> !movement.entry().origin().plan().equals(plan.id()))
                        .forEach(movement -> again.add("piece "
                                + movement.entry().origin().piece() + " was cut already: " + told(movement)
                                + "\n  to book what else was cut here: stock post ... --skipped "
                                + CommandWord.of(movement.entry().origin().piece())));
            }
        }
        if (!again.isEmpty()) {
            throw new LedgerException.StockChanged(String.join("\n", again));
        }
    }

    /** Movements since the plan saw the reel that change its rope and are not of this plan. */
    static List<Movement> foreign(List<Movement> history, long seen, String plan) {
        List<Movement> since =
                history.stream().filter(movement -> movement.count() > seen).toList();
        List<Movement> foreign = new ArrayList<>(since);
        List<Movement> undoneSince = new ArrayList<>(since);
        undoneSince.removeAll(Standing.movements(since));
        Set<Long> numbers = new HashSet<>();
        since.forEach(movement -> numbers.add(movement.number()));
        foreign.removeIf(movement -> {
            long undoes = movement.entry().origin().undoes();
            boolean pair = undoneSince.contains(movement) && (undoes == 0 || numbers.contains(undoes));
            return pair
                    || movement.entry().kind().leavesTheRope()
                    || movement.entry().origin().plan().equals(plan);
        });
        return foreign;
    }

    private static String told(Movement movement) {
        Movement.Entry entry = movement.entry();
        return "reel " + entry.reel() + ": " + entry.kind().word() + " on " + MOMENT.format(movement.at()) + " by "
                + movement.who() + " (event " + movement.event() + "), which changed its length by "
                + movement.by().mm() + " mm" + (entry.note().isEmpty() ? "" : ": " + entry.note());
    }
}
