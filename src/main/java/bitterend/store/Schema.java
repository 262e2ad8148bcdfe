package bitterend.store;

import bitterend.stock.LedgerException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;

/** The tables of the ledger and how an older ledger is brought up to date. */
final class Schema {
    /** Written into the header of the file, so that no other database is taken for a ledger. */
    static final int APPLICATION = 0x42456e64;

    static final int VERSION = 5;

    /** The version from which on a ledger is one of events. */
    private static final int EVENTS = 3;

    private Schema() {}

    /** What a database of this version is made of, by name. */
    static Map<String, String> parts(Sql sql) {
        Map<String, String> parts = new TreeMap<>();
        sql.list(
                "SELECT type || ' ' || name, sql FROM sqlite_master WHERE sql IS NOT NULL",
                row -> parts.put(row.getString(1), row.getString(2)) == null);
        return parts;
    }

    /** Runs inside a transaction: what is missing is added, step by step, and older movements become events. */
    static void update(Sql sql, String name, Instant now) {
        long version = sql.number("PRAGMA user_version");
        check(sql, name);
        for (long next = version + 1; next <= VERSION; next++) {
            sql.script(script(next));
        }
        if (version < EVENTS) {
            new OlderLedger(sql).migrate(now);
        }
        sql.run("PRAGMA application_id = " + APPLICATION);
        sql.run("PRAGMA user_version = " + VERSION);
    }

    /** Whether anything is missing. */
    static boolean isOlder(Sql sql) {
        return sql.number("PRAGMA user_version") < VERSION;
    }

    /** Whether the file was begun but never became a ledger. */
    static boolean isEmpty(Sql sql) {
        return sql.number("PRAGMA user_version") == 0 && sql.number("SELECT COUNT(*) FROM sqlite_master") == 0;
    }

    /** Refuses other databases and those of a newer program. */
    static void check(Sql sql, String name) {
        long version = sql.number("PRAGMA user_version");
        if (isEmpty(sql)) {
            return;
        }
        if (sql.number("PRAGMA application_id") != APPLICATION) {
            throw new LedgerException.Unreadable(name + " is a database, but not a stock ledger");
        }
        if (version > VERSION) {
            throw new LedgerException.Unreadable(name + " was written by a newer version of this program (ledger "
                    + version + ", this one knows " + VERSION + "): use that one");
        }
    }

    private static String script(long version) {
        String name = "schema-" + version + ".sql";
        try (InputStream script = Schema.class.getResourceAsStream(name)) {
            if (script == null) {
                throw new IllegalStateException("no " + name);
            }
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
