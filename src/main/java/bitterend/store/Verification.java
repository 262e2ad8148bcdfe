package bitterend.store;

import bitterend.measure.Length;
import bitterend.stock.Chain;
import bitterend.stock.Event;
import bitterend.stock.LedgerException;
import bitterend.stock.Movement;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Adds the whole ledger up again, event by event and movement by movement, follows its chain, and looks at the file behind
 * it. Rows that cannot be read are told like any other fault.
 */
final class Verification {
    private final Sql sql;
    private final SqliteStock stock;
    private final List<String> faults = new ArrayList<>();
    private final Map<String, Long> counts = new HashMap<>();
    private final Map<String, Length> lengths = new HashMap<>();
    private final Map<Long, Movement> earlier = new HashMap<>();
    private final Set<String> cut = new HashSet<>();

    private long nextMovement = 1;

    Verification(Sql sql) {
        this.sql = sql;
        stock = new SqliteStock(sql);
    }

    List<String> faults() {
        for (String answer : sql.list("PRAGMA integrity_check", row -> row.getString(1))) {
            unless(answer.equals("ok"), "the file is damaged: " + answer);
        }
        int strays =
                sql.list("PRAGMA foreign_key_check", row -> row.getString(1)).size();
        unless(strays == 0, strays + " rows speak of events or movements that are not there");
        addParts();
        addEvents();
        return List.copyOf(faults);
    }

    /** Tables, indexes and triggers, against those of a ledger that is begun now. */
    private void addParts() {
        Map<String, String> there = Schema.parts(sql);
        try (Connection empty = DriverManager.getConnection("jdbc:sqlite::memory:")) {
            Sql fresh = new Sql(empty);
            Schema.update(fresh, SqliteLedger.NAME, Instant.EPOCH);
            Schema.parts(fresh).forEach((name, made) -> {
                String is = there.remove(name);
                unless(is != null, "the " + name + " is missing: somebody changed the file by hand");
                unless(is == null || is.equals(made), "the " + name + " is not as it was made");
            });
        } catch (SQLException fault) {
            throw new Sql.Failed(fault);
        }
        there.keySet().forEach(name -> faults.add("the " + name + " is no part of a ledger"));
    }

    private void addEvents() {
        long older = 0;
        String hash = "";
        long said = 0;
        for (Ledger row : sql.list("SELECT id, older, events, head FROM ledger", Ledger::of)) {
            older = row.older();
            hash = Chain.root(row.id(), older);
            said = row.events();
            if (said == 0) {
                unless(row.head().equals(hash), "the identity of the ledger was changed");
            }
        }
        unless(!hash.isEmpty(), "the ledger has lost its identity");
        Instant last = Instant.MIN;
        long next = 1;
        for (long number : sql.list("SELECT number FROM event ORDER BY number", row -> row.getLong(1))) {
            for (; next < number; next++) {
                faults.add("event " + next + " is missing");
            }
            next = number + 1;
            String name = "event " + number;
            String stored = sql.list("SELECT hash FROM event WHERE number = ?", row -> "" + row.getString(1), number)
                    .get(0);
            try {
                Event event = stock.findEvent(number).orElseThrow();
                unless(
                        Chain.link(hash, event).equals(stored),
                        name + " (" + event.act().kind().word()
                                + ") or what stands before it was changed: the chain breaks here");
                unless(
                        number <= older || !event.at().isBefore(last),
                        name + " is dated " + event.at() + ", before the event that came earlier");
                last = event.at();
                event.movements().forEach(this::add);
            } catch (LedgerException.Unreadable nonsense) {
                faults.add(nonsense.sentence());
            }
            hash = stored;
        }
        for (; next <= said; next++) {
            faults.add("event " + next + " is missing");
        }
        unless(next == said + 1, "the ledger counts " + said + " events, there are " + (next - 1));
        if (said == next - 1) {
            unless(stock.head().hash().equals(hash), "the end of the chain is not that of the last event");
        }
    }

    private record Ledger(String id, long older, long events, String head) {
        static Ledger of(java.sql.ResultSet row) throws SQLException {
            return new Ledger(row.getString(1), row.getLong(2), row.getLong(3), row.getString(4));
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
        addPiece(entry, name);
        earlier.put(movement.number(), movement);
    }

    private void addPiece(Movement.Entry entry, String name) {
        String piece = entry.origin().piece();
        if (entry.origin().undoes() != 0) {
            Movement undone = earlier.get(entry.origin().undoes());
            unless(undone != null && undone.entry().reel().equals(entry.reel()), name + " undoes nothing of its reel");
            if (undone != null) {
                takeBack(undone.entry());
            }
            return;
        }
        switch (entry.kind()) {
            case CUT -> unless(cut.add(piece), name + " cuts a piece a second time: " + piece);
            case SPOILED, BACK_ON_RACK -> unless(cut.remove(piece), name + " is of a piece that is not cut: " + piece);
            case GIVEN -> {
                unless(
                        cut.remove(entry.origin().was()),
                        name + " is of a piece that is not cut: "
                                + entry.origin().was());
                unless(cut.add(piece), name + " makes a piece a second time: " + piece);
            }
            default -> {}
        }
    }

    private void takeBack(Movement.Entry undone) {
        switch (undone.kind()) {
            case CUT -> cut.remove(undone.origin().piece());
            case SPOILED, BACK_ON_RACK -> cut.add(undone.origin().piece());
            case GIVEN -> {
                cut.remove(undone.origin().piece());
                cut.add(undone.origin().was());
            }
            default -> {}
        }
    }

    private void unless(boolean kept, String sentence) {
        if (!kept) {
            faults.add(sentence);
        }
    }
}
