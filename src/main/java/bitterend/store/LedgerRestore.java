package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerPlace.Restored;
import bitterend.stock.LedgerPlace.Whose;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;

/**
 * Puts a backup back in the place of a ledger. The copy is looked through first; the ledger that is there goes aside with
 * its journal, which would else be played into the copy and destroy it.
 */
final class LedgerRestore {
    private static final String JOURNAL = "-journal";
    static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss").withZone(ZoneOffset.UTC);

    private final Path ledger;
    private final Clock clock;

    /** @throws LedgerException.Unreadable when the ledger of the folder is a link that leads nowhere */
    LedgerRestore(Path folder, Clock clock) {
        this.ledger = file(folder);
        this.clock = clock;
    }

    /** The file itself where the ledger of the folder is a link to it: the link stays. */
    private static Path file(Path folder) {
        Path named = folder.resolve(SqliteLedger.NAME);
        if (!Files.isSymbolicLink(named) || !SqliteLedger.isKeptIn(folder)) {
            return named;
        }
        try {
            return named.toRealPath();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    /**
     * Restores a backup.
     *
     * @param whose what the backup may be of
     * @param act who does it, and why; of kind {@link Event.Kind#RESTORED}
     * @throws LedgerException.Refused when the backup is missing, is not sound or is of another ledger than it may be; nothing
     *     was changed
     */
    Restored from(Path backup, Whose whose, Event.Act act) {
        if (!Files.isRegularFile(backup)) {
            throw new LedgerException.Refused("there is no file " + backup);
        }
        Path part = beside(".restoring");
        try {
            Files.deleteIfExists(sibling(part, JOURNAL));
            Files.copy(backup, part, StandardCopyOption.REPLACE_EXISTING);
            if (Files.exists(sibling(backup, JOURNAL))) {
                Files.copy(sibling(backup, JOURNAL), sibling(part, JOURNAL));
            }
            Optional<Path> aside = asideName();
            Event.Act kept = aside.map(Path::getFileName)
                    .map(name -> act.with(Event.ASIDE, name.toString()))
                    .orElse(act);
            Head head = booked(part, backup, whose, kept);
            LedgerCopy.synced(part);
            putAside(aside);
            Files.move(part, ledger, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            return new Restored(head, aside);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } finally {
            sweep(part);
        }
    }

    /** Brings the copy up to date, looks it through and books that it was restored; its head afterwards. */
    private Head booked(Path part, Path backup, Whose whose, Event.Act act) {
        try (Ledger copy = SqliteLedger.openFile(part, clock, false)) {
            List<String> faults = copy.verify();
            if (!faults.isEmpty()) {
                throw new LedgerException.Refused(
                        backup + " is no sound ledger, nothing was changed: " + faults.get(0));
            }
            Head from = copy.read(Ledger.Stock::head);
            Optional<Head> there = replaced();
            there.filter(own -> whose == Whose.ITS_OWN).ifPresent(own -> refuseAnother(backup, from, own));
            Event.Act known = act.with(Event.FROM, from.text());
            copy.change(there.map(own -> known.with(Event.REPLACED, own.text())).orElse(known), books -> {});
            return copy.read(Ledger.Stock::head);
        } catch (LedgerException.Unreadable fault) {
            throw new LedgerException.Refused(backup + " is no sound ledger, nothing was changed");
        }
    }

    private static void refuseAnother(Path backup, Head from, Head own) {
        if (!from.ledger().equals(own.ledger())) {
            throw new LedgerException.Refused(
                    backup + " is of another ledger (" + from.text() + ") than the one that is" + " there ("
                            + own.text() + "), nothing was changed; if that is meant, give --other-ledger too");
        }
    }

    /** The head of the ledger that is there, if it can be read; reading it also rolls back what a crash left half done. */
    private Optional<Head> replaced() {
        if (!Files.isRegularFile(ledger)) {
            return Optional.empty();
        }
        try (Ledger there = SqliteLedger.openFile(ledger, clock, false)) {
            return Optional.of(there.read(Ledger.Stock::head));
        } catch (LedgerException damaged) {
            return Optional.empty();
        }
    }

    /** Where the ledger that is there will be kept; nothing when there is none. */
    private Optional<Path> asideName() {
        return Files.exists(ledger, LinkOption.NOFOLLOW_LINKS)
                ? Optional.of(unused(ledger, "-replaced-" + MOMENT.format(clock.instant())))
                : Optional.empty();
    }

    private void putAside(Optional<Path> aside) throws IOException {
        if (aside.isPresent()) {
            Files.copy(ledger, aside.get());
            LedgerCopy.synced(aside.get());
        }
        Path journal = sibling(ledger, JOURNAL);
        if (Files.exists(journal)) {
            Path name = aside.orElseGet(() -> unused(ledger, "-replaced-" + MOMENT.format(clock.instant())));
            Files.copy(journal, sibling(name, JOURNAL), StandardCopyOption.REPLACE_EXISTING);
            Files.delete(journal);
        }
    }

    /** Whether a ledger that was put aside is there, and went on to or beyond a printed head. */
    static boolean isOf(Path aside, Head printed) {
        if (!Files.isRegularFile(aside)) {
            return false;
        }
        try (Ledger replaced = SqliteLedger.openFile(aside, Clock.systemUTC(), true)) {
            return replaced.read(stock -> Head.faults(printed, stock)).isEmpty();
        } catch (LedgerException unreadable) {
            return false;
        }
    }

    /** A name that no file has: two ledgers may be replaced within one second. */
    static Path unused(Path ledger, String end) {
        Path name = sibling(ledger, end);
        for (int number = 2; Files.exists(name, LinkOption.NOFOLLOW_LINKS); number++) {
            name = sibling(ledger, end + "-" + number);
        }
        return name;
    }

    private Path beside(String end) {
        return sibling(ledger, end);
    }

    private static Path sibling(Path file, String end) {
        return file.resolveSibling(file.getFileName() + end);
    }

    private static void sweep(Path part) {
        try {
            Files.deleteIfExists(part);
            Files.deleteIfExists(sibling(part, JOURNAL));
        } catch (IOException stays) {
            return;
        }
    }
}
