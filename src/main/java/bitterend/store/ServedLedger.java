package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Head;
import bitterend.stock.LedgerException;
import bitterend.stock.LoftAddress;
import bitterend.stock.Neighbours;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The ledger of a loft on a PostgreSQL server, in a schema of its own. Writers of one loft wait for one another at its row
 * about itself; those of other lofts do not.
 */
final class ServedLedger extends SqlLedger {
    private static final Duration PATIENCE = Duration.ofSeconds(20);
    /** The lock of a database that whoever books between lofts has; it means nothing but to this program. */
    private static final long BETWEEN_LOFTS = 0x42456e64;

    private static final Duration BETWEEN = Duration.ofMillis(250);

    private final LoftAddress at;
    private final Connection connection;
    private final Clock clock;

    private ServedLedger(LoftAddress at, Connection connection, Clock clock) {
        super(new Sql(connection), clock);
        this.at = at;
        this.connection = connection;
        this.clock = clock;
    }

    /** The way to the server is lost between the last word and its answer. */
    private static final class InDoubt extends LedgerException {
        private static final long serialVersionUID = 1;

        InDoubt(LoftAddress at, Sql.Failed fault) {
            super(at.text() + ": the server went away before it said whether it kept this; do it once more", fault);
        }
    }

    /** A way to a loft, begun or not. */
    static ServedLedger connect(LoftAddress at, Clock clock) {
        try {
            return new ServedLedger(at, ServerConnection.to(at), clock);
        } catch (SQLException fault) {
            throw ServerFaults.told(at, fault);
        }
    }

    /** Opens a loft that was begun. */
    static ServedLedger open(LoftAddress at, Clock clock) {
        ServedLedger ledger = connect(at, clock);
        try {
            ledger.guarded(() -> {
                if (!ledger.body().isThere()) {
                    throw new LedgerException.Refused(
                            "there is no " + at.text() + " yet: begin one with bitterend stock open SHOP");
                }
                ledger.body().check(at.text());
                ledger.refuseMoved();
                return true;
            });
            return ledger;
        } catch (RuntimeException fault) {
            ledger.close();
            throw fault;
        }
    }

    /** Whether the loft was begun. */
    boolean isKept() {
        return guarded(() -> body().isThere());
    }

    /** Begins the loft and writes its first event, all as one. */
    void begin(Event.Act act, Consumer<Books> first) {
        settled(
                act,
                () -> kept(() -> {
                    make();
                    LedgerRow.begun(now(), 0).insert(sql);
                    return book(act, first);
                }));
    }

    private void refuseMoved() {
        String head = moved();
        if (!head.isEmpty()) {
            throw new LedgerException.Refused(
                    at.text() + " was moved away into a file, with the head " + head
                            + ": take \"ledger\" out of shop.json, or carry the file here again with bitterend stock move-ledger SHOP");
        }
    }

    private String moved() {
        return sql.list("SELECT moved FROM ledger", row -> row.getString(1)).stream()
                .findFirst()
                .orElse("");
    }

    /**
     * Takes over the events of a file that nobody writes meanwhile, where there is no loft yet or the one that was left behind
     * when they were moved away.
     */
    void takeOver(Sql file) {
        kept(() -> {
            if (body().isThere()) {
                lock();
                boolean isWhole = LedgerRow.read(sql).equals(LedgerRow.read(file));
                if (moved().isEmpty() && !isWhole) {
                    throw there();
                }
            } else {
                make();
            }
            new EventCopy(file, sql).copy();
            sql.run("UPDATE ledger SET moved = ''");
            return true;
        });
    }

    /** Hands its events over, and is left behind. */
    Head handOver(Consumer<Sql> taking) {
        return writing(() -> {
            Head head = new SqlStock(sql).head();
            taking.accept(sql);
            sql.run("UPDATE ledger SET moved = ?", head.text());
            return head;
        });
    }

    private void make() {
        if (body().isThere()) {
            throw there();
        }
        try {
            body().make();
        } catch (Sql.Failed failed) {
            throw ServerFaults.isThere(failed.fault()) ? there() : failed;
        }
    }

    private LedgerException.Refused there() {
        return new LedgerException.Refused(at.text() + " is there already");
    }

    private ServedBody body() {
        return new ServedBody(sql, ServerConnection.schema(at));
    }

    @Override
    public Optional<Event> change(Event.Act act, Consumer<Books> work) {
        return settled(act, () -> super.change(act, work));
    }

    @Override
    public Optional<Event> changeAmong(Event.Act act, Consumer<Books> work) {
        return settled(
                act,
                () -> kept(() -> {
                    sql.list("SELECT pg_advisory_xact_lock(?)", row -> true, BETWEEN_LOFTS);
                    lock();
                    return booked(act, work);
                }));
    }

    @Override
    public Neighbours neighbours() {
        return new ServedNeighbours(sql, at);
    }

    @Override
    <T> T reading(Supplier<T> work) {
        return guarded(
                () -> between("BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY", () -> sql.script("COMMIT"), work));
    }

    @Override
    <T> T writing(Supplier<T> work) {
        return kept(() -> {
            lock();
            return work.get();
        });
    }

    /** Keeps what the work writes. */
    private <T> T kept(Supplier<T> work) {
        try {
            return between("BEGIN ISOLATION LEVEL READ COMMITTED", this::commit, work);
        } catch (Sql.Failed failed) {
            throw ServerFaults.unwritten(at, failed.fault());
        }
    }

    /** Waits for the loft; who has its row reads what the one before wrote. */
    private void lock() {
        sql.list("SELECT one FROM ledger FOR UPDATE", row -> row.getLong(1));
    }

    private void commit() {
        try {
            sql.script("COMMIT");
        } catch (Sql.Failed failed) {
            if (ServerFaults.isLost(failed.fault())) {
                throw new InDoubt(at, failed);
            }
            throw failed;
        }
    }

    /** Books; where the server went away before it said whether it kept that, it is asked again. */
    private Optional<Event> settled(Event.Act act, Supplier<Optional<Event>> booking) {
        try {
            return booking.get();
        } catch (InDoubt lost) {
            return asked(act.id(), lost);
        }
    }

    /**
     * Asks again whether an event was kept, on a new way, for as long as somebody waits at the bench. Whoever wrote it has
     * the row of the loft until it is settled, so that the answer is final.
     */
    private Optional<Event> asked(String id, InDoubt doubt) {
        long until = System.nanoTime() + PATIENCE.toNanos();
        while (System.nanoTime() < until) {
            try (ServedLedger again = open(at, clock)) {
                Optional<Event> event = again.writing(() -> new SqlStock(again.sql).eventOfId(id));
                if (event.isPresent()) {
                    return event;
                }
                throw new LedgerException.Refused(
                        at.text() + ": nothing was booked, the server went away; it is there again now");
            } catch (LedgerException.Unwritable | InDoubt away) {
                pause();
            }
        }
        throw new LedgerException.Unwritable(
                at.text()
                        + ": the server went away before it said whether it kept this. Once it is there again, book it"
                        + " once more under the same id (--once " + id + "): it counts once",
                doubt);
    }

    private static void pause() {
        try {
            Thread.sleep(BETWEEN.toMillis());
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public List<String> verify() {
        List<String> faults = guarded(() -> between("BEGIN", () -> sql.script("ROLLBACK"), () -> body().faults()));
        return reading(() -> new Verification(sql, faults).faults());
    }

    @Override
    public Head backup(Path file) {
        return new LedgerCopy(file).made(part -> reading(() -> SqliteLedger.copied(part, clock, sql)));
    }

    private <T> T guarded(Supplier<T> work) {
        try {
            return work.get();
        } catch (Sql.Failed failed) {
            throw ServerFaults.told(at, failed.fault());
        }
    }

    @Override
    public void close() {
        try {
            connection.close();
        } catch (SQLException away) {
            return;
        }
    }
}
