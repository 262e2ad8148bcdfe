package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.LedgerException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.sqlite.SQLiteConfig;

/**
 * The ledger in {@code stock.db}. A rollback journal and full synchronisation: slower than other ways, and safe on network
 * folders and against a pulled plug. Writers wait for one another.
 */
public final class SqliteLedger extends SqlLedger {
    /** The file inside a shop folder. */
    public static final String NAME = "stock.db";

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Path file;
    private final Connection connection;

    private SqliteLedger(Path file, Connection connection, Clock clock) {
        super(new Sql(connection), clock);
        this.file = file;
        this.connection = connection;
    }

    /**
     * Whether a shop keeps a ledger.
     *
     * @throws LedgerException.Unreadable when there is something of its name that is no readable file: a link that leads
     *     nowhere, a folder, a file without the right to read it
     */
    public static boolean isKeptIn(Path folder) {
        Path file = folder.resolve(NAME);
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        if (!Files.exists(file)) {
            throw new LedgerException.Unreadable(file + " is a link that leads nowhere; is the disk it is on there?");
        }
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
            throw new LedgerException.Unreadable(file + " is there, but it cannot be read");
        }
        return true;
    }

    /** Begins a ledger and writes its first event, all as one. */
    public static void create(Path folder, Clock clock, Event.Act act, Consumer<Books> first) {
        Path file = folder.resolve(NAME);
        isKeptIn(folder);
        try (SqliteLedger ledger = connect(file, clock, false)) {
            ledger.writing(() -> {
                if (!Schema.isEmpty(ledger.sql)) {
                    throw new LedgerException.Refused(file + " is there already");
                }
                Schema.update(ledger.sql, NAME, ledger.now());
                return ledger.book(act, first);
            });
        }
    }

    /** Opens the ledger of a shop to read and write; one of an older version is brought up to date. */
    public static SqliteLedger open(Path folder, Clock clock) {
        return open(folder, clock, false);
    }

    /** Opens the ledger of a shop to read; works in a folder that cannot be written. */
    public static SqliteLedger openToRead(Path folder) {
        return open(folder, Clock.systemUTC(), true);
    }

    private static SqliteLedger open(Path folder, Clock clock, boolean toRead) {
        Path file = folder.resolve(NAME);
        if (!isKeptIn(folder)) {
            throw new LedgerException.Refused("there is no " + file + ": begin one with bitterend stock open SHOP");
        }
        return openFile(file, clock, toRead);
    }

    /** Opens a ledger under any name. */
    static SqliteLedger openFile(Path file, Clock clock, boolean toRead) {
        SqliteLedger ledger = connect(file, clock, toRead);
        try {
            ledger.guarded(() -> {
                ledger.check(toRead);
                return true;
            });
            return ledger;
        } catch (RuntimeException fault) {
            ledger.close();
            throw fault;
        }
    }

    /**
     * Copies the events of other rows into a new file.
     *
     * @param from rows that nobody changes meanwhile
     */
    static boolean copied(Path file, Clock clock, Sql from) {
        try (SqliteLedger ledger = connect(file, clock, false)) {
            return ledger.writing(() -> {
                Schema.update(ledger.sql, NAME, ledger.now());
                ledger.sql.run("DELETE FROM ledger");
                new EventCopy(from, ledger.sql).copy();
                return true;
            });
        }
    }

    private void check(boolean toRead) {
        Schema.check(sql, NAME);
        if (Schema.isEmpty(sql)) {
            throw new LedgerException.Unreadable(
                    file + " was begun but never finished: begin it anew with bitterend stock open SHOP");
        }
        if (Schema.isOlder(sql)) {
            if (toRead) {
                throw new LedgerException.Unreadable(
                        file + " was written by an older version of this program: run stock verify to bring it up to"
                                + " date");
            }
            writing(() -> {
                Schema.update(sql, NAME, now());
                return true;
            });
        }
    }

    private static SqliteLedger connect(Path file, Clock clock, boolean toRead) {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(toRead);
        config.enforceForeignKeys(true);
        config.setBusyTimeout((int) PATIENCE.toMillis());
        try {
            Connection connection =
                    DriverManager.getConnection("jdbc:sqlite:" + file.toAbsolutePath(), config.toProperties());
            SqliteLedger ledger = new SqliteLedger(file, connection, clock);
            return ledger.guarded(() -> {
                if (!toRead) {
                    ledger.sql.list("PRAGMA journal_mode = DELETE", row -> row.getString(1));
                    ledger.sql.run("PRAGMA synchronous = EXTRA");
                }
                return ledger;
            });
        } catch (SQLException fault) {
            throw SqliteFaults.told(file, fault);
        }
    }

    @Override
    public List<String> verify() {
        return reading(() -> new Verification(sql, new SqliteBody(sql).faults()).faults());
    }

    @Override
    public Head backup(Path target) {
        return new LedgerCopy(target)
                .made(part -> guarded(() -> {
                    sql.run("VACUUM INTO ?", part.toAbsolutePath().toString());
                    return true;
                }));
    }

    @Override
    <T> T reading(Supplier<T> work) {
        return inTransaction("BEGIN", work);
    }

    @Override
    <T> T writing(Supplier<T> work) {
        return inTransaction("BEGIN IMMEDIATE", work);
    }

    private <T> T inTransaction(String begin, Supplier<T> work) {
        return guarded(() -> between(begin, () -> sql.script("COMMIT"), work));
    }

    private <T> T guarded(Supplier<T> work) {
        try {
            return work.get();
        } catch (Sql.Failed failed) {
            throw SqliteFaults.told(file, failed.fault());
        }
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException fault) {
            throw SqliteFaults.told(file, fault);
        }
    }
}
