package bitterend.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bitterend.stock.Event;
import bitterend.stock.Ledger;
import bitterend.stock.LedgerException;
import bitterend.stock.LoftAddress;
import bitterend.stock.Movement;
import bitterend.stock.Transfers;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes wrong around a server is told in a sentence; a fault planted behind its back is found. */
final class ServedFaultsTest {
    private static final LoftServer SERVER = LoftServer.shared();

    /** Which tables they are and whether the loft moved away: states of the loft, no part of its history. */
    private static final List<String> STATES = List.of("version", "moved");

    @TempDir
    private Path folder = Path.of("");

    private LoftAddress loft = SERVER.newLoft();

    @BeforeEach
    void begin() {
        ServedLedgerPlace place = new ServedLedgerPlace(loft, folder, LedgerContract.CLOCK);
        place.begin(LedgerContract.act(Event.Kind.OPENED).with("reels", "2"), books -> {
            for (String id : List.of("K1", "K2")) {
                books.append(new Movement.Entry(
                        Movement.Kind.RECEIVED,
                        LedgerContract.reel(id, "L1", List.of(LedgerContract.flaw("join"))),
                        ""));
            }
        });
        try (Ledger ledger = place.toWrite()) {
            LedgerContract.day(ledger);
            assertEquals(List.of(), ledger.verify());
        }
    }

    @Test
    void serverThatIsNotThere_isTold() {
        assertTold(new LoftAddress("127.0.0.1", 1, "postgres", "bench", "gannet"), "does not answer");
        assertTold(new LoftAddress("nowhere.invalid", 5432, "postgres", "bench", "gannet"), "does not answer");
    }

    @Test
    void wrongPassword_orNone_isTold() throws Exception {
        SERVER.script("DROP ROLE IF EXISTS sworn", "CREATE ROLE sworn LOGIN PASSWORD 'right'");
        assertTold(SERVER.server("sworn", "postgres").of("gannet"), "wants a password");
        System.setProperty("org.postgresql.pgpassfile", passwordFile());
        try {
            assertTold(SERVER.server("sworn", "postgres").of("gannet"), "refuses the user or the password");
        } finally {
            System.clearProperty("org.postgresql.pgpassfile");
        }
    }

    private String passwordFile() throws IOException {
        Path file = folder.resolve("pgpass");
        Files.writeString(file, "*:*:*:*:wrong\n", StandardCharsets.UTF_8);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        return file.toString();
    }

    @Test
    void missingDatabase_isTold() {
        assertTold(SERVER.server("bench", "ropes").of("gannet"), "has no database ropes");
    }

    @Test
    void userWithoutRights_isTold() throws SQLException {
        SERVER.script("DROP ROLE IF EXISTS visitor", "CREATE ROLE visitor LOGIN");
        LoftAddress visitor = SERVER.server("visitor", "postgres").of("visitors");
        LedgerException refused = assertThrows(
                LedgerException.Unwritable.class, () -> new ServedLedgerPlace(visitor, folder, Clock.systemUTC())
                        .begin(LedgerContract.act(Event.Kind.OPENED), books -> {}));
        assertTrue(refused.sentence().contains("does not give this user the right"), refused.sentence());
    }

    @Test
    void newerTables_areRefusedAndUntouched() throws SQLException {
        behind("UPDATE ledger SET version = 99");
        assertTold(loft, "was written by a newer version of this program");
    }

    private void assertTold(LoftAddress at, String words) {
        ServedLedgerPlace place = new ServedLedgerPlace(at, folder, Clock.systemUTC());
        LedgerException told =
                assertThrows(LedgerException.class, () -> place.toRead().close());
        assertTrue(told.sentence().contains(words), told.sentence());
        assertTrue(told.sentence().startsWith("loft " + at.loft() + " on "), told.sentence());
    }

    /** Whoever may change the tables can take the guards away; the chain and the sums still find what was changed. */
    @Test
    void changedCell_isFoundInEveryColumn() throws SQLException {
        Map<String, String> keys = Map.of(
                "event",
                "number",
                "fact",
                "event",
                "movement",
                "number",
                "flaw",
                "movement",
                "ordered",
                "movement",
                "ledger",
                "one");
        int planted = 0;
        try (Connection connection = SERVER.behind(loft);
                ServedLedger ledger = ServedLedger.open(loft, LedgerContract.CLOCK)) {
            Sql sql = new Sql(connection);
            sql.script("SET session_replication_role = replica");
            for (Map.Entry<String, String> table : keys.entrySet()) {
                for (String column : columns(sql, table.getKey())) {
                    // where a flaw stands in the list says nothing: flaws are sorted by their place on the reel
                    if (column.equals("position") || STATES.contains(column)) {
                        continue;
                    }
                    String cell = sql.list(
                                    "SELECT " + column + "::text FROM " + table.getKey() + " ORDER BY "
                                            + table.getValue() + " DESC LIMIT 1",
                                    row -> String.valueOf(row.getString(1)))
                            .get(0);
                    if (cell.equals("null")) {
                        continue;
                    }
                    sql.script("BEGIN");
                    boolean figure = isFigure(sql, table.getKey(), column);
                    String other = column.equals("gone") || column.equals("is_full") || column.equals("own_rope")
                            ? "1 - " + column
                            : figure ? column + " + 1000" : column + " || 'x'";
                    boolean allowed = run(
                            sql,
                            "UPDATE " + table.getKey() + " SET " + column + " = " + other + " WHERE " + table.getValue()
                                    + " = (SELECT max(" + table.getValue() + ") FROM " + table.getKey() + ")");
                    if (allowed) {
                        assertFalse(new Verification(sql, List.of()).faults().isEmpty(), table.getKey() + "." + column);
                        planted++;
                    }
                    sql.script("ROLLBACK");
                }
            }
            assertEquals(List.of(), ledger.verify());
        }
        assertTrue(planted > 50, "only " + planted);
    }

    private static boolean run(Sql sql, String change) {
        try {
            sql.script(change);
            return true;
        } catch (Sql.Failed refusedByTheServer) {
            return false;
        }
    }

    private static List<String> columns(Sql sql, String table) {
        return sql.list(
                "SELECT attname FROM pg_attribute WHERE attrelid = ?::regclass AND attnum > 0",
                row -> row.getString(1),
                table);
    }

    private static boolean isFigure(Sql sql, String table, String column) {
        return sql.number(
                        "SELECT count(*) FROM pg_attribute WHERE attrelid = ?::regclass AND attname = ? AND atttypid = 'bigint'::regtype",
                        table,
                        column)
                == 1;
    }

    @Test
    void tablesThatWereChanged_areFound() throws SQLException {
        for (Map.Entry<String, String> change : Map.of(
                        "DROP TRIGGER movement_is_not_changed ON movement",
                        "the trigger movement_is_not_changed of movement is missing",
                        "ALTER TABLE fact DISABLE TRIGGER fact_is_not_changed",
                        "the trigger fact_is_not_changed of fact is not as it was made",
                        "DROP INDEX movement_of_a_step",
                        "the index movement_of_a_step is missing",
                        "ALTER TABLE movement DROP CONSTRAINT movement_reel_count_key",
                        "the constraint movement_reel_count_key is missing",
                        "ALTER TABLE event ADD COLUMN extra text",
                        "the column extra of event is no part of a ledger",
                        "CREATE TABLE extra (x text)",
                        "the relation extra is no part of a ledger",
                        "CREATE RULE nothing AS ON INSERT TO fact DO INSTEAD NOTHING",
                        "the rule nothing of fact is no part of a ledger",
                        "CREATE OR REPLACE FUNCTION row_is_not_changed() RETURNS trigger LANGUAGE plpgsql AS"
                                + " 'BEGIN RETURN NEW; END'",
                        "the function row_is_not_changed is not as it was made")
                .entrySet()) {
            begin(SERVER.newLoft());
            behind(change.getKey());
            try (ServedLedger ledger = ServedLedger.open(loft, LedgerContract.CLOCK)) {
                String told = ledger.verify().toString();
                assertTrue(told.contains(change.getValue()), told);
            }
        }
    }

    /** A loft that a newer program has given a column is read in between, as often as a server may keep what it planned. */
    @Test
    void neighboursWithOtherColumns_areReadAmongTheRest() throws SQLException {
        for (int i = 0; i < 10; i++) {
            begin(SERVER.newLoft());
            if (i % 2 == 0) {
                behind("ALTER TABLE event ADD COLUMN extra text");
            }
        }
        begin(SERVER.newLoft());
        try (ServedLedger ledger = ServedLedger.open(loft, LedgerContract.CLOCK)) {
            assertEquals(List.of(), Transfers.onTheWay(ledger));
        }
    }

    private void begin(LoftAddress other) {
        loft = other;
        begin();
    }

    private void behind(String statement) throws SQLException {
        try (Connection connection = SERVER.behind(loft)) {
            new Sql(connection).script(statement);
        }
    }
}
