package bitterend.stock;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;

/** Where the ledger of one shop is kept, if it keeps one; opened anew for each use, so that nobody keeps others waiting. */
public interface LedgerPlace {
    /** What it is called, such as {@code stock.db}. */
    String name();

    /** Where it is or would be, for people: a file with its folder, or a loft on a server. */
    String text();

    /** Whether it is a file of the shop folder, so that whoever watches the folder sees each booking. */
    boolean isInTheFolder();

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

    /** Whose backup may take the place of the ledger. */
    enum Whose {
        /** One of the ledger that is there; any where there is none that can be read. */
        ITS_OWN,
        /** One of another ledger, too. */
        ANY
    }

    /**
     * A backup that took the place of the ledger.
     *
     * @param head the head of the ledger that stands now
     * @param aside where the replaced ledger is; nothing when there was none
     */
    record Restored(Head head, Optional<Path> aside) {}

    /**
     * Puts a backup in the place of the ledger, which goes aside.
     *
     * @param act who does it, and why; of kind {@link Event.Kind#RESTORED}
     * @throws LedgerException.Refused when the backup is missing, is not sound or is of another ledger than it may be; nothing
     *     was changed
     */
    Restored restore(Path backup, Whose whose, Event.Act act);

    /** Where a ledger may be carried. */
    enum Where {
        /** To the server that the shop names. */
        SERVER,
        /** Into the file of the shop folder. */
        FILE
    }

    /**
     * A ledger that was carried to another place, as it was.
     *
     * @param head its head, the same as before
     * @param now where it is now
     * @param aside what became of the other: the file that it is kept as; nothing where a loft was left behind
     */
    record Carried(Head head, String now, Optional<Path> aside) {}

    /**
     * Carries the whole ledger to the other place that the shop has for one: its events, their moments and the links of the
     * chain stay as they are. Nobody books meanwhile; where it was it is no longer used. Done again after it was cut short, it
     * is brought to its end.
     *
     * @throws LedgerException.Refused when there is no such place, or another ledger is there; nothing was changed
     */
    Carried carry(Where where);

    /** Whether a ledger that went aside is still there, and went on to or beyond a printed head. */
    boolean wentOn(Path aside, Head printed);
}
