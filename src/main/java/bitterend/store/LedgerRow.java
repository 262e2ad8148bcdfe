package bitterend.store;

import bitterend.stock.Chain;
import bitterend.stock.Head;
import bitterend.stock.LedgerException;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * The one row of a ledger about itself.
 *
 * @param id its identity
 * @param begun when it was begun
 * @param older how many of its events were made from a ledger of an older version
 * @param events how many events it has
 * @param head the end of the chain
 */
record LedgerRow(String id, Instant begun, long older, long events, String head) {
    /** A ledger that begins now, without an event yet. */
    static LedgerRow begun(Instant now, long older) {
        String id = UUID.randomUUID().toString().replace("-", "");
        return new LedgerRow(id, now, older, 0, Chain.root(id, now, older));
    }

    /** The row as it is kept; nothing when there is none, or more than one. */
    static Optional<LedgerRow> read(Sql sql) {
        var rows = sql.list(
                "SELECT id, begun, older, events, head FROM ledger",
                row -> Unreadable.unless(
                        "the row of the ledger itself",
                        () -> new LedgerRow(
                                row.getString(1),
                                Instant.parse(row.getString(2)),
                                row.getLong(3),
                                row.getLong(4),
                                row.getString(5))));
        return rows.size() == 1 ? Optional.of(rows.get(0)) : Optional.empty();
    }

    /** The row of a ledger that must have one. */
    static LedgerRow needed(Sql sql) {
        return read(sql)
                .orElseThrow(() -> new LedgerException.Unreadable("the ledger is damaged: it has lost its identity"));
    }

    /** The end of the chain, by which a ledger is held against another. */
    Head end() {
        return new Head(id, events, head);
    }

    void insert(Sql sql) {
        sql.run(
                "INSERT INTO ledger (one, id, begun, older, events, head) VALUES (1, ?, ?, ?, ?, ?)",
                id,
                begun.toString(),
                older,
                events,
                head);
    }

    /** The beginning of its chain. */
    String root() {
        return Chain.root(id, begun, older);
    }
}
