package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Movement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.LongFunction;

/** Events as rows of the ledger, there and back. */
final class EventRows {
    private final Sql sql;
    private final MovementRows movements;

    EventRows(Sql sql, MovementRows movements) {
        this.sql = sql;
        this.movements = movements;
    }

    /** All events, oldest first. */
    List<Event> all() {
        Map<Long, List<Movement>> byEvent = new HashMap<>();
        movements.where("ORDER BY m.number").forEach(movement -> byEvent.computeIfAbsent(
                        movement.event(), event -> new java.util.ArrayList<>())
                .add(movement));
        Map<Long, SortedMap<String, String>> facts = new HashMap<>();
        sql.list(
                "SELECT event, name, value FROM fact",
                row -> facts.computeIfAbsent(row.getLong(1), event -> new TreeMap<>())
                                .put(row.getString(2), row.getString(3))
                        == null);
        return sql.list(
                "SELECT * FROM event ORDER BY number",
                row -> event(
                        row,
                        number -> byEvent.getOrDefault(number, List.of()),
                        number -> facts.getOrDefault(number, new TreeMap<>())));
    }

    /** The event of a number, if there is one. */
    Optional<Event> find(long number) {
        return one("SELECT * FROM event WHERE number = ?", number);
    }

    /** The event of an id, if there is one. */
    Optional<Event> find(String id) {
        return one("SELECT * FROM event WHERE id = ?", id);
    }

    /** The latest event, if there is one. */
    Optional<Event> last() {
        return one("SELECT * FROM event ORDER BY number DESC LIMIT 1");
    }

    private Optional<Event> one(String query, Object... values) {
        return sql
                .list(
                        query,
                        row -> event(
                                row,
                                number -> movements.where("WHERE m.event = ? ORDER BY m.number", number),
                                this::facts),
                        values)
                .stream()
                .findFirst();
    }

    private SortedMap<String, String> facts(long event) {
        SortedMap<String, String> facts = new TreeMap<>();
        sql.list(
                "SELECT name, value FROM fact WHERE event = ?",
                row -> facts.put(row.getString(1), row.getString(2)) == null,
                event);
        return facts;
    }

    private static Event event(
            ResultSet row, LongFunction<List<Movement>> movements, LongFunction<SortedMap<String, String>> facts)
            throws SQLException {
        long number = row.getLong("number");
        return Unreadable.unless(
                "event " + number,
                () -> new Event(
                        number,
                        Instant.parse(row.getString("at")),
                        new Event.Act(
                                row.getString("id"),
                                row.getString("who"),
                                Event.Kind.valueOf(row.getString("kind")),
                                row.getString("note"),
                                row.getLong("undoes"),
                                facts.apply(number)),
                        movements.apply(number),
                        row.getString("hash")));
    }

    /** Writes an event that is not closed yet; its movements may follow. */
    void begin(long number, Instant at, Event.Act act) {
        sql.run(
                "INSERT INTO event (number, id, at, who, kind, note, undoes, hash) VALUES (?, ?, ?, ?, ?, ?, ?, '')",
                number,
                act.id(),
                at.toString(),
                act.who(),
                act.kind().name(),
                act.note(),
                act.undoes() == 0 ? Sql.Missing.VALUE : act.undoes());
    }

    /** Writes its facts, closes it with its link of the chain, and moves the end of the ledger on. */
    void close(Event event) {
        event.act()
                .facts()
                .forEach((name, value) ->
                        sql.run("INSERT INTO fact (event, name, value) VALUES (?, ?, ?)", event.number(), name, value));
        sql.run("UPDATE event SET hash = ? WHERE number = ?", event.hash(), event.number());
        sql.run("UPDATE ledger SET events = ?, head = ?", event.number(), event.hash());
    }
}
