package bitterend.stock;

import bitterend.measure.Length;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Where the rope went. Rope is never made and never lost: what was received, and the differences that were counted or
 * corrected, is what is in good, spare and spoiled pieces, in cut loss and scrap, condemned, sold, returned, sent to another
 * loft, and on the rack. This holds for every event and for all of them together.
 */
public final class Balance {
    /** One side of the equation, or the other. */
    public enum Account {
        RECEIVED("received"),
        DIFFERENCES("differences counted or corrected"),
        GOOD("in good pieces"),
        SPARE("in spare pieces"),
        SPOILED("in spoiled pieces"),
        CUT_LOSS("cut loss"),
        SCRAP("scrap: trims, flaws, samples, ends"),
        CONDEMNED("condemned"),
        SOLD("sold"),
        RETURNED("returned"),
        SENT("sent to another loft"),
        RACK("on the rack");

        private final String words;

        Account(String words) {
            this.words = words;
        }

        /** As lists call it. */
        public String words() {
            return words;
        }

        /** Whether it is on the side of what came. */
        public boolean isSource() {
            return this == RECEIVED || this == DIFFERENCES;
        }
    }

    private final Map<Account, Long> total = new EnumMap<>(Account.class);
    private final Map<Long, Flow> flows = new HashMap<>();
    private final List<String> faults = new ArrayList<>();
    private final PieceAccount pieces = new PieceAccount();

    /** What a movement did to the accounts; {@code hand} is rope that another movement of its event must take up. */
    private static final class Flow {
        private final Map<Account, Long> by = new EnumMap<>(Account.class);
        private long hand;

        Flow with(Account account, long mm) {
            by.merge(account, mm, Long::sum);
            return this;
        }

        Flow inHand(long mm) {
            hand += mm;
            return this;
        }

        Flow against() {
            Flow other = new Flow().inHand(-hand);
            by.forEach((account, mm) -> other.with(account, -mm));
            return other;
        }
    }

    /** The balance of some events, from the first on. */
    public static Balance of(List<Event> events) {
        Balance balance = new Balance();
        events.forEach(balance::add);
        return balance;
    }

    /** What is in an account; differences may be below nothing. */
    public Length of(Account account) {
        return new Length(total.getOrDefault(account, 0L));
    }

    /** Events that made rope or lost some, each in a sentence; empty when there is none. */
    public List<String> faults() {
        return List.copyOf(faults);
    }

    /** Adds the next event. */
    public void add(Event event) {
        long hand = 0;
        Account sink = null;
        for (Movement movement : event.movements()) {
            pieces.add(movement);
            Flow flow = flow(movement, event);
            if (pieces.isBackAsSpare(movement.number())) {
                long piece = movement.entry().piece().length().mm();
                flow.with(Account.GOOD, -piece).with(Account.SPARE, piece);
            }
            flows.put(movement.number(), flow);
            flow.by.forEach((account, mm) -> total.merge(account, mm, Long::sum));
            hand += flow.hand;
            Movement.Kind kind = movement.entry().kind();
            switch (kind) {
                case SPOILED -> sink = Account.SPOILED;
                case TRIMMED, BACK_ON_RACK -> sink = Account.SCRAP;
                default -> {}
            }
        }
        settle(event, hand, sink);
    }

    /** What is left in the hand of a spoiled or a spare piece is spoiled or scrap; anywhere else nothing may be left. */
    private void settle(Event event, long hand, @org.jspecify.annotations.Nullable Account sink) {
        if (hand == 0) {
            return;
        }
        if (sink != null && hand > 0) {
            total.merge(sink, hand, Long::sum);
            Objects.requireNonNull(flows.get(event.movements().get(0).number()))
                    .with(sink, hand)
                    .inHand(-hand);
        } else if (event.isOfAnOlderLedger()) {
            total.merge(Account.DIFFERENCES, -hand, Long::sum);
        } else {
            faults.add("event " + event.number() + " (" + event.act().kind().word() + ") "
                    + (hand > 0 ? "loses " : "makes ") + Math.abs(hand) + " mm of rope");
        }
    }

    private Flow flow(Movement movement, Event event) {
        Movement.Entry entry = movement.entry();
        long by = movement.by().mm();
        long piece = entry.piece().length().mm();
        Flow flow = new Flow();
        switch (entry.kind()) {
            case UNDONE -> {
                Flow undone = flows.get(entry.origin().undoes());
                return undone == null ? flow.with(Account.RACK, by).inHand(-by) : matched(undone.against(), by, event);
            }
            case RECEIVED -> flow.with(Account.RECEIVED, by);
            case COUNTED, CORRECTED -> flow.with(Account.DIFFERENCES, by);
            case CUT -> cut(flow.with(Account.GOOD, piece), -by - piece, movement);
            case CUT_SHORT, CUT_SPARE -> cut(flow.with(Account.SPARE, piece), -by - piece, movement);
            case SCRAPPED -> flow.with(Account.SCRAP, -by);
            case SPOILED -> flow.with(Account.GOOD, -piece).inHand(piece - by);
            case TRIMMED, BACK_ON_RACK -> flow.with(Account.SPARE, -piece).inHand(piece - by);
            case MADE_SPARE -> flow.with(Account.GOOD, -piece)
                    .with(Account.SPARE, piece)
                    .inHand(-by);
            case GIVEN -> flow.with(Account.SPARE, -piece)
                    .with(Account.GOOD, piece)
                    .inHand(-by);
            case SOLD -> flow.with(Account.SOLD, piece > 0 ? piece : -by)
                    .with(Account.CUT_LOSS, piece > 0 ? -by - piece : 0);
            case RETURNED -> flow.with(Account.RETURNED, -by);
            case SENT -> flow.with(Account.SENT, -by);
            case CONDEMNED -> flow.with(Account.CONDEMNED, -by);
            default -> flow.inHand(-by);
        }
        return flow.with(Account.RACK, by);
    }

    private void cut(Flow flow, long loss, Movement movement) {
        flow.with(Account.CUT_LOSS, loss);
        if (loss < 0) {
            faults.add("movement " + movement.number() + " cuts a piece longer than the rope that came off");
        }
    }

    /** A movement against another gives back just what that one took; an older ledger's may not. */
    private static Flow matched(Flow against, long by, Event event) {
        long difference = by - against.by.getOrDefault(Account.RACK, 0L);
        if (difference == 0) {
            return against;
        }
        return event.isOfAnOlderLedger()
                ? against.with(Account.RACK, difference).with(Account.DIFFERENCES, difference)
                : against.with(Account.RACK, difference).inHand(-difference);
    }
}
