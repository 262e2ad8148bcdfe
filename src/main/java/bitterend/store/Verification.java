package bitterend.store;

import bitterend.measure.Length;
import bitterend.stock.Balance;
import bitterend.stock.Chain;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import bitterend.stock.PieceAccount;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.LongFunction;

/**
 * Adds the whole ledger up again, event by event and movement by movement, and follows its chain.
 * Rows that cannot be read are told like any other fault.
 */
final class Verification {
    private static final LedgerRow LOST = new LedgerRow("", Instant.MIN, 0, 0, "");

    private final Sql sql;
    private final SqlStock stock;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Long> counts = new HashMap<>();
    private final Map<String, Length> lengths = new HashMap<>();
    private final Map<Long, Movement> earlier = new HashMap<>();
    private final PieceAccount pieces = new PieceAccount();
    private final Balance balance = new Balance();

    private long nextMovement = 1;

    /** @param body what is wrong with the body that the rows are kept in */
    Verification(Sql sql, List<String> body) {
        this.sql = sql;
        faults.addAll(body);
        stock = new SqlStock(sql);
    }

    List<String> faults() {
        try {
            addEvents();
        } catch (LedgerException.Unreadable nonsense) {
            faults.add(nonsense.sentence());
        }
        addAttempts();
        faults.addAll(balance.faults());
        return List.copyOf(faults);
    }

    private void addEvents() {
        Optional<LedgerRow> there = LedgerRow.read(sql);
        unless(there.isPresent(), "the ledger has lost its identity");
        LedgerRow root = there.orElse(LOST);
        String hash = there.map(LedgerRow::root).orElse("");
        Instant last = Instant.MIN;
        long next = 1;
        LongFunction<Event> events = events();
        for (Link link : sql.list("SELECT number, hash FROM event ORDER BY number", Link::of)) {
            missing(next, link.number());
            next = link.number() + 1;
            String before = hash;
            try {
                Event event = events.apply(link.number());
                String name =
                        "event " + link.number() + " (" + event.act().kind().word() + ")";
                unless(
                        Chain.link(before, event).equals(link.hash()),
                        name + " or what is before it was changed: the chain breaks here");
                unless(
                        event.number() <= root.older() || !event.at().isBefore(last),
                        name + " is dated " + event.at() + ", before the event that came earlier");
                last = event.at();
                event.movements().forEach(this::add);
                balance.add(event);
            } catch (LedgerException.Unreadable nonsense) {
                faults.add(nonsense.sentence());
            }
            hash = link.hash();
        }
        missing(next, root.events() + 1);
        unless(next <= root.events() + 1, "the ledger counts " + root.events() + " events, there are " + (next - 1));
        unless(
                next != root.events() + 1 || root.head().equals(hash),
                "the end of the chain is not that of the last event");
    }

    /** All at once where all can be read; else one by one, so that each that cannot is told. */
    private LongFunction<Event> events() {
        try {
            Map<Long, Event> all = new HashMap<>();
            stock.events().forEach(event -> all.put(event.number(), event));
            return number -> Objects.requireNonNull(all.get(number));
        } catch (LedgerException.Unreadable some) {
            return number -> stock.findEvent(number).orElseThrow();
        }
    }

    /** The same step of a plan stands once: it is numbered by how often it was taken back before. */
    private void addAttempts() {
        String wrong =
                "SELECT m.number FROM movement m WHERE m.attempt <> CASE WHEN m.step = '' OR m.undoes IS NOT NULL"
                        + " THEN 0 ELSE (SELECT COUNT(*) FROM movement e JOIN movement u ON u.undoes = e.number"
                        + " WHERE e.plan = m.plan AND e.reel = m.reel AND e.step = m.step AND u.number < m.number) END";
        sql.list(wrong, row -> row.getLong(1))
                .forEach(number -> faults.add("movement " + number + " is of a step that is counted wrongly"));
    }

    private void missing(long from, long to) {
        for (long number = from; number < to; number++) {
            faults.add("event " + number + " is missing");
        }
    }

    /** An event and its link, as stored. */
    private record Link(long number, String hash) {
        static Link of(ResultSet row) throws SQLException {
            return new Link(row.getLong(1), row.getString(2));
        }
    }

    private void add(Movement movement) {
        Movement.Entry entry = movement.entry();
        String name = "movement " + movement.number() + " (" + entry.kind().word() + ", reel " + entry.reel() + ")";
        unless(
                movement.number() == nextMovement,
                name + " follows on movement " + (nextMovement - 1) + ": one between is missing");
        nextMovement = movement.number() + 1;
        long count = counts.merge(entry.reel(), 1L, Long::sum);
        unless(movement.count() == count, name + " is numbered " + movement.count() + ", it is the " + count + ".");
        Length length = lengths.merge(entry.reel(), movement.by(), Length::plus);
        unless(
                length.equals(entry.left()),
                name + " leaves " + entry.left().mm() + " mm, the sum of the movements is " + length.mm() + " mm");
        String parent = entry.origin().parent();
        unless(parent.isEmpty() || counts.containsKey(parent), name + " comes off a reel that is not there: " + parent);
        if (entry.origin().undoes() != 0) {
            Movement undone = earlier.get(entry.origin().undoes());
            unless(undone != null && undone.entry().reel().equals(entry.reel()), name + " undoes nothing of its reel");
        }
        pieces.add(movement).ifPresent(wrong -> faults.add(name + " " + wrong));
        earlier.put(movement.number(), movement);
    }

    private void unless(boolean kept, String sentence) {
        if (!kept) {
            faults.add(sentence);
        }
    }
}
