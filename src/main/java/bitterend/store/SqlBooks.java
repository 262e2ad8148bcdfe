package bitterend.store;

import bitterend.measure.Length;
import bitterend.stock.Chain;
import bitterend.stock.Event;
import bitterend.stock.Holding;
import bitterend.stock.Ledger;
import bitterend.stock.Movement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The stock while one event is written. */
final class SqlBooks extends SqlStock implements Ledger.Books {
    private final long number;
    private final Instant at;
    private final List<Movement> written = new ArrayList<>();

    private Event.Act act;
    private boolean begun;

    /** Begins an event behind the latest; never earlier than that, whatever the clock says. */
    SqlBooks(Sql sql, Event.Act act, Instant now) {
        super(sql);
        this.act = act;
        number = 1 + sql.number("SELECT COALESCE(MAX(number), 0) FROM event");
        Instant last = sql.list("SELECT at FROM event WHERE number = ?", row -> row.getString(1), number - 1).stream()
                .map(Instant::parse)
                .findFirst()
                .orElse(Instant.MIN);
        at = now.isBefore(last) ? last : now;
    }

    @Override
    public Movement append(Movement.Entry entry) {
        begin();
        Optional<Holding> before = findHolding(entry.reel());
        Length had = before.filter(holding -> !holding.gone())
                .map(holding -> holding.reel().length())
                .orElse(Length.ZERO);
        Movement movement = new Movement(
                1 + sql.number("SELECT COALESCE(MAX(number), 0) FROM movement"),
                number,
                at,
                act.who(),
                entry,
                1 + before.map(Holding::movements).orElse(0L),
                entry.left().minus(had));
        rows.insert(movement, attempt(entry));
        written.add(movement);
        return movement;
    }

    /** How often this step was written and undone before: the same step cannot stand twice. */
    private long attempt(Movement.Entry entry) {
        Movement.Origin origin = entry.origin();
        return origin.step().isEmpty()
                ? 0
                : sql.number(
                        "SELECT COUNT(*) FROM movement m JOIN movement u ON u.undoes = m.number"
                                + " WHERE m.plan = ? AND m.reel = ? AND m.step = ? AND m.undoes IS NULL",
                        origin.plan(),
                        entry.reel(),
                        origin.step());
    }

    @Override
    public void fact(String name, String value) {
        act = act.with(name, value);
    }

    private void begin() {
        if (!begun) {
            events.begin(number, at, act);
            begun = true;
        }
    }

    /** Closes the event; nothing when there is nothing to close. */
    Optional<Event> close() {
        if (!begun && act.facts().isEmpty() && act.undoes() == 0) {
            return Optional.empty();
        }
        begin();
        Event open = new Event(number, at, act, written, "");
        Event event = new Event(number, at, act, written, Chain.link(head().hash(), open));
        events.close(event);
        return Optional.of(event);
    }
}
