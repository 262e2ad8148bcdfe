package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerPlace;
import java.nio.file.Path;
import java.time.Clock;
import java.util.function.Consumer;

/**
 * A ledger in one file of the shop folder.
 *
 * @param folder the shop folder
 * @param clock the time of what is booked
 */
public record SqliteLedgerPlace(Path folder, Clock clock) implements LedgerPlace {
    @Override
    public String name() {
        return SqliteLedger.NAME;
    }

    @Override
    public String text() {
        return folder.resolve(SqliteLedger.NAME).toString();
    }

    @Override
    public boolean isInTheFolder() {
        return true;
    }

    @Override
    public boolean isKept() {
        return SqliteLedger.isKeptIn(folder);
    }

    @Override
    public void begin(Event.Act act, Consumer<Ledger.Books> first) {
        SqliteLedger.create(folder, clock, act, first);
    }

    @Override
    public Ledger toRead() {
        return SqliteLedger.openToRead(folder);
    }

    @Override
    public Ledger toWrite() {
        return SqliteLedger.open(folder, clock);
    }

    @Override
    public Restored restore(Path backup, Whose whose, Event.Act act) {
        return new LedgerRestore(folder, clock).from(backup, whose, act);
    }

    @Override
    public Carried carry(Where where) {
        throw new LedgerException.Refused("shop.json names no server that " + text()
                + " could be carried to or from; how: bitterend stock move-ledger" + " --help");
    }

    @Override
    public boolean wentOn(Path aside, Head printed) {
        return LedgerRestore.isOf(aside, printed);
    }
}
