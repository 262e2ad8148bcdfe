package bitterend.stock;

import java.util.function.Consumer;

/** Where the ledger of one shop is kept, if it keeps one; opened anew for each use, so that nobody keeps others waiting. */
public interface LedgerPlace {
    /** What it is called, such as {@code stock.db}. */
    String name();

    /** Whether the shop keeps one. */
    boolean isKept();

    /**
     * Begins it with its first event.
     *
     * @throws LedgerException.Refused when there is one
     */
    void begin(Event.Act act, Consumer<Ledger.Books> first);

    /** Opens it to read; works in a folder that cannot be written. */
    Ledger toRead();

    /** Opens it to read and write. */
    Ledger toWrite();
}
