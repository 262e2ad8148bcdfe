package bitterend.store;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;

/** A ledger as rows behind one connection: what is the same wherever they are kept. */
abstract class SqlLedger implements Ledger {
    final Sql sql;
    private final Clock clock;

    SqlLedger(Sql sql, Clock clock) {
        this.sql = sql;
        this.clock = clock;
    }

    /** Reads the rows as they were at one moment. */
    abstract <T> T reading(Supplier<T> work);

    /** Reads and writes as one; nobody else writes in between, and when the work throws nothing is written. */
    abstract <T> T writing(Supplier<T> work);

    @Override
    public <T> T read(Function<Stock, T> work) {
        return reading(() -> work.apply(new SqlStock(sql)));
    }

    @Override
    public Optional<Event> change(Event.Act act, Consumer<Books> work) {
        return writing(() -> booked(act, work));
    }

    /** Books inside of {@link #writing}, or finds what is booked under the id already. */
    final Optional<Event> booked(Event.Act act, Consumer<Books> work) {
        Optional<Event> earlier = new SqlStock(sql).eventOfId(act.id());
        earlier.ifPresent(event -> refuseAnother(event, act));
        return earlier.isPresent() ? earlier : book(act, work);
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

    final Optional<Event> book(Event.Act act, Consumer<Books> work) {
        SqlBooks books = new SqlBooks(sql, act, now());
        work.accept(books);
        return books.close();
    }

    final Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /** Runs work between two statements; rolls back when it throws. */
    final <T> T between(String begin, Runnable commit, Supplier<T> work) {
        sql.script(begin);
        boolean done = false;
        try {
            T result = work.get();
            done = true;
            commit.run();
            return result;
        } finally {
            if (!done) {
                rollBack();
            }
        }
    }

    /** A failed write may have rolled itself back; then there is nothing left to roll back. */
    private void rollBack() {
        try {
            sql.script("ROLLBACK");
        } catch (Sql.Failed alreadyRolledBack) {
            return;
        }
    }
}
