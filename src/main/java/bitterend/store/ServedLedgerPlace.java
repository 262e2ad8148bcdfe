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

/** A ledger among those of other lofts on a PostgreSQL server. */
public final class ServedLedgerPlace implements LedgerPlace {
    private final LoftAddress at;
    private final Clock clock;

    private volatile boolean begun;

    /**
     * The place of a loft.
     *
     * @param clock the time of what is booked
     */
    public ServedLedgerPlace(LoftAddress at, Clock clock) {
        this.at = at;
        this.clock = clock;
    }

    @Override
    public String name() {
        return at.text();
    }

    /** Once begun a loft stays: it is asked for until then. */
    @Override
    public boolean isKept() {
        if (!begun) {
            try (ServedLedger ledger = ServedLedger.connect(at, clock)) {
                begun = ledger.isKept();
            }
        }
        return begun;
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
    public boolean wentOn(Path aside, Head printed) {
        return false;
    }
}
