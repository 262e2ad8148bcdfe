package bitterend.store;

import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.function.Consumer;

/** A copy of a ledger as a file of its own. It is made beside its place and put there when it is whole. */
final class LedgerCopy {
    private final Path target;
    private final Path part;

    LedgerCopy(Path target) {
        this.target = target;
        part = target.resolveSibling(target.getFileName() + ".part");
    }

    /** Makes the copy; what is there already is never replaced. */
    Head made(Consumer<Path> copying) {
        refuseKnown();
        try {
            Files.deleteIfExists(part);
            copying.accept(part);
            synced(part);
            Head head = head();
            refuseKnown();
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
            return head;
        } catch (FileAlreadyExistsException there) {
            throw known();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        } catch (LedgerException.Unwritable fault) {
            throw new LedgerException.Unwritable(
                    "there is no backup in " + target + ": it could not be written whole ("
                            + fault.sentence().replace("nothing was booked, ", "") + ")",
                    fault);
        } finally {
            sweep();
        }
    }

    private void refuseKnown() {
        Path in = target.toAbsolutePath().getParent();
        if (in != null && !Files.isDirectory(in)) {
            throw new LedgerException.Refused("there is no backup in " + target + ": there is no folder " + in);
        }
        if (Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            throw known();
        }
    }

    private LedgerException.Refused known() {
        return new LedgerException.Refused(target + " is there already; nothing is replaced");
    }

    private Head head() {
        try (Ledger copy = SqliteLedger.openFile(part, Clock.systemUTC(), true)) {
            return copy.read(Ledger.Stock::head);
        }
    }

    private void sweep() {
        try {
            Files.deleteIfExists(part);
        } catch (IOException stays) {
            return;
        }
    }

    /** On the disk, not only in the memory of the machine. */
    static void synced(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }
}
