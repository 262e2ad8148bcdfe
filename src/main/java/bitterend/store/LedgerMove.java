package bitterend.store;

import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LedgerPlace.Carried;
import bitterend.stock.LoftAddress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/**
 * Carries a ledger from the file of a shop folder to a loft on a server, and back. Both are held meanwhile, so that nobody
 * books into what is left behind; what is left behind is kept and no longer used.
 */
final class LedgerMove {
    private final Path folder;
    private final LoftAddress at;
    private final Clock clock;

    LedgerMove(Path folder, LoftAddress at, Clock clock) {
        this.folder = folder;
        this.at = at;
        this.clock = clock;
    }

    Carried toServer() {
        if (!SqliteLedger.isKeptIn(folder)) {
            throw new LedgerException.Refused("there is no " + file() + " to carry to " + at.text());
        }
        Head head;
        try (SqliteLedger ledger = SqliteLedger.open(folder, clock)) {
            refuseUnsound(ledger.verify(), file().toString());
            head = ledger.writing(() -> {
                try (ServedLedger loft = ServedLedger.connect(at, clock)) {
                    loft.takeOver(ledger.sql);
                }
                return new SqlStock(ledger.sql).head();
            });
        }
        return new Carried(head, at.text(), Optional.of(putAside()));
    }

    Carried toFile() {
        try (ServedLedger loft = ServedLedger.open(at, clock)) {
            refuseUnsound(loft.verify(), at.text());
            Head head = loft.handOver(this::write);
            return new Carried(head, file().toString(), Optional.empty());
        }
    }

    /** Writes the file, unless it is there as it is to be, since this was cut short before. */
    private void write(Sql loft) {
        if (SqliteLedger.isKeptIn(folder)) {
            refuseUnlessWhole(loft);
        } else {
            new LedgerCopy(file()).made(part -> SqliteLedger.copied(part, clock, loft));
        }
    }

    private void refuseUnlessWhole(Sql loft) {
        try (SqliteLedger there = SqliteLedger.openFile(file(), clock, true)) {
            if (!there.read(Ledger.Stock::head).equals(new SqlStock(loft).head())) {
                throw new LedgerException.Refused(
                        file() + " is there already, with another ledger or another end of it;" + " nothing was moved");
            }
        }
    }

    private static void refuseUnsound(List<String> faults, String where) {
        if (!faults.isEmpty()) {
            throw new LedgerException.Refused(where + " is not sound, nothing was moved: " + faults.get(0)
                    + "; all of it: bitterend stock verify SHOP");
        }
    }

    private Path putAside() {
        Path aside = LedgerRestore.unused(file(), "-moved-" + LedgerRestore.MOMENT.format(clock.instant()));
        try {
            return Files.move(file(), aside);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private Path file() {
        return folder.resolve(SqliteLedger.NAME);
    }
}
