package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerPlace;
import bitterend.stock.LoftAddress;
import bitterend.stock.Rack;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The ledger on a server, a real one. */
final class ServedLedgerTest extends LedgerContract {
    private static final LoftServer SERVER = LoftServer.shared();

    private LoftAddress loft = SERVER.newLoft();

    @Override
    LedgerPlace newPlace(Path at, Clock clock) {
        LoftAddress next = SERVER.newLoft();
        if (at.equals(folder)) {
            loft = next;
        }
        return new ServedLedgerPlace(next, folder, clock);
    }

    @Override
    LedgerPlace newPlaceOfTheSame(Clock clock) {
        return new ServedLedgerPlace(loft, folder, clock);
    }

    @Override
    Connection behind() throws SQLException {
        return SERVER.behind(loft);
    }

    @Override
    String hostile() {
        return "'); DROP TABLE movement; -- \"\u0001\n\t\u202e\ud83e\uddf5 \\ % _ <b>";
    }

    @Test
    void characterThatTheServerCannotKeep_isRefused() {
        try (Ledger ledger = place().toWrite()) {
            LedgerException refused = assertThrows(
                    LedgerException.Refused.class, () -> new Rack(ledger, "Ada").move("K1", "bay \u0000", ""));
            assertTrue(refused.sentence().contains("a character that the server cannot keep"), refused.sentence());
            assertEquals(List.of(), ledger.verify());
        }
    }

    @Test
    void lofts_keepApart() {
        LedgerPlace other = newPlace(folder.resolve("other"), CLOCK);
        other.begin(act(Event.Kind.OPENED), books -> {});
        day();
        try (Ledger ledger = other.toRead()) {
            assertEquals(List.of(), ledger.read(Ledger.Stock::movements));
            assertFalse(ledger.read(Ledger.Stock::head).ledger().equals(head().ledger()));
        }
    }

    private bitterend.stock.Head head() {
        try (Ledger ledger = place().toRead()) {
            return ledger.read(Ledger.Stock::head);
        }
    }

    @Test
    void restoring_isLeftToTheServersOwnTools() {
        LedgerException refused = assertThrows(LedgerException.Refused.class, () -> place().restore(
                        folder.resolve("b.db"), LedgerPlace.Whose.ANY, act(Event.Kind.RESTORED)));
        assertTrue(refused.sentence().contains("pg_restore"), refused.sentence());
    }

    @Test
    void tables_cannotBeEmptied() {
        day();
        assertThrows(SQLException.class, () -> behind("TRUNCATE event, fact, movement, flaw, ordered"));
        assertEquals(12, movements().size());
    }
}
