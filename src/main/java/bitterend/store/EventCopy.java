package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Carries the events of one ledger into other rows, as they are: identity, moments, links of the chain, and how often each
 * step was taken. What the other rows have of it already stays.
 */
final class EventCopy {
    private final Sql from;
    private final Sql to;

    EventCopy(Sql from, Sql to) {
        this.from = from;
        this.to = to;
    }

    /**
     * Copies inside of a transaction of each; what was written is looked through before anybody keeps it.
     *
     * @throws LedgerException.Refused when the other rows are not the beginning of this ledger, or the copy is not sound
     */
    void copy() {
        LedgerRow whole = LedgerRow.needed(from);
        LedgerRow there = LedgerRow.read(to).orElseGet(() -> {
            LedgerRow empty = new LedgerRow(whole.id(), whole.begun(), whole.older(), 0, whole.root());
            empty.insert(to);
            return empty;
        });
        refuseAnother(whole, there);
        write(there.events());
        List<String> faults = new Verification(to, List.of()).faults();
        if (!faults.isEmpty() || !LedgerRow.read(to).equals(LedgerRow.read(from))) {
            throw new LedgerException.Refused("nothing was moved: the copy is not sound"
                    + faults.stream().findFirst().map(fault -> ", " + fault).orElse(""));
        }
    }

    private void refuseAnother(LedgerRow whole, LedgerRow there) {
        Head so = there.end();
        boolean ofIt = whole.root().equals(there.root())
                && Head.faults(so, new SqlStock(from)).isEmpty();
        if (!ofIt) {
            throw new LedgerException.Refused(
                    "nothing was moved: there is another ledger already, or one that went on otherwise, " + so.text());
        }
    }

    private void write(long behind) {
        MovementRows movements = new MovementRows(to);
        EventRows events = new EventRows(to, movements);
        Map<Long, Long> attempts = new HashMap<>();
        from.list(
                "SELECT number, attempt FROM movement WHERE attempt <> 0",
                row -> attempts.put(row.getLong(1), row.getLong(2)) == null);
        for (Event event : new SqlStock(from).events()) {
            if (event.number() > behind) {
                events.begin(event.number(), event.at(), event.act());
                for (Movement movement : event.movements()) {
                    movements.insert(movement, attempts.getOrDefault(movement.number(), 0L));
                }
                events.close(event);
            }
        }
    }
}
