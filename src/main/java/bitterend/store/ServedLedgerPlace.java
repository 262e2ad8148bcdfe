package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerPlace;
import bitterend.stock.LoftAddress;
import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Consumer;

/**
 * A ledger among those of other lofts on a PostgreSQL server.
 *
 * @param at the loft
 * @param folder the shop folder, whose file a ledger is carried from and to
 * @param clock the time of what is booked
 */
public record ServedLedgerPlace(LoftAddress at, Path folder, Clock clock) implements LedgerPlace {
    @Override
    public String name() {
        return at.text();
    }

    @Override
    public String text() {
        return at.text();
    }

    @Override
    public boolean isInTheFolder() {
        return false;
    }

    @Override
    public boolean isKept() {
        try (ServedLedger ledger = ServedLedger.connect(at, clock)) {
            return ledger.isKept();
        }
    }

    @Override
    public void begin(Event.Act act, Consumer<Ledger.Books> first) {
        try (ServedLedger ledger = ServedLedger.connect(at, clock)) {
            ledger.begin(act, first);
        }
    }

    @Override
    public Ledger toRead() {
        return ServedLedger.open(at, clock);
    }

    @Override
    public Ledger toWrite() {
        return ServedLedger.open(at, clock);
    }

    @Override
    public Restored restore(Path backup, Whose whose, Event.Act act) {
        throw new LedgerException.Refused(
                at.text() + " is not put back from a file: a server has tools of its own for it,"
                        + " such as pg_restore. Nothing was changed");
    }

    @Override
    public Carried carry(Where where) {
        LedgerMove move = new LedgerMove(folder, at, clock);
        return where == Where.SERVER ? move.toServer() : move.toFile();
    }

    @Override
    public boolean wentOn(Path aside, Head printed) {
        return LedgerRestore.isOf(aside, printed);
    }
}
