package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.sqlite.SQLiteConfig;

/**
 * The ledger in {@code stock.db}. A rollback journal and full synchronisation: slower than other ways, and safe on network
 * folders and against a pulled plug. Writers wait for one another.
 */
public final class SqliteLedger implements Ledger {
    /** The file inside a shop folder. */
    public static final String NAME = "stock.db";

    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Path file;
    private final Connection connection;
    private final Sql sql;
    private final Clock clock;

    private SqliteLedger(Path file, Connection connection, Clock clock) {
        this.file = file;
        this.connection = connection;
        this.clock = clock;
        sql = new Sql(connection);
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
    public <T> T read(Function<Stock, T> work) {
        return inTransaction("BEGIN", () -> work.apply(new SqliteStock(sql)));
    }

    @Override
    public Optional<Event> change(Event.Act act, Consumer<Books> work) {
        return writing(() -> {
            Optional<Event> earlier = new SqliteStock(sql).eventOfId(act.id());
            earlier.ifPresent(event -> refuseAnother(event, act));
            return earlier.isPresent() ? earlier : book(act, work);
        });
    }

    private static void refuseAnother(Event earlier, Event.Act act) {
        if (earlier.act().kind() != act.kind() || !isSaidAlike(earlier.fact(Event.ASKED), act)) {
            throw new LedgerException.Refused("the id " + act.id() + " was given to event " + earlier.number() + " ("
                    + earlier.act().kind().word() + "), which was something else; give this one another");
        }
    }

    /** Whether an act was asked for in the words of an earlier one; an event of before words were kept may be any. */
    private static boolean isSaidAlike(String earlier, Event.Act act) {
        return earlier.isEmpty() || earlier.equals(act.facts().getOrDefault(Event.ASKED, ""));
    }

    private Optional<Event> book(Event.Act act, Consumer<Books> work) {
        SqliteBooks books = new SqliteBooks(sql, act, now());
        work.accept(books);
        return books.close();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    @Override
    public List<String> verify() {
        return inTransaction("BEGIN", () -> new Verification(sql).faults());
    }

    @Override
    public Head backup(Path target) {
        return new LedgerCopy(target)
                .made(part -> guarded(() -> {
                    sql.run("VACUUM INTO ?", part.toAbsolutePath().toString());
                    return true;
                }));
    }

    private <T> T writing(Supplier<T> work) {
        return inTransaction("BEGIN IMMEDIATE", work);
    }

    private <T> T inTransaction(String begin, Supplier<T> work) {
        return guarded(() -> {
            sql.script(begin);
            boolean done = false;
            try {
                T result = work.get();
                sql.script("COMMIT");
                done = true;
                return result;
            } finally {
                if (!done) {
                    rollBack();
                }
            }
        });
    }

    /** A failed write may have rolled itself back; then there is nothing left to roll back. */
    private void rollBack() {
        try {
            sql.script("ROLLBACK");
        } catch (Sql.Failed alreadyRolledBack) {
            return;
        }
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
