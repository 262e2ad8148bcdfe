package bitterend.day;

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
     * @throws LedgerException.StockChanged when a reel has had movements since the plan was made that change its rope
     */
    public Posted post(RecordedPlan plan, Part part) {
        AtomicInteger already = new AtomicInteger();
        Event.Act act = caller.apply(Event.Act.of(Event.Kind.POSTED, "", ""));
        Optional<Event> event = ledger.change(act, books -> {
            checkNamed(plan, part);
            List<Movement> ofPlan = Standing.movements(books.ofPlan(plan.id()));
            checkUnchanged(books, plan, part);
            checkNotCut(books, plan, part);
            for (ReelDraw draw : plan.plan().draws()) {
                if (part.has(draw)) {
                    DrawPosting posting = new DrawPosting(books, plan, draw, part);
                    already.addAndGet(posting.post(steps(ofPlan, draw)));
                    if (!posting.written().isEmpty()) {
                        books.fact("plan", plan.id());
                        books.fact("reel " + draw.reel(), "");
                    }
                }
            }
        });
        return new Posted(event.map(Event::movements).orElse(List.of()), already.get());
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
        for (ReelDraw draw : plan.plan().draws()) {
            known.add(draw.reel());
            draw.cuts().forEach(cut -> known.add(cut.piece()));
        }
        Set<String> named = new HashSet<>(part.reels());
        named.addAll(part.upTo());
        named.addAll(part.measured().keySet());
        named.removeAll(known);
        if (!named.isEmpty()) {
            throw new LedgerException.Refused("the plan cuts no "
                    + String.join(", ", named.stream().sorted(NaturalOrder.IDS).toList()));
        }
        for (Map.Entry<String, Length> measured : part.measured().entrySet()) {
            if (!measured.getValue().isPositive()) {
                throw new LedgerException.Refused("a measured length is above nothing: " + measured.getKey());
            }
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
                foreign(stock.history(draw.reel()), seen, plan.id()).forEach(movement -> changes.add(told(movement)));
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
                draw.cuts().stream()
                        .limit(part.cutsOf(draw))
                        .flatMap(each -> Optional.ofNullable(cut.get(each.piece())).stream())
                        .filter(movement -> !movement.entry().origin().plan().equals(plan.id()))
                        .forEach(movement -> again.add(
                                "piece " + movement.entry().origin().piece() + " was cut already: " + told(movement)));
            }
        }
        if (!again.isEmpty()) {
            throw new LedgerException.StockChanged(String.join("\n", again));
        }
    }

    /** Movements since the plan saw the reel that change its rope and are not of this plan. */
    private static List<Movement> foreign(List<Movement> history, long seen, String plan) {
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
